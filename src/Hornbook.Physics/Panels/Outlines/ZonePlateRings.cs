using Hornbook.Physics.Panels.Outlines.Shapes;

namespace Hornbook.Physics.Panels.Outlines;

/// <summary>The circles of a zone plate: where the way by the plate is longer than the straight one by whole numbers of half wavelengths.</summary>
/// <remarks>Eq. outlines (7), (8). Source: [BornWolf1999].</remarks>
public sealed class ZonePlateRings
{
    private ZonePlateRings(double[] radii) => Radii = radii;

    /// <summary>The outer radius of each zone [m], length n, ascending.</summary>
    public IReadOnlyList<double> Radii { get; }

    /// <summary>The zones for a plane wave and a focus, r_n = √(nλf + n²λ²/4).</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="focalLength">From the plate to the focus, f [m]; finite, &gt; 0.</param>
    /// <param name="count">How many zones; ≥ 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static ZonePlateRings For(double wavelength, double focalLength, int count)
    {
        (double half, double f) = (0.5 * Require.Positive(wavelength), Require.Positive(focalLength));
        return Zones(count, n => Math.Sqrt(n * half * ((2.0 * f) + (n * half))));
    }

    /// <summary>The zones for a source and a receiver on either side of the plate.</summary>
    /// <param name="wavelength">λ [m]; finite, &gt; 0.</param>
    /// <param name="sourceDistance">From the source to the plate, a [m]; finite, &gt; 0.</param>
    /// <param name="receiverDistance">From the plate to the receiver, b [m]; finite, &gt; 0.</param>
    /// <param name="count">How many zones; ≥ 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static ZonePlateRings Between(double wavelength, double sourceDistance, double receiverDistance, int count)
    {
        (double half, double a, double b) = (0.5 * Require.Positive(wavelength), Require.Positive(sourceDistance), Require.Positive(receiverDistance));
        return Zones(count, n =>
        {
            double longer = n * half;
            double more = longer * ((2.0 * b) + longer) / (2.0 * (a + b + longer));
            return Math.Sqrt(more * ((2.0 * a) + more));
        });
    }

    /// <summary>Cuts every other zone out of a plate about its origin; what lies beyond the last zone stays as it is.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="isCentreOpen">Whether the zones 1, 3, 5 … are open, or 2, 4, 6 …</param>
    /// <exception cref="ArgumentException">Nothing is left.</exception>
    public FlatSurface Cut(Shape plate, bool isCentreOpen)
    {
        int first = isCentreOpen ? 0 : 1;
        Piece[] openings = [.. Enumerable.Range(0, Radii.Count).Where(zone => zone % 2 == first).Select(zone => Piece.Removed(Zone(zone)))];
        return new FlatSurface(plate, openings);
    }

    private static ZonePlateRings Zones(int count, Func<int, double> radius)
    {
        Require.Within(count, 1, int.MaxValue);
        return new ZonePlateRings([.. Enumerable.Range(1, count).Select(radius)]);
    }

    private Shape Zone(int zone) => zone == 0 ? new DiscShape(0.0, 0.0, Radii[0]) : new RingShape(0.0, 0.0, Radii[zone - 1], Radii[zone]);
}
