using System.Text.RegularExpressions;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>The checkout speaks of no one machine.</summary>
public sealed partial class PrivatePathTests
{
    [Fact]
    public void No_file_holds_a_path_of_one_machine_or_a_registry_host() => Offences.None(Checkout.Files.SelectMany(Private));

    [Fact]
    public void A_home_folder_is_seen() =>
        Assert.Equal(2, Private(new SourceText("docs/a.md", "look in " + "/ho" + "me/maria/bench.toml\nfrom https://api.nu" + "get.org/v3\n")).Count());

    private static IEnumerable<string> Private(SourceText file) =>
        from line in file.Lines
        where Machine().IsMatch(line.Line)
        select $"{file.Path}:{line.Number}: {line.Line.Trim()}";

    [GeneratedRegex(@"(?<![\w~.}$])/(home|root|work|Users|tmp/hb)/|[A-Z]:\\Users\\|\b(api\.nuget|registry\.npmjs|pypi)\.org")]
    private static partial Regex Machine();
}
