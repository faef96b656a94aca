using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>Flat layers in a row, with air on both sides: a sheet of plastic, a window, two half mirrors.</summary>
public sealed class LayeredSheet : ISheet
{
    private readonly Layer[] _layers;

    /// <summary>A sheet.</summary>
    /// <param name="layers">In the order in which the wave meets them; ≥ 1.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    public LayeredSheet(params IReadOnlyList<Layer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        _layers = layers.Count > 0 ? [.. layers] : throw new ArgumentException("no layer; a sheet has at least one");
    }

    /// <summary>The layers, in the order in which the wave meets them.</summary>
    public IReadOnlyList<Layer> Layers => _layers;

    /// <summary>All layers together [m].</summary>
    public double Thickness => _layers.Sum(layer => layer.Thickness);

    /// <inheritdoc/>
    /// <remarks>The front face is that of the last layer: a wave along +x meets the first layer first.</remarks>
    public ISheetResponse At(double frequency) => new LayeredResponse(this, Require.Positive(frequency));

    /// <summary>What becomes of a plane wave.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="angle">Between the wave and the normal [rad]; 0 to just below 90°.</param>
    /// <param name="polarisation">How its electric field lies.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    /// <remarks>
    /// Eq. sheets (2) to (4): reflections at the interfaces, gathered from the last to the first, each layer multiplying by e^{−jk_z d} only, so that a
    /// thick lossy layer does no harm. [BornWolf1999] § 1.6.
    /// </remarks>
    public SheetResponse At(double frequency, double angle, Polarisation polarisation)
    {
        double k = 2.0 * Math.PI * Require.Positive(frequency) / Constants.SpeedOfLight;
        double along = Math.Sin(Incidence.Checked(angle));
        double air = Math.Cos(angle);
        Wave outside = new(air, polarisation == Polarisation.Across ? air : 1.0 / air);
        Complex reflection = Complex.Zero, transmission = Complex.One;
        Wave behind = outside;
        for (int i = _layers.Length - 1; i >= -1; i--)
        {
            Wave before = i >= 0 ? Wave.In(_layers[i].Material.RelativePermittivity(frequency), along, polarisation) : outside;
            Complex interfaceReflection = (before.Admittance - behind.Admittance) / (before.Admittance + behind.Admittance);
            Complex round = 1.0 + (interfaceReflection * reflection);
            Complex through = i >= 0 ? Complex.Exp(new Complex(0.0, -k * _layers[i].Thickness) * before.Normal) : Complex.One;
            transmission *= through * (1.0 + interfaceReflection) / round;
            reflection = through * through * (interfaceReflection + reflection) / round;
            behind = before;
        }

        Complex toMiddle = Complex.Exp(new Complex(0.0, k * air * Thickness));
        return new SheetResponse(reflection * toMiddle, transmission * toMiddle);
    }

    // Normal wavenumber over k, and wave admittance of the tangential fields over that of vacuum.
    private readonly record struct Wave(Complex Normal, Complex Admittance)
    {
        internal static Wave In(Complex permittivity, double along, Polarisation polarisation)
        {
            // The root that dies out along the way: its imaginary part is not positive.
            Complex root = Complex.Sqrt(permittivity - (along * along));
            Complex normal = root.Imaginary > 0.0 ? -root : root;
            return new Wave(normal, polarisation == Polarisation.Across ? normal : permittivity / normal);
        }
    }
}
