using Bunit;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Hands;
using Hornbook.Testing;
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
        // derived: 6 cm wide about 10 cm to the left at 75 cm along, seen edge on in both views since it faces along the bench; 8 mm thick at least, to be taken hold of.
        string[] plan = [.. sheet.FindAll("polygon.slab")[0].GetAttribute("points")!.Split(' ').Order(StringComparer.Ordinal)];
        Assert.Equal(["746,-130", "746,-70", "754,-130", "754,-70"], plan);
        Assert.Equal(2, sheet.FindAll("polygon.slab").Count);
    }

    [Fact]
    public void A_panel_is_moved_flipped_copied_laid_aside_and_removed_each_as_one_step()
    {
        using BenchSession session = ExampleBench.Session(_desk);
        BenchThing plate = BenchThing.Panel("plate");
        session.Place(plate, session.PoseOf(plate) with { Turn = 0.3, Roll = 0.2 });
        session.Release();
        session.Flip(session.Panels[0]);

        // derived: half a turn about its own upright; what was rolled one way is rolled the other.
        Close.Absolute(0.3 - Math.PI, session.PoseOf(plate).Turn, 1e-3);
        Close.Absolute(-0.2, session.PoseOf(plate).Roll, 1e-3);

        session.Copy(session.Panels[0]);
        Assert.Equal(["plate", "plate-2"], session.Panels.Select(panel => panel.Name));
        session.Stand(session.Panels[0], stands: false);
        Assert.False(session.Panels[0].Stands);
        session.Remove(session.Panels[1]);
        session.Add("strip grid");
        Assert.Equal(["plate", "strip-grid"], session.Panels.Select(panel => panel.Name));
        for (int i = 0; i < 6; i++)
        {
            session.Undo();
        }

        Assert.Equal(ExampleBench.File.Text + Plate, _desk.Now.File.Text);
    }
}
