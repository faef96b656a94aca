using Bunit;
using Hornbook.Bench.Demonstrations;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Xunit;

namespace Hornbook.Tests.Tabletop.Components;

public sealed class BenchSheetTests : IDisposable
{
    private readonly BunitContext _browser = new();
    private readonly BenchSession _session = ExampleBench.Session();

    public void Dispose() => _browser.Dispose();

    [Fact]
    public void Everything_that_is_held_has_a_role_and_says_where_it_is()
    {
        IRenderedComponent<BenchSheet> sheet = _browser.Render<BenchSheet>(p => p.Add(c => c.Session, _session));
        // derived: two ends in two views, each with a body and a knob.
        Assert.Equal(2 * 2 * 2, sheet.FindAll("[data-grip]").Count);
        Assert.All(sheet.FindAll("[data-grip]"), grip =>
        {
            Assert.Equal("0", grip.GetAttribute("tabindex"));
            Assert.NotEmpty(grip.GetAttribute("aria-label")!);
            Assert.Matches("^(slider|application)$", grip.GetAttribute("role")!);
        });
    }

    [Fact]
    public void A_slider_says_its_angle_in_words_too()
    {
        _session.Place(BenchEnd.Source, _session.PoseOf(BenchEnd.Source) with { Turn = Math.PI / 6.0 });
        IRenderedComponent<BenchSheet> sheet = _browser.Render<BenchSheet>(p => p.Add(c => c.Session, _session));
        AngleSharp.Dom.IElement knob = sheet.Find("#source-turn-knob");
        // derived: to the left is negative for a slider whose right arrow turns to the right.
        Assert.Equal("-30", knob.GetAttribute("aria-valuenow"));
        Assert.Equal("30° to the left", knob.GetAttribute("aria-valuetext"));
    }

    [Fact]
    public async Task The_keep_out_zone_is_drawn_once_it_is_known()
    {
        IRenderedComponent<BenchSheet> sheet = _browser.Render<BenchSheet>(p => p.Add(c => c.Session, _session));
        Assert.Empty(sheet.FindAll(".zones .keep-out"));
        await _session.Advice.CompleteAsync();
        sheet.Render(p => p.Add(c => c.Session, _session));
        Assert.Equal(2, sheet.FindAll(".zones .keep-out").Count);
        Assert.Contains(Shown.Clearance(_session.Advice.KeepOut!.OnAxis, LengthUnit.Centimetre).ToString(), sheet.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_that_swings_towards_the_eye_is_a_dot_in_a_ring()
    {
        IRenderedComponent<BenchSheet> sheet = _browser.Render<BenchSheet>(p => p.Add(c => c.Session, _session));
        Assert.Equal(2, sheet.FindAll(".field .dot").Count); // both ends upright: end on from above
        _session.Place(BenchEnd.Receiver, _session.PoseOf(BenchEnd.Receiver) with { Roll = Math.PI / 2.0 });
        sheet.Render(p => p.Add(c => c.Session, _session));
        Assert.Equal(2, sheet.FindAll(".field .dot").Count); // the receiver's now end on from the side
        Assert.Single(sheet.FindAll(".receiver[data-view=elevation] .dot"));
    }
}
