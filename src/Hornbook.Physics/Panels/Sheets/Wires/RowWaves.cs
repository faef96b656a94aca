using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Wires;

/// <summary>The waves of a row of wires that may travel, for one direction.</summary>
internal readonly ref struct RowWaves
{
    /// <summary>Waves of the orders −n … n.</summary>
    /// <param name="period">p/λ.</param>
    /// <param name="across">k_u/k, ≥ 0.</param>
    /// <param name="along">k_v/k.</param>
    /// <param name="normals">Filled, length 2n + 1.</param>
    /// <param name="quiet">Filled, length 2n + 1.</param>
    internal RowWaves(double period, double across, double along, Span<Complex> normals, Span<double> quiet)
    {
        int zero = normals.Length / 2;
        for (int wave = 0; wave < normals.Length; wave++)
        {
            double b = across + ((wave - zero) / period), squared = 1.0 - (along * along) - (b * b);
            double root = period * Math.Sqrt(Math.Abs(squared));
            normals[wave] = squared >= 0.0 ? root : new Complex(0.0, -root);
            quiet[wave] = RowSums.Quiet(period * b);
        }

        normals[zero] = period * IncidencePlane.Cosine(across, along);
        Normals = normals;
        Quiet = quiet;
    }

    /// <summary>k_z of each, in units of 2π/p.</summary>
    internal ReadOnlySpan<Complex> Normals { get; }

    /// <summary>What stands for each in the equations but for order 0, for which nothing does.</summary>
    internal ReadOnlySpan<double> Quiet { get; }
}
