using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Hands;
using Xunit;

namespace Hornbook.Tests.Tabletop;

public sealed class RulerTests
{
    [Fact]
    public void A_length_is_told_in_both_units_and_in_wavelengths()
    {
        Ruler ruler = new(new Vector(0.1, 0.0, 0.2), new Vector(0.4, 0.4, 0.2));
        // derived: 30 by 40 cm are 50 cm; an inch is 2.54 cm; a wavelength of 25 mm goes 20 times.
        Assert.Equal("50.0 cm, 19.69 in, 20.00 λ", ruler.Measured(0.025));
    }

    [Fact]
    public void It_lies_from_mouth_to_mouth_at_first_and_is_moved_by_keys_and_hands()
    {
        using BenchSession session = ExampleBench.Session();
        BenchHands hands = new(session);
        session.ToggleRuler();
        Assert.Equal(session.Distance, session.Ruler!.Length);
        hands.Press("ruler", "to", "plan", "ArrowLeft", fine: false);
        // derived: the keys go in steps of 1 cm.
        Assert.Equal(session.Receiver.Pose.Position.X - 0.01, session.Ruler.To.X, 12);
        hands.Grasp("ruler", "from", "plan", 300.0, 0.0);
        hands.Follow(200.0, 0.0, free: false);
        hands.Release();
        // derived: 100 mm to the left of the source.
        Assert.Equal(session.Source.Pose.Position.X - 0.1, session.Ruler.From.X, 12);
        Assert.False(session.History.CanUndo);
        session.ToggleRuler();
        Assert.Null(session.Ruler);
    }
}
