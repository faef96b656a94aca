using System.Numerics;
using CsCheck;
using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Tests.Antennas.ClosedForm;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Edges;

public sealed class FresnelTailTests
{
    private static readonly Complex Ray = Complex.FromPolarCoordinates(1.0, 0.25 * Math.PI);

    [Fact]
    public void Is_what_Fresnels_integral_leaves() => Gen.Double[0.0, 3.5].Sample(v =>
    {
        // Abramowitz and Stegun 1964, chapter 7 (from memory): erfc(e^{jπ/4}v) = 1 − √2 e^{jπ/4} (C(t) − jS(t)), t = v√(2/π); C + jS by its power series.
        Complex integral = Complex.Conjugate(FresnelSeries.Integral(v * Math.Sqrt(2.0 / Math.PI)));
        Complex expected = Complex.FromPolarCoordinates(1.0, v * v) * (1.0 - (Math.Sqrt(2.0) * Ray * integral));
        // The error that the class states.
        Close.Absolute(0.0, (FresnelTail.At(v) - expected).Magnitude, 1e-8);
    });

    [Fact]
    public void Is_its_integral_everywhere() => Gen.Double[-4.0, 4.0].Sample(log =>
    {
        double v = Math.Pow(10.0, log);
        // The integral by quadrature between the points where it was taken; the error that the class states.
        Close.Absolute(0.0, (FresnelTail.At(v) - FresnelTail.ByIntegration(v)).Magnitude, 1e-8);
    });

    [Fact]
    public void Is_one_at_the_start() => Close.Absolute(0.0, (FresnelTail.At(0.0) - 1.0).Magnitude, 1e-8);

    [Fact]
    public void Falls_as_one_over_its_argument()
    {
        // Abramowitz and Stegun 1964, chapter 7 (from memory), two terms of the asymptotic series: 1/(√π z) (1 − 1/(2z²)), z = e^{jπ/4}v; the next is 3/(4z⁴).
        Complex z = Ray * 30.0;
        Complex expected = (1.0 - (0.5 / (z * z))) / (Math.Sqrt(Math.PI) * z);
        Close.Absolute(0.0, (FresnelTail.At(30.0) - expected).Magnitude, 3e-8);
    }
}
