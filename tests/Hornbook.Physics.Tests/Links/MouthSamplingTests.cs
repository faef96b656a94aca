using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Links;
using Hornbook.Physics.Tests.Antennas;
using Xunit;

namespace Hornbook.Physics.Tests.Links;

public sealed class MouthSamplingTests
{
    [Theory]
    // Derived: against twice the points along each side.
    [InlineData(0.05, 0.0, 3e-6)]
    [InlineData(0.05, 1.0, 3e-4)]
    [InlineData(0.3, 0.0, 3e-6)]
    [InlineData(1.0, 0.3, 3e-6)]
    public void The_points_over_a_mouth_are_enough(double distance, double turn, double tolerance)
    {
        Complex coarse = At(1.0, distance, turn), fine = At(2.0, distance, turn);
        Assert.InRange((coarse - fine).Magnitude / fine.Magnitude, 0.0, tolerance);
    }

    [Fact]
    public void The_error_falls_exponentially_with_the_points()
    {
        // Gauss–Legendre on an analytic integrand: each step of the same size divides the error by more than the one before.
        Complex exact = At(2.0, 0.1, 0.0);
        double Error(double refinement) => (At(refinement, 0.1, 0.0) - exact).Magnitude;
        Assert.InRange(Error(0.8) / Error(0.6), 0.0, 0.1);
        Assert.InRange(Error(1.0) / Error(0.8), 0.0, 0.1);
    }

    private static Complex At(double refinement, double distance, double turn) => Link.Amplitude(
        Antenna.At(SampleAntennas.TableHorn, 10.5e9, refinement),
        new Pose(Vector.Zero),
        Antenna.At(SampleAntennas.TableHorn, 10.5e9, refinement),
        new Pose(new Vector(distance, 0.02, 0.01), Math.PI + turn));
}
