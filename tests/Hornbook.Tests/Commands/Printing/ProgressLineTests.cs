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

    private sealed class HandClock : TimeProvider
    {
        internal TimeSpan Now { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Now.Ticks;
    }
}
