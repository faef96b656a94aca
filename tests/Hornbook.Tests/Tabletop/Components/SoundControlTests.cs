using Bunit;
using Hornbook.Bench.Demonstrations;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Xunit;

namespace Hornbook.Tests.Tabletop.Components;

public sealed class SoundControlTests : IDisposable
{
    private readonly BunitContext _browser = new();
    private readonly BunitJSModuleInterop _tone;
    private readonly BenchSession _session = ExampleBench.Session();

    public SoundControlTests()
    {
        _tone = _browser.JSInterop.SetupModule("./tabletop/tone.js");
        _tone.Mode = JSRuntimeMode.Loose;
    }

    public void Dispose() => _browser.Dispose();

    [Fact]
    public void Moving_things_says_nothing_to_the_loudspeaker_until_the_button_is_pressed()
    {
        IRenderedComponent<SoundControl> control = Show();
        Turn(control, 3.0);
        Assert.Empty(_tone.Invocations);
        control.Find("#sound").Click();
        Assert.Single(_tone.Invocations["start"]);
    }

    [Fact]
    public void The_tone_follows_while_it_sounds_and_no_longer()
    {
        IRenderedComponent<SoundControl> control = Show();
        control.Find("#sound").Click();
        Turn(control, 3.0);
        Assert.Equal(_session.Reading.Heard.Tone, Assert.Single(_tone.Invocations["follow"]).Arguments[0]);
        control.Find("#sound").Click();
        Turn(control, 2.9);
        Assert.Single(_tone.Invocations["follow"]);
        Assert.Single(_tone.Invocations["stop"]);
    }

    [Fact]
    public void The_volume_chosen_before_is_the_one_it_starts_with()
    {
        IRenderedComponent<SoundControl> control = Show();
        control.Find("#volume").Input("80");
        control.Find("#sound").Click();
        // derived: 80 of 100.
        Assert.Equal(0.8, Assert.Single(_tone.Invocations["start"]).Arguments[2]);
    }

    private IRenderedComponent<SoundControl> Show() => _browser.Render<SoundControl>(p => p.Add(c => c.Heard, _session.Reading.Heard));

    private void Turn(IRenderedComponent<SoundControl> control, double turn)
    {
        _session.Place(BenchEnd.Receiver, _session.PoseOf(BenchEnd.Receiver) with { Turn = turn });
        control.Render(p => p.Add(c => c.Heard, _session.Reading.Heard));
    }
}
