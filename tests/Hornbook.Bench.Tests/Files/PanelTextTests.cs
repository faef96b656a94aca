using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Layout;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class PanelTextTests
{
    private static readonly BenchFile Minimal = BenchFile.Read(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    public static TheoryData<string> Kinds => [.. PanelText.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_new_panel_of_every_kind_can_be_put_into_a_file(string kind)
    {
        BenchFile edited = Minimal.Edit(BenchChange.ToNew("panels.new", PanelText.Lines(kind)));

        Assert.Empty(edited.Problems);
        BenchPanel panel = Assert.Single(edited.Plan!.Panels);
        Assert.Equal(kind, panel.Kind);
        Assert.NotEmpty(panel.Panel.Surface.Cells(5e-3));
    }

    [Fact]
    public void Another_kind_is_refused() => Assert.Throws<ArgumentException>(() => PanelText.Lines("mirror"));
}
