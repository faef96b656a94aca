using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What layers do to the tangential fields of a wave from their first face to their last, (E, H)_first = [A B; C D] (E, H)_last, times a scale.</summary>
/// <remarks>
/// Eq. sheets (5): entire functions of cos²θ, without poles or branches, so that they can be interpolated up to grazing. The scale keeps
/// thick lossy layers finite and is the same at every angle. [BornWolf1999] § 1.6.
/// </remarks>
internal readonly record struct LayeredTransfer(Complex A, Complex B, Complex C, Complex D)
{
    private static LayeredTransfer Identity { get; } = new(Complex.One, Complex.Zero, Complex.Zero, Complex.One);

    /// <summary>The layers one after the other.</summary>
    /// <param name="layers">In the order in which the wave meets them.</param>
    /// <param name="frequency">f [Hz].</param>
    /// <param name="cosine">cos θ of the wave in air.</param>
    /// <param name="polarisation">How its electric field lies.</param>
    internal static LayeredTransfer Of(IReadOnlyList<Layer> layers, double frequency, double cosine, Polarisation polarisation)
    {
        LayeredTransfer all = Identity;
        foreach (Layer layer in layers)
        {
            all = all.Then(Of(layer, frequency, cosine, polarisation));
        }

        return all;
    }

    /// <summary>The scale in its logarithm, as all elements carry it.</summary>
    internal static double LogScale(IReadOnlyList<Layer> layers, double frequency) => layers.Sum(layer => LogScale(layer, frequency));

    private static LayeredTransfer Of(Layer layer, double frequency, double cosine, Polarisation polarisation)
    {
        Complex permittivity = layer.Material.RelativePermittivity(frequency);
        Complex normal = Complex.Sqrt(permittivity - 1.0 + (cosine * cosine));
        double kd = FreeSpace.Wavenumber(frequency) * layer.Thickness;
        double scale = LogScale(layer, frequency);
        Complex turn = Complex.ImaginaryOne * kd * normal;
        Complex forward = Complex.Exp(scale - turn), backward = Complex.Exp(scale + turn);
        Complex middle = 0.5 * (forward + backward);

        // j sin φ / φ times kd, also where φ is next to nothing.
        Complex slope = turn.Magnitude > 1e-4 ? 0.5 * (backward - forward) / normal : Complex.ImaginaryOne * kd * Math.Exp(scale) * (1.0 + (turn * turn / 6.0));
        Complex square = normal * normal;
        return polarisation == Polarisation.Across
            ? new LayeredTransfer(middle, slope, square * slope, middle)
            : new LayeredTransfer(middle, square * slope / permittivity, permittivity * slope, middle);
    }

    // Waves die out fastest where they graze.
    private static double LogScale(Layer layer, double frequency)
    {
        Complex normal = Complex.Sqrt(layer.Material.RelativePermittivity(frequency) - 1.0);
        return -Math.Abs(normal.Imaginary) * FreeSpace.Wavenumber(frequency) * layer.Thickness;
    }

    private LayeredTransfer Then(LayeredTransfer next) => new(
        (A * next.A) + (B * next.C), (A * next.B) + (B * next.D), (C * next.A) + (D * next.C), (C * next.B) + (D * next.D));
}
