using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

/// <summary>Whole texts that somebody looked at on a terminal of 80 columns.</summary>
public sealed class ApprovedTextTests
{
    [Theory]
    [InlineData("help", "--help")]
    [InlineData("choose-help", "choose", "--help")]
    [InlineData("guide", "guide", "WR-90", "--frequency", "10.525 GHz", "--walls", "copper")]
    public async Task A_text_is_as_it_was_approved(string name, params string[] arguments)
    {
        Typed typed = await Typed.In(arguments);
        string text = typed.Output.Replace("Hornbook.Tests", "hornbook", StringComparison.Ordinal); // the program that runs the tests
        Approve.Text(text, Repository.At("tests", "Hornbook.Tests", "Commands", $"{name}.approved.txt"));
    }
}
