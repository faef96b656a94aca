using Hornbook.Tabletop.Performing;
using Hornbook.Tests.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop.Performing;

public sealed class StageTests
{
    private readonly HandClock _time = new();

    [Fact]
    public void Goes_forth_and_back_within_the_show_only()
    {
        Stage stage = new(_time);
        stage.Go(-1, 3);
        Assert.Equal(0, stage.At);
        stage.Go(1, 3);
        stage.Go(1, 3);
        stage.Go(1, 3);
        Assert.Equal(2, stage.At);
    }

    [Fact]
    public void Tells_every_window_and_keeps_the_time_of_the_item_at_the_last_one()
    {
        Stage stage = new(_time);
        int told = 0;
        stage.Changed += () => told++;
        stage.ToggleClock();
        _time.Pass(TimeSpan.FromSeconds(20.0));
        stage.Go(1, 1); // there is no other
        Assert.Equal(20.0, stage.Clock.Item(stage.Now), 6);
        stage.Begin();
        Assert.Equal((0, 0.0), (stage.At, stage.Clock.Show(stage.Now)));
        Assert.Equal(3, told);
    }
}
