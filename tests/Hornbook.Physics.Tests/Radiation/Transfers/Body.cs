using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Tests.Radiation.Transfers;

/// <summary>Samples of a thing and the axes that it is flat along.</summary>
internal sealed record Body(Vector[] Points, Frame Axes)
{
    // Common practice, no source: five and more samples a wavelength, which at the 10 GHz of the bench is 6 mm.
    private const double Step = 0.006;

    internal static Gen<double> Angle { get; } = Gen.Double[-Math.PI, Math.PI];

    internal SampleTree Tree => SampleTree.Of(Points, Axes);

    /// <summary>A flat lattice in its own y-z plane, as a panel has.</summary>
    internal static Body Sheet(double width, double height, Pose pose)
    {
        int across = (int)Math.Ceiling(width / Step), along = (int)Math.Ceiling(height / Step);
        Frame frame = Frame.Of(pose);
        return new Body(
            [
                .. from j in Enumerable.Range(0, along)
                   from i in Enumerable.Range(0, across)
                   select frame.Place(new Vector(0.0, (((i + 0.5) / across) - 0.5) * width, (((j + 0.5) / along) - 0.5) * height))
            ],
            frame);
    }

    /// <summary>A flat lattice in the plane of the bench, as the table top has.</summary>
    internal static Body Table(double length, double width) => Sheet(length, width, new Pose(Vector.Zero, tilt: Math.PI / 2.0, roll: Math.PI / 2.0));

    /// <summary>A panel held anyhow in a place.</summary>
    internal static Gen<Body> Panel(Vector place, double side) =>
        Gen.Select(Angle, Angle, Angle, (turn, tilt, roll) => Sheet(side, 0.7 * side, new Pose(place, turn, tilt, roll)));

    /// <summary>Points without any order in a cube, under axes that have nothing to do with it.</summary>
    internal static Gen<Body> Cloud(Vector place, double side, int count) =>
        Gen.Select(RandomCurrents.Place(place, 0.5 * side).Array[count], Angle, Angle, (points, turn, tilt) =>
            new Body(points, Frame.Of(new Pose(place, turn, tilt))));
}
