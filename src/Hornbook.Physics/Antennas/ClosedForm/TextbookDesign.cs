using System.Globalization;
using Hornbook.Physics.Guides;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>A horn as two textbooks design it for a wanted gain. Kept as a check of our own choice, which starts from the same forms but goes on to the exact fields.</summary>
/// <param name="MouthWidth">In the H plane, A [m].</param>
/// <param name="MouthHeight">In the E plane, B [m].</param>
/// <param name="Length">Throat to mouth along the axis, the same in both planes [m].</param>
/// <param name="RadiusH">The radius that the book uses in the H plane [m]: slant or axial, as the method says.</param>
/// <param name="RadiusE">The radius that the book uses in the E plane [m].</param>
public sealed record TextbookDesign(double MouthWidth, double MouthHeight, double Length, double RadiusH, double RadiusE)
{
    /// <summary>Optimum flares by slant radii, efficiency one half.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="gain">Wanted, G [-]; large enough that both flares open, above about 10.</param>
    /// <remarks>
    /// With χ = ρ_E/λ: (√(2χ) − b/λ)²(2χ − 1) = (G/2π √(3/2π)/√χ − a/λ)² (G²/(6π³χ) − 1), then ρ_H = G²λ/(8π³χ), A = √(3λρ_H), B = √(2λρ_E).
    /// Source: [Balanis2016] § 13.4.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The gain is too small for a flare in both planes.</exception>
    public static TextbookDesign BySlantRadii(RectangularGuide guide, double wavelength, double gain)
    {
        ArgumentNullException.ThrowIfNull(guide);
        Require.Positive(wavelength);
        double g = Require.Positive(gain) / (2.0 * Math.PI);
        double start = g / Math.Sqrt(2.0 * Math.PI);

        // E-plane length minus H-plane length, in waves; both flares must begin in one plane.
        double Mismatch(double chi) => FlareLength(guide.Height / wavelength, Math.Sqrt(2.0 * chi), chi)
            - FlareLength(guide.Width / wavelength, Math.Sqrt(3.0 * g * g / (2.0 * Math.PI * chi)), g * g / (2.0 * Math.PI * chi));

        // Below 1/2 the E-plane mouth, above g²/1.5π the H-plane mouth would be wider than twice its slant radius.
        double lowest = Math.Max(0.5 * start, 0.5), highest = Math.Min(2.0 * start, g * g / (1.5 * Math.PI));
        if (highest <= lowest || !Brent.TryFindRoot(Mismatch, lowest, highest, 1e-12, 100, out double root))
        {
            throw TooSmall(gain);
        }

        double radiusE = root * wavelength, radiusH = g * g / (2.0 * Math.PI * root) * wavelength;
        double height = Math.Sqrt(2.0 * wavelength * radiusE);
        double length = wavelength * FlareLength(guide.Height / wavelength, height / wavelength, root);
        if (length <= 0.0)
        {
            throw TooSmall(gain);
        }

        return new TextbookDesign(Math.Sqrt(3.0 * wavelength * radiusH), height, length, radiusH, radiusE);
    }

    /// <summary>Optimum flares by axial radii, t = 3/8 and s = 1/4.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="gain">Wanted, G [-]; large enough that both flares open, above about 10.</param>
    /// <param name="efficiency">Of the mouth, ε [-]; the book takes 0.51.</param>
    /// <remarks>With B = Gλ²/(4πεA), both lengths equal: A(A − a)/3λ = B(B − b)/2λ. Source: [StutzmanThiele2012] § 9.4.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The gain is too small for a flare in both planes.</exception>
    public static TextbookDesign ByAxialRadii(RectangularGuide guide, double wavelength, double gain, double efficiency = 0.51)
    {
        ArgumentNullException.ThrowIfNull(guide);
        double area = Require.Positive(gain) * Require.Positive(wavelength) * wavelength / (4.0 * Math.PI * Require.Within(efficiency, 0.01, 1.0));
        double Mismatch(double side) => (side * (side - guide.Width) / 3.0) - (area / side * ((area / side) - guide.Height) / 2.0);

        double narrowest = guide.Width, widest = area / guide.Height;
        if (widest <= narrowest || !Brent.TryFindRoot(Mismatch, narrowest, widest, 1e-14, 100, out double width))
        {
            throw TooSmall(gain);
        }

        double height = area / width;
        double length = width * (width - guide.Width) / (3.0 * wavelength);
        return new TextbookDesign(width, height, length, width * width / (3.0 * wavelength), height * height / (2.0 * wavelength));
    }

    private static ArgumentOutOfRangeException TooSmall(double gain) =>
        new(nameof(gain), gain, string.Create(CultureInfo.InvariantCulture, $"gain = {gain}; must be large enough for a flare in both planes, about 10 or more"));

    // Throat to mouth of a flare from its two sides and its slant radius, all in one unit.
    private static double FlareLength(double throat, double mouth, double slant) =>
        (mouth - throat) * Math.Sqrt((slant * slant / (mouth * mouth)) - 0.25);
}
