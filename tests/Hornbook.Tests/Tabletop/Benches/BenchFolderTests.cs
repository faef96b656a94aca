using Hornbook.Tabletop.Benches;
using Xunit;

namespace Hornbook.Tests.Tabletop.Benches;

public sealed class BenchFolderTests : IDisposable
{
    private readonly DirectoryInfo _above = Directory.CreateTempSubdirectory("hornbook-folder");
    private readonly BenchFolder _folder;

    public BenchFolderTests()
    {
        _folder = new BenchFolder(_above.CreateSubdirectory("benches").FullName);
        File.WriteAllText(Outside, ExampleBench.File.Text);
        Write("evening.toml", ExampleBench.File.Text);
    }

    private string Outside => Path.Combine(_above.FullName, "secret.toml");

    public void Dispose() => _above.Delete(recursive: true);

    [Fact]
    public void It_lists_what_it_has_and_says_what_is_wrong_and_where()
    {
        Write("broken.toml", "format = 1\ntitle = 7\n");
        Write("notes.txt", "no bench");
        Dictionary<string, BenchEntry> listed = _folder.List(TestContext.Current.CancellationToken).ToDictionary(entry => entry.FileName);
        Assert.Equal(["broken.toml", "evening.toml"], listed.Keys.Order());
        Assert.Equal(ExampleBench.Scene.Plan.Title, listed["evening.toml"].Title);
        Assert.True(listed["evening.toml"].CanOpen);
        Assert.StartsWith("line 1, column 1:", listed["broken.toml"].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_yet_has_none() => Assert.Empty(new BenchFolder(Path.Combine(_above.FullName, "none")).List(TestContext.Current.CancellationToken));

    [Theory]
    [InlineData("../secret.toml")]
    [InlineData("..\\secret.toml")]
    [InlineData("./evening.toml")]
    [InlineData("../benches/evening.toml")]
    [InlineData("evening.toml\0")]
    [InlineData("")]
    [InlineData("..")]
    [InlineData("*.toml")]
    public void Only_a_name_that_it_lists_can_be_read(string name)
    {
        Assert.Null(_folder.Read(name));
        Assert.Null(_folder.Where(name));
    }

    [Fact]
    public void Nor_by_its_whole_path() => Assert.Null(_folder.Read(Outside));

    [Fact]
    public void A_link_is_not_followed()
    {
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "link.toml"), Outside);
        Directory.CreateSymbolicLink(Path.Combine(_folder.Path, "folder.toml"), _above.FullName);
        Assert.Null(_folder.Read("link.toml"));
        Assert.Equal(["evening.toml"], _folder.List(TestContext.Current.CancellationToken).Select(entry => entry.FileName));
    }

    [Fact]
    public void Nothing_is_written_over_and_nothing_through_a_link()
    {
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "link.toml"), Outside);
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "nowhere.toml"), Path.Combine(_above.FullName, "new.toml"));
        Assert.Equal("evening.toml is there already.", _folder.Add(Name("evening"), "x"));
        Assert.NotNull(_folder.Add(Name("EVENING"), "x"));
        Assert.NotNull(_folder.Add(Name("link"), "x"));
        Assert.NotNull(_folder.Add(Name("nowhere"), "x"));
        Assert.Equal(ExampleBench.File.Text, File.ReadAllText(Outside));
        Assert.False(File.Exists(Path.Combine(_above.FullName, "new.toml")));
    }

    [Fact]
    public void A_new_file_is_written_whole_into_a_folder_that_is_made_for_it()
    {
        BenchFolder folder = new(Path.Combine(_above.FullName, "not", "yet"));
        Assert.Null(folder.Add(Name("mine"), ExampleBench.File.Text));
        Assert.Equal(ExampleBench.File.Text, folder.Read("mine.toml")?.Text);
    }

    private static BenchName Name(string text) => BenchName.TryRead(text, out BenchName? name, out string? wrong) ? name : throw new ArgumentException(wrong);

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder.Path, name), text);
}
