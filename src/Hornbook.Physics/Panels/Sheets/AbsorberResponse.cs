using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>An absorber as a panel: two surface impedances, for waves that come from both sides alike and opposed. Eq. films (4) to (6).</summary>
internal sealed class AbsorberResponse : ISheetResponse
{
    private readonly Complex _alike;
    private readonly Complex _opposed;

    /// <summary>From what it does at right angles.</summary>
    /// <param name="reflection">R.</param>
    /// <param name="transmission">T.</param>
    internal AbsorberResponse(Complex reflection, Complex transmission) =>
        (_alike, _opposed) = (reflection + transmission, reflection - transmission);

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        double cosine = IncidencePlane.Cosine(across, along);
        (Complex alikeBeside, Complex opposedBeside) = (Slanted(_alike, cosine, 1.0), Slanted(_opposed, cosine, 1.0));
        (Complex alikeWithin, Complex opposedWithin) = (Slanted(_alike, 1.0, cosine), Slanted(_opposed, 1.0, cosine));
        return new SheetMatrices(
            IncidencePlane.Matrix(0.5 * (alikeBeside + opposedBeside), 0.5 * (alikeWithin + opposedWithin), across, along),
            IncidencePlane.Matrix(0.5 * (alikeBeside - opposedBeside), 0.5 * (alikeWithin - opposedWithin), across, along));
    }

    // (z a − b)/(z a + b) with z = (1 + Γ)/(1 − Γ), without the division that a perfect wall does not stand.
    private static Complex Slanted(Complex atRightAngles, double a, double b)
    {
        (double sum, double difference) = (a + b, a - b);
        return (difference + (sum * atRightAngles)) / (sum + (difference * atRightAngles));
    }
}
