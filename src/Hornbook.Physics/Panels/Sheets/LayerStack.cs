using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>Layers at one frequency, met by waves that travel or die out.</summary>
internal sealed class LayerStack
{
    private readonly Complex[] _permittivity;
    private readonly double[] _phase;

    /// <summary>Layers in the order in which the wave meets them.</summary>
    internal LayerStack(IReadOnlyList<Layer> layers, double frequency)
    {
        double k = FreeSpace.Wavenumber(frequency);
        _permittivity = [.. layers.Select(layer => layer.Material.RelativePermittivity(frequency))];
        _phase = [.. layers.Select(layer => k * layer.Thickness)];
    }

    /// <summary>√ of the largest real part of a permittivity: nothing that is guided along the layers is slower [-].</summary>
    internal double LargestIndex => Math.Sqrt(_permittivity.Max(permittivity => permittivity.Real));

    /// <summary>kd of the layer that is met first [rad].</summary>
    internal double FirstPhase => _phase[0];

    /// <summary>What the layers make of a wave, R at the first face and T from there to the last.</summary>
    /// <param name="squaredTangential">κ², the squared wave vector along the sheet over k².</param>
    /// <param name="normal">k_z/k in air, √(1 − κ²).</param>
    /// <param name="polarisation">How the electric field lies.</param>
    /// <remarks>
    /// Eq. sheets (2) and (3): reflections at the interfaces, gathered from the last to the first, each layer multiplying by e^{−jk_z d} only, so that a
    /// thick lossy layer does no harm. [BornWolf1999] § 1.6.
    /// </remarks>
    internal SheetResponse FaceToFace(double squaredTangential, Complex normal, Polarisation polarisation)
    {
        Wave outside = new(normal, polarisation == Polarisation.Across ? normal : 1.0 / normal);
        Complex reflection = Complex.Zero, transmission = Complex.One;
        Wave behind = outside;
        for (int i = _phase.Length - 1; i >= -1; i--)
        {
            Wave before = i >= 0 ? Wave.In(_permittivity[i], squaredTangential, polarisation) : outside;
            Complex interfaceReflection = (before.Admittance - behind.Admittance) / (before.Admittance + behind.Admittance);
            Complex round = 1.0 + (interfaceReflection * reflection);
            Complex through = i >= 0 ? Complex.Exp(new Complex(0.0, -_phase[i]) * before.Normal) : Complex.One;
            transmission *= through * (1.0 + interfaceReflection) / round;
            reflection = through * through * (interfaceReflection + reflection) / round;
            behind = before;
        }

        return new SheetResponse(reflection, transmission);
    }

    // Normal wavenumber over k, and wave admittance of the tangential fields over that of vacuum.
    private readonly record struct Wave(Complex Normal, Complex Admittance)
    {
        internal static Wave In(Complex permittivity, double squaredTangential, Polarisation polarisation)
        {
            // The root that dies out along the way: its imaginary part is not positive.
            Complex root = Complex.Sqrt(permittivity - squaredTangential);
            Complex normal = root.Imaginary > 0.0 ? -root : root;
            return new Wave(normal, polarisation == Polarisation.Across ? normal : permittivity / normal);
        }
    }
}
