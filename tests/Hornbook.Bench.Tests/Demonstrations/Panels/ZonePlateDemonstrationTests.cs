using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Demonstrations.Panels;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Outlines.Shapes;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations.Panels;

[Trait("Cost", "Slow")]
public sealed class ZonePlateDemonstrationTests
{
    private static readonly ZonePlateRings Cut = ZonePlateRings.Between(WaveBench.Wavelength, 0.6, 0.6, 6);
    private static readonly BenchPlan Plan = WaveBench.With(Cut.Cut(new RectangleShape(0.0, 0.0, 0.5, 0.5), isCentreOpen: true), 0.6, 1.2);
    private static readonly ZonePlateDemonstration Zones = new("zones", "plate", 0.3, 0.9, 25);
    private static readonly Prediction Prediction = Prediction.Of(Scene.Of(Plan), Zones, cancellation: CancellationToken.None);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_rings_are_read_off_the_plate(bool isCentreOpen)
    {
        PanelSurface surface = Cut.Cut(new RectangleShape(0.0, 0.0, 0.6, 0.6), isCentreOpen);
        double[] radii = [0.0, .. Cut.Radii];
        int first = isCentreOpen ? 0 : 1;

        Assert.All(Openings.Rings(surface).Index(), ring =>
        {
            // derived: circles are drawn as polygons of the same area, to a thousandth
            Close.Absolute(radii[first + (2 * ring.Index)], ring.Item.Inner, 2e-4);
            Close.Absolute(radii[first + (2 * ring.Index) + 1], ring.Item.Outer, 2e-4);
        });
        Assert.Equal(3, Openings.Rings(surface).Count);
    }

    [Fact]
    public void The_receiver_moves_along_the_axis_behind_the_plate() => Assert.All(Zones.Course(Plan), setting =>
        Close.Absolute(0.0, (setting.Receiver.Pose.Position - WaveBench.At(0.6 + setting.At)).Length, 1e-12));

    [Fact]
    public void Half_shut_it_lets_more_arrive_than_the_open_bench()
    {
        Comparison gain = Prediction.Shown("gain at the focus");

        // derived: three open zones, (2·3)² = 15.56 dB, when lit evenly; a horn of 22° lights the outer ones less.
        Close.Absolute(15.563, gain.InBooks!.Value, 1e-3);
        Assert.InRange(gain.OnBench!.Value, 9.0, 15.0);
        Close.Absolute(0.6, Prediction.Shown("strongest at").InBooks!.Value, 1e-3);
    }

    [Fact]
    public void With_the_zones_lit_as_the_antennas_do_the_law_holds_about_the_focus()
    {
        IReadOnlyList<double> law = ((LawEvaluation)Prediction.Evaluation).Law!;
        double[] offDb = [.. Prediction.Curve.Points
            .Select((point, i) => (point.Setting.At, Off: Decibels.FromRatio(point.Reading.Link / law[i])))
            .Where(point => point.At is > 0.5 and < 0.7).Select(point => point.Off)];

        Assert.All(offDb, off => Close.Absolute(0.0, off, 1.5));
    }

    [Fact]
    public void The_sentence_and_the_lesson_are_whole()
    {
        Assert.Contains("Take the plate away", Prediction.Heard, StringComparison.Ordinal);
        WaveBench.IsWhole(Zones.Lesson(Plan));
    }
}
