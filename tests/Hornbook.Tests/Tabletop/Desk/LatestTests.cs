using Hornbook.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop.Desk;

public sealed class LatestTests
{
    [Fact]
    public async Task An_older_question_is_stopped_and_never_answered()
    {
        using ManualResetEventSlim begun = new();
        bool stopped = false;
        using Latest<int, string> latest = new((question, _, stop) =>
        {
            if (question == 1)
            {
                begun.Set();
                stopped = stop.WaitHandle.WaitOne(TimeSpan.FromSeconds(10));
                stop.ThrowIfCancellationRequested();
            }

            return $"answer {question}";
        });
        Task first = latest.Ask(1);
        begun.Wait(TestContext.Current.CancellationToken);
        Assert.True(latest.IsBusy);
        await latest.Ask(2);
        await first;
        Assert.True(stopped);
        Assert.Equal("answer 2", latest.Answer);
        Assert.False(latest.IsBusy);
    }

    [Fact]
    public async Task A_question_that_is_given_up_leaves_the_answer_before_it()
    {
        using ManualResetEventSlim begun = new();
        using Latest<int, string> latest = new((question, _, stop) =>
        {
            if (question == 2)
            {
                begun.Set();
                stop.WaitHandle.WaitOne(TimeSpan.FromSeconds(10));
                stop.ThrowIfCancellationRequested();
            }

            return $"answer {question}";
        });
        await latest.Ask(1);
        Task second = latest.Ask(2);
        begun.Wait(TestContext.Current.CancellationToken);
        latest.Stop();
        await second;
        Assert.Equal((false, true, "answer 1"), (latest.IsBusy, latest.IsStopped, latest.Answer));
        await latest.Ask(3);
        Assert.Equal((false, false, "answer 3"), (latest.IsBusy, latest.IsStopped, latest.Answer));
    }

    [Fact]
    public async Task An_answer_that_comes_too_late_is_thrown_away()
    {
        using ManualResetEventSlim begun = new(), go = new();
        using Latest<int, string> latest = new((question, _, _) =>
        {
            if (question == 1)
            {
                begun.Set();
                go.Wait(TimeSpan.FromSeconds(10), CancellationToken.None); // one that does not look whether it shall stop
            }

            return $"answer {question}";
        });
        Task first = latest.Ask(1);
        begun.Wait(TestContext.Current.CancellationToken);
        await latest.Ask(2);
        go.Set();
        await first;
        Assert.Equal("answer 2", latest.Answer);
    }

    [Fact]
    public async Task It_tells_how_far_it_is()
    {
        List<double> told = [];
        using Latest<int, string> latest = new((_, progress, _) =>
        {
            progress.Report(0.5);
            return "done";
        });
        latest.Changed += () => told.Add(latest.Done);
        await latest.Ask(1);
        // derived: once at the half reported above, once with the answer.
        Assert.Equal([0.5, 0.5], told);
    }
}
