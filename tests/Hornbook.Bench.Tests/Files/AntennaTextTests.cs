using CsCheck;
using Hornbook.Bench.Files;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class AntennaTextTests
{
    private static readonly string Example = File.ReadAllText(Repository.At("examples", "evening-bench.toml"));

    private static readonly Gen<RectangularGuide> Guides = Gen.OneOf(
        Gen.Int[0, StandardGuides.All.Count - 1].Select(i => StandardGuides.All[i].Guide),
        Gen.Select(Gen.Double[5e-3, 60e-3], Gen.Double[2e-3, 30e-3], (width, height) => new RectangularGuide(width, height)));

    private static readonly Gen<AntennaShape> Shapes =
        from guide in Guides
        from wide in Gen.Double[1.2, 4.0]
        from high in Gen.Double[1.2, 4.0]
        from length in Gen.Double[20e-3, 300e-3]
        from kind in Gen.Int[0, 3]
        select kind switch
        {
            0 => new OpenGuide(guide, Conductor.Brass),
            1 => new Horn(guide, guide.Width * wide, guide.Height, length, Conductor.Brass),
            2 => new Horn(guide, guide.Width, guide.Height * high, length, Conductor.Brass),
            _ => (AntennaShape)new Horn(guide, guide.Width * wide, guide.Height * high, length, Conductor.Brass),
        };

    [Fact]
    public void Reads_back_as_the_same_antenna_to_a_micrometre() => Shapes.Sample(
        shape =>
        {
            string pasted = Example + "\n" + string.Join('\n', AntennaText.Lines("pasted", shape)) + "\n";
            AntennaShape read = BenchFile.Parse(pasted, "pasted.toml").Plan!.Antenna("pasted");
            Assert.Equal(shape.GetType(), read.GetType());
            // Half a micrometre: the last digit written.
            Close.Absolute(shape.MouthWidth, read.MouthWidth, 0.6e-6);
            Close.Absolute(shape.MouthHeight, read.MouthHeight, 0.6e-6);
            Close.Absolute((shape as Horn)?.Length ?? 0.0, (read as Horn)?.Length ?? 0.0, 0.6e-6);
            Assert.Equal(shape.Walls, read.Walls);
        },
        iter: 100);
}
