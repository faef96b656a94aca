using Bunit;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Explanations;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Microsoft.AspNetCore.Components.Web;
using Xunit;

namespace Hornbook.Tests.Tabletop.Components;

public sealed class WhyPanelTests : IDisposable
{
    private readonly BunitContext _browser = new();
    private readonly BenchSession _session = ExampleBench.Session();

    public WhyPanelTests() => _browser.JSInterop.Mode = JSRuntimeMode.Loose;

    public static TheoryData<ExplanationTopic> Topics => [.. Enum.GetValues<ExplanationTopic>()];

    public void Dispose() => _browser.Dispose();

    [Theory]
    [MemberData(nameof(Topics))]
    public void It_shows_the_formula_with_this_benchs_values_and_where_it_comes_from(ExplanationTopic topic)
    {
        _session.Ask(new Asked(topic, "there"));
        Explanation expected = Explaining.Of(topic, new ExplainedBench(_session.Scene, _session.Source, _session.Receiver, _session.Reading));
        IRenderedComponent<WhyPanel> panel = Show();
        Assert.Equal(expected.Title, panel.Find("#why-title").TextContent);
        Assert.Equal(expected.Formula, panel.Find(".formula").TextContent);
        Assert.Equal(expected.Here, panel.FindAll(".here").Select(line => line.TextContent));
        Assert.All(expected.Sources, key => Assert.Contains(SourceList.Find(key), panel.Find("dl").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void It_follows_what_is_moved()
    {
        _session.Ask(new Asked(ExplanationTopic.Ripple, "ripple"));
        IRenderedComponent<WhyPanel> panel = Show();
        Assert.Contains("90 cm", panel.Find("table").TextContent, StringComparison.Ordinal); // derived: the example's 30 and 120 cm
        _session.Place(BenchEnd.Receiver, _session.PoseOf(BenchEnd.Receiver) with { Position = _session.Source.Pose.Position + new Physics.Vector(0.5, 0.0, 0.0) });
        panel.Render(p => p.Add(c => c.Session, _session));
        Assert.Contains("50 cm", panel.Find("table").TextContent, StringComparison.Ordinal); // derived: half a metre from the source
    }

    [Fact]
    public void Escape_closes_it()
    {
        _session.Ask(new Asked(ExplanationTopic.Link, "link"));
        IRenderedComponent<WhyPanel> panel = Show();
        panel.Find("#why").KeyDown(new KeyboardEventArgs { Key = "Escape" });
        Assert.Null(_session.Asked);
    }

    private IRenderedComponent<WhyPanel> Show() => _browser.Render<WhyPanel>(p => p.Add(c => c.Session, _session));
}
