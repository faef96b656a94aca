using Hornbook.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop.Desk;

public sealed class FollowingTests
{
    [Fact]
    public async Task It_shows_what_it_has_leaves_out_what_was_overtaken_and_ends_with_the_last()
    {
        using SemaphoreSlim begun = new(0), go = new(0);
        List<string> shown = [];
        TaskCompletionSource last = new();
        Following<string, string> following = new(
            question =>
            {
                begun.Release();
                go.Wait(TimeSpan.FromSeconds(10));
                return question;
            },
            answer =>
            {
                shown.Add(answer);
                if (answer == "c")
                {
                    last.SetResult();
                }
            });
        following.Ask("a");
        await begun.WaitAsync(TestContext.Current.CancellationToken);
        following.Ask("b");
        following.Ask("c");
        Assert.True(following.IsBusy);
        go.Release(2);
        await last.Task.WaitAsync(TimeSpan.FromSeconds(10), TestContext.Current.CancellationToken);
        Assert.Equal(["a", "c"], shown);
        Assert.False(following.IsBusy);
    }
}
