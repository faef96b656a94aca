using Bunit;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Hornbook.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop;

/// <summary>A bench on which a plate stands: its reading comes after the drawing.</summary>
public sealed class PanelledSessionTests
{
    private const string Plate = """

        [panels.plate]
        kind = "metal plate"
        width = "6 cm"
        height = "6 cm"
        x = "75 cm"
        y = "10 cm"
        z = "40 cm"
        """;

    private readonly BenchDesk _desk = new(BenchFile.Parse(ExampleBench.File.Text + Plate, "plate.toml"));

    [Fact]
    public async Task A_move_is_drawn_at_once_and_read_when_the_waves_are_solved()
    {
        using BenchSession session = ExampleBench.Session(_desk);
        Assert.NotNull(session.Reading.Panels);
        TaskCompletionSource read = new();
        Pose turned = session.PoseOf(BenchEnd.Source) with { Turn = 0.2 };
        session.Changed += () =>
        {
            if (!session.IsReading)
            {
                read.TrySetResult();
            }
        };
        session.Place(BenchEnd.Source, turned);
        Assert.Equal(turned, session.PoseOf(BenchEnd.Source));
        await read.Task.WaitAsync(TimeSpan.FromSeconds(30), Xunit.TestContext.Current.CancellationToken);
        Assert.Equal(session.Scene.Read(session.Source, session.Receiver), session.Reading);
    }

    [Fact]
    public void A_panel_that_stands_is_drawn_to_scale_in_both_views()
    {
        using BunitContext browser = new();
        IRenderedComponent<BenchSheet> sheet = browser.Render<BenchSheet>(p => p.Add(c => c.Session, ExampleBench.Session(_desk)));
        // derived: 6 cm wide about 10 cm to the left at 75 cm along, seen edge on in both views since it faces along the bench.
        string[] plan = sheet.FindAll("polygon.panel")[0].GetAttribute("points")!.Split(' ');
        Assert.Equal(["750,-70", "750,-130", "750,-130", "750,-70"], plan);
        Assert.Equal(2, sheet.FindAll("polygon.panel").Count);
    }
}
