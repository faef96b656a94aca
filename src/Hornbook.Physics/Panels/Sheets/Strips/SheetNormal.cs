using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>The normal wavenumber of a wave in air beside a sheet.</summary>
internal static class SheetNormal
{
    // A wave that grazes exactly has no finite impedance.
    private const double Smallest = 1e-9;

    /// <summary>k_z/k = √(1 − κ²), of the root that dies out.</summary>
    /// <param name="squaredTangential">κ², the squared wave vector in the sheet over k².</param>
    internal static Complex Of(double squaredTangential)
    {
        double squared = 1.0 - squaredTangential;
        double root = Math.Max(Math.Sqrt(Math.Abs(squared)), Smallest);
        return squared >= 0.0 ? new Complex(root, 0.0) : new Complex(0.0, -root);
    }
}
