using System.Text;
using Hornbook.Bench.Files;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class AtomicFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook").FullName;

    private string Target => Path.Combine(_folder, "bench.toml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_new_file_holds_the_text_as_UTF_8_without_a_mark()
    {
        AtomicFile.Write(Target, "µ\n");

        Assert.Equal([0xC2, 0xB5, 0x0A], File.ReadAllBytes(Target));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public void An_old_file_is_replaced()
    {
        File.WriteAllText(Target, "an old and longer text");

        AtomicFile.Write(Target, "new");

        Assert.Equal("new", File.ReadAllText(Target));
    }

    [Fact]
    public void A_writer_that_fails_half_way_leaves_the_old_file_and_nothing_else()
    {
        File.WriteAllText(Target, "old");

        Assert.Throws<IOException>(() => AtomicFile.Write(Target, stream =>
        {
            stream.Write(Encoding.UTF8.GetBytes("half of the n"));
            throw new IOException("No space left on device");
        }));

        Assert.Equal("old", File.ReadAllText(Target));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_full_disk_leaves_the_old_file()
    {
        // /dev/full takes nothing: every flush to it fails as on a full disk.
        Assert.SkipUnless(File.Exists("/dev/full"), "this system has no /dev/full");
        File.WriteAllText(Target, "old");

        Assert.ThrowsAny<IOException>(() => AtomicFile.Write(Target, _ =>
        {
            using FileStream full = new("/dev/full", FileMode.Open, FileAccess.Write);
            full.Write(new byte[10_000]);
            full.Flush();
        }));

        Assert.Equal("old", File.ReadAllText(Target));
    }

    [Fact]
    public void A_file_that_is_marked_read_only_is_left_alone()
    {
        File.WriteAllText(Target, "old");
        File.SetAttributes(Target, FileAttributes.ReadOnly);

        Assert.Throws<UnauthorizedAccessException>(() => AtomicFile.Write(Target, "new"));

        Assert.Equal("old", File.ReadAllText(Target));
        File.SetAttributes(Target, FileAttributes.Normal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_refused() =>
        Assert.Throws<DirectoryNotFoundException>(() => AtomicFile.Write(Path.Combine(_folder, "nowhere", "bench.toml"), "new"));

    [Fact]
    public void A_folder_in_the_files_place_is_left_alone()
    {
        Directory.CreateDirectory(Target);

        Assert.ThrowsAny<Exception>(() => AtomicFile.Write(Target, "new"));

        Assert.True(Directory.Exists(Target));
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_link_stays_a_link_and_its_target_is_replaced()
    {
        string link = Path.Combine(_folder, "link.toml");
        File.WriteAllText(Target, "old");
        File.CreateSymbolicLink(link, Target);

        AtomicFile.Write(link, "new");

        Assert.Equal(Target, File.ResolveLinkTarget(link, returnFinalTarget: true)!.FullName);
        Assert.Equal("new", File.ReadAllText(Target));
    }

    [Fact]
    public void Permissions_stay()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "permissions of Unix");
        File.WriteAllText(Target, "old");
#pragma warning disable CA1416 // skipped on Windows above
        File.SetUnixFileMode(Target, UnixFileMode.UserRead | UnixFileMode.UserWrite);

        AtomicFile.Write(Target, "new");

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Target));
#pragma warning restore CA1416
    }

    [Fact]
    public async Task A_reader_sees_the_old_or_the_new_text_and_never_a_part()
    {
        string[] texts = [new string('a', 200_000), new string('b', 200_000)];
        AtomicFile.Write(Target, texts[0]);
        using CancellationTokenSource done = new();
        Task<int> reader = Task.Run(() => ReadUntil(texts, done.Token), TestContext.Current.CancellationToken);
        for (int i = 0; i < 100; i++)
        {
            AtomicFile.Write(Target, texts[i % 2]);
        }

        await done.CancelAsync();
        Assert.True(await reader > 0);
    }

    private int ReadUntil(string[] texts, CancellationToken done)
    {
        int reads = 0;
        do
        {
            Assert.Contains(File.ReadAllText(Target), texts);
            reads++;
        }
        while (!done.IsCancellationRequested);
        return reads;
    }
}
