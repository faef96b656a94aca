using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.House;

public sealed class ApproveTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-approve-").FullName;

    private string Approved => Path.Combine(_folder, "table.approved.txt");

    private string Received => Path.Combine(_folder, "table.received.txt");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_same_text_passes_and_leaves_nothing_behind()
    {
        File.WriteAllText(Approved, "one\r\ntwo\n");
        File.WriteAllText(Received, "from an earlier run");
        Approve.Text("one\ntwo\n", Approved, accept: false);
        Assert.False(File.Exists(Received));
    }

    [Fact]
    public void Another_text_fails_and_is_kept_beside()
    {
        File.WriteAllText(Approved, "one\n");
        NotApprovedException refused = Assert.Throws<NotApprovedException>(() => Approve.Text("two\n", Approved, accept: false));
        Assert.Contains("HORNBOOK_APPROVE=1", refused.Message, StringComparison.Ordinal);
        Assert.Equal("two\n", File.ReadAllText(Received));
        Assert.Equal("one\n", File.ReadAllText(Approved));
    }

    [Fact]
    public void A_text_that_was_never_approved_fails() =>
        Assert.Throws<NotApprovedException>(() => Approve.Text("one\n", Approved, accept: false));

    [Fact]
    public void Accepting_replaces_the_approved_text()
    {
        File.WriteAllText(Approved, "one\n");
        Approve.Text("two\n", Approved, accept: true);
        Assert.Equal("two\n", File.ReadAllText(Approved));
        Assert.False(File.Exists(Received));
    }

    [Fact]
    public void A_path_that_does_not_say_approved_is_refused() =>
        Assert.Throws<ArgumentException>(() => Approve.Text("one\n", Path.Combine(_folder, "table.txt"), accept: false));
}
