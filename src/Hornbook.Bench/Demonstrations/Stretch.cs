namespace Hornbook.Bench.Demonstrations;

/// <summary>A part of a curve: from one of its points to another, both included.</summary>
/// <param name="First">The first point.</param>
/// <param name="Last">The last point; the same where it is one alone.</param>
public readonly record struct Stretch(Setting First, Setting Last)
{
    /// <summary>Where along the abscissa it begins, SI units.</summary>
    public double From => First.At;

    /// <summary>Where along the abscissa it ends, SI units.</summary>
    public double To => Last.At;

    /// <summary>The stretches of neighbouring points for which something holds, in the order shown.</summary>
    public static IReadOnlyList<Stretch> Where(Curve curve, Func<CurvePoint, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(curve);
        List<Stretch> stretches = [];
        Setting? first = null, last = null;
        foreach (CurvePoint point in curve.Points)
        {
            if (holds(point))
            {
                first ??= point.Setting;
                last = point.Setting;
            }
            else if (first is not null)
            {
                stretches.Add(new Stretch(first, last!));
                first = null;
            }
        }

        if (first is not null)
        {
            stretches.Add(new Stretch(first, last!));
        }

        return stretches;
    }
}
