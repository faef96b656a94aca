using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>The angle at which a wave meets a sheet.</summary>
internal static class Incidence
{
    // Grazing waves see every sheet as a mirror; the last millionth of a degree is not computed.
    private const double Largest = 0.5 * Math.PI * (1.0 - 1e-8);

    /// <summary>Passes an angle to the normal [rad], 0 to just below 90°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is outside.</exception>
    internal static double Checked(double angle, [CallerArgumentExpression(nameof(angle))] string name = "") =>
        Require.Within(angle, 0.0, Largest, name);
}
