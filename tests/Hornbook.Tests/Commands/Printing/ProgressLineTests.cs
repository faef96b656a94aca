using Hornbook.Commands.Printing;
using Xunit;

namespace Hornbook.Tests.Commands.Printing;

public sealed class ProgressLineTests
{
    private readonly HandClock _clock = new();

    [Fact]
    public void Nothing_is_said_within_the_first_second()
    {
        using StringWriter output = new();
        using (ProgressLine progress = new(output, overwrites: true, _clock))
        {
            progress.Report(0.5);
        }

        Assert.Equal(string.Empty, output.ToString());
    }

    [Fact]
    public void Later_it_says_how_far_and_wipes_the_line_in_the_end()
    {
        using StringWriter output = new();
        using (ProgressLine progress = new(output, overwrites: true, _clock))
        {
            progress.Begin("predicting");
            _clock.Now = TimeSpan.FromSeconds(1.05);
            progress.Report(0.25);
        }

        Assert.Equal("\rpredicting: 25 %\e[K\r\e[K", output.ToString());
    }

    [Fact]
    public void In_a_file_it_is_a_line_of_its_own()
    {
        using StringWriter output = new();
        using (ProgressLine progress = new(output, overwrites: false, _clock))
        {
            progress.Begin("predicting");
            _clock.Now = TimeSpan.FromSeconds(1.05);
            progress.Report(0.25);
            progress.Report(0.30);
        }

        Assert.Equal("predicting: 25 %\n", output.ToString());
    }

    [Fact]
    public void Work_that_cannot_say_how_far_it_is_is_named_all_the_same()
    {
        using StringWriter output = new();
        using (ProgressLine progress = new(output, overwrites: false, _clock))
        {
            progress.Begin("looking for a horn");
            _clock.Now = TimeSpan.FromSeconds(1.05);
            _clock.Ring();
        }

        Assert.Equal("looking for a horn …\n", output.ToString());
    }

    private sealed class HandClock : TimeProvider
    {
        private TimerCallback? _callback;

        internal TimeSpan Now { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Now.Ticks;

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            _callback = callback;
            return new SilentTimer();
        }

        internal void Ring() => _callback!(null);
    }

    private sealed class SilentTimer : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => true;

        public void Dispose()
        {
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
