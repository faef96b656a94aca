using Hornbook.Tabletop.Performing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Performing;

public sealed class ShowClockTests
{
    [Fact]
    public void Stands_until_it_is_started_and_again_when_it_is_stopped()
    {
        ShowClock clock = new();
        Assert.Equal(0.0, clock.Item(100.0));
        clock = clock.Toggled(100.0);
        Assert.Equal(25.0, clock.Item(125.0));
        clock = clock.Toggled(130.0);
        Assert.Equal(30.0, clock.Item(500.0));
        Assert.Equal(31.0, clock.Toggled(600.0).Item(601.0));
    }

    [Fact]
    public void Begins_anew_with_another_item_while_the_show_goes_on()
    {
        ShowClock clock = new ShowClock().Toggled(0.0).AtNewItem(60.0);
        Assert.True(clock.IsRunning);
        Assert.Equal(15.0, clock.Item(75.0));
        Assert.Equal(75.0, clock.Show(75.0));
    }

    [Fact]
    public void Stays_still_with_another_item_where_it_stood()
    {
        ShowClock clock = new ShowClock().Toggled(0.0).Toggled(40.0).AtNewItem(90.0);
        Assert.False(clock.IsRunning);
        Assert.Equal(0.0, clock.Item(200.0));
        Assert.Equal(40.0, clock.Show(200.0));
    }
}
