using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class SavingTests(ServedPage served)
{
    private const string Moved = "x = \"1.1 m\"";

    [Fact]
    public async Task A_move_is_saved_by_itself_and_an_editors_change_appears_on_the_page()
    {
        (BenchPage page, string path) = await OpenAsync();
        await MoveTheReceiverAsync(page);
        await KeptAsync(page, "safe");
        string text = await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken);
        Assert.Equal(ExampleBench.File.Text.Replace("x = \"1.2 m\"", Moved, StringComparison.Ordinal), text);

        await File.WriteAllTextAsync(path, text.Replace("title = \"Evening bench\"", "title = \"Night bench\"", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        await Assertions.Expect(page.Window.Locator("h1")).ToHaveTextAsync("Night bench");
        await page.FieldBecomesAsync("receiver-along", 110.0, 1e-9);
    }

    [Fact]
    public async Task The_same_changed_on_both_sides_is_asked_in_plain_words()
    {
        (BenchPage page, string path) = await OpenAsync();
        File.SetAttributes(path, FileAttributes.ReadOnly); // so that the page's own change cannot be written yet
        await MoveTheReceiverAsync(page);
        await KeptAsync(page, "failed");
        await Assertions.Expect(page.Window.Locator("#file-trouble")).ToContainTextAsync("read-only");
        await page.FieldBecomesAsync("receiver-along", 110.0, 1e-9);

        // In one go, as editors do it: a file that may be written and has not changed yet would get the page's change.
        string edited = Path.ChangeExtension(path, "edited");
        await File.WriteAllTextAsync(edited, ExampleBench.File.Text.Replace("x = \"1.2 m\"", "x = \"95 cm\"", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        File.Move(edited, path, overwrite: true);
        await KeptAsync(page, "disputed");
        await Assertions.Expect(page.Window.Locator("#file-trouble")).ToContainTextAsync("receiver.x");
        await page.Window.ClickAsync("#choose-file");
        await KeptAsync(page, "safe");
        await page.FieldBecomesAsync("receiver-along", 95.0, 1e-9);
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(path)!, "evening-bench-set-aside-*.toml"));
    }

    [Fact]
    public async Task What_could_not_be_saved_is_saved_by_itself_once_it_can_be()
    {
        (BenchPage page, string path) = await OpenAsync();
        File.SetAttributes(path, FileAttributes.ReadOnly);
        await MoveTheReceiverAsync(page);
        await KeptAsync(page, "failed");
        File.SetAttributes(path, FileAttributes.Normal);
        await KeptAsync(page, "safe");
        Assert.Contains(Moved, await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_could_not_be_saved_is_saved_at_a_button()
    {
        // A folder that is not there is not watched, so that nothing but the button can be what saves.
        string path = served.NewFile();
        string folder = Path.Combine(Path.GetDirectoryName(path)!, "copies");
        string copy = Path.Combine(folder, "evening-bench.toml");
        await File.WriteAllTextAsync(folder, "a file stands where the folder should be", TestContext.Current.CancellationToken);
        BenchPage page = await served.OpenAsync(address: await served.ServeAsync(path, copy));
        await MoveTheReceiverAsync(page);
        await KeptAsync(page, "failed");
        File.Delete(folder);
        await page.Window.ClickAsync("#retry");
        await KeptAsync(page, "safe");
        Assert.Contains(Moved, await File.ReadAllTextAsync(copy, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private static async Task MoveTheReceiverAsync(BenchPage page)
    {
        await page.Window.FillAsync("#receiver-along", "110");
        await page.Window.Keyboard.PressAsync("Enter");
    }

    private static Task KeptAsync(BenchPage page, string state) => Assertions.Expect(page.Window.Locator("#kept")).ToHaveAttributeAsync("data-kept", state);

    private async Task<(BenchPage Page, string Path)> OpenAsync()
    {
        string path = served.NewFile();
        return (await served.OpenAsync(address: await served.ServeAsync(path)), path);
    }
}
