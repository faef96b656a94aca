using Bunit;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Xunit;

namespace Hornbook.Tests.Tabletop.Components;

public sealed class ReadingPanelTests : IDisposable
{
    private readonly BunitContext _browser = new();

    public void Dispose() => _browser.Dispose();

    [Fact]
    public void It_shows_what_the_scene_reads()
    {
        Reading reading = ExampleBench.Scene.Read();
        IRenderedComponent<ReadingPanel> panel = Show(reading);
        Assert.Equal(Shown.Tone(reading.Heard.Tone).Number, panel.Find("#tone").TextContent);
        Assert.Equal(Shown.Voltage(reading.Heard.AmplifierVoltage).ToString(), panel.Find("#amplifier").TextContent);
        Assert.Equal(Shown.NearestNote(reading.Heard.Tone).Number, panel.Find("#note").TextContent);
    }

    [Theory]
    [InlineData(ToneState.Clear)]
    [InlineData(ToneState.Clipped)]
    [InlineData(ToneState.Drowned)]
    public void Each_state_has_words_and_a_shape_of_its_own(ToneState state)
    {
        Reading reading = ExampleBench.Scene.Read();
        IRenderedComponent<ReadingPanel> panel = Show(reading with { Heard = reading.Heard with { State = state } });
        Assert.Equal(Words.State(state), panel.Find("#state").TextContent);
        Assert.Contains(state.ToString().ToLowerInvariant(), panel.Find("#state").ClassList);
        Assert.Single(panel.FindAll("svg.levels path.mark"));
    }

    private IRenderedComponent<ReadingPanel> Show(Reading reading) => _browser.Render<ReadingPanel>(p => p
        .Add(c => c.Reading, reading)
        .Add(c => c.Detection, ExampleBench.Scene.Plan.Detection));
}
