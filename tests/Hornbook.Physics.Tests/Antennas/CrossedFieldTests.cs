using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Xunit;

namespace Hornbook.Physics.Tests.Antennas;

public sealed class CrossedFieldTests
{
    private const double Frequency = 10.525e9;

    [Fact]
    public void There_is_none_in_the_planes_of_symmetry_and_some_between()
    {
        Antenna guide = Antenna.At(new OpenGuide(StandardGuides.Find("WR-90")!.Guide, Conductor.Brass), Frequency);
        // derived: a TE10 mouth is the same in a mirror at either plane, so nothing but rounding is left there.
        Assert.InRange(CrossedField.Strongest(guide, PatternPlane.Electric), 0.0, 1e-9);
        Assert.InRange(CrossedField.Strongest(guide, PatternPlane.Magnetic), 0.0, 1e-9);
        // Common practice, no source: that of an open guide is 15 to 40 dB down between the planes.
        Assert.InRange(CrossedField.Strongest(guide, PatternPlane.Diagonal), 1e-4, 0.03);
    }

    [Fact]
    public void An_even_mouth_whose_wave_goes_as_in_air_has_none_at_all() =>
        // Ludwig 1973, from memory: by his third definition a plane patch of a plane wave has no crossed field in any direction. A horn's mouth nearly is one.
        Assert.InRange(
            CrossedField.Strongest(Antenna.At(new Horn(StandardGuides.Find("WR-90")!.Guide, 94e-3, 79e-3, 130e-3, Conductor.Brass), Frequency), PatternPlane.Diagonal), 0.0, 1e-6);
}
