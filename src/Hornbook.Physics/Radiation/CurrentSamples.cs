using System.Numerics;

namespace Hornbook.Physics.Radiation;

/// <summary>Equivalent currents sampled at points: electric current moments J dS [A m] and magnetic current moments M dS [V m], peak phasors e^{+jωt}.</summary>
/// <remarks>Structure of arrays, because the radiation kernel walks it so. Immutable.</remarks>
public sealed class CurrentSamples
{
    private const double PerImpedance = 1.0 / Constants.VacuumImpedance;

    private readonly Vector[] _points;
    private readonly ComplexVector[] _electric;

    // Null where none flow at all, as on metal: mixtures of sweeps are many and long.
    private readonly ComplexVector[]? _magnetic;
    private readonly Lazy<ComplexVector[]> _none;
    private readonly Lazy<ComplexVector[]> _dual;
    private readonly Lazy<CurrentKind> _kind;

    /// <summary>Samples at points.</summary>
    /// <param name="points">Places [m], length n.</param>
    /// <param name="electric">J dS [A m], length n.</param>
    /// <param name="magnetic">M dS [V m], length n.</param>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    public CurrentSamples(ReadOnlySpan<Vector> points, ReadOnlySpan<ComplexVector> electric, ReadOnlySpan<ComplexVector> magnetic)
        : this(points.ToArray(), electric.ToArray(), magnetic.ToArray())
    {
        if (points.Length != electric.Length || points.Length != magnetic.Length)
        {
            throw new ArgumentException($"{points.Length} points, {electric.Length} electric and {magnetic.Length} magnetic currents; the three lengths must be equal");
        }
    }

    private CurrentSamples(Vector[] points, ComplexVector[] electric, ComplexVector[]? magnetic)
    {
        (_points, _electric, _magnetic) = (points, electric, magnetic);

        // Most mixtures of sweeps never send.
        _none = new Lazy<ComplexVector[]>(() => new ComplexVector[_points.Length], LazyThreadSafetyMode.PublicationOnly);
        _dual = new Lazy<ComplexVector[]>(() => _magnetic is { } flowing ? Array.ConvertAll(flowing, Turned) : _none.Value, LazyThreadSafetyMode.PublicationOnly);
        _kind = new Lazy<CurrentKind>(() => KindOf(_electric, _magnetic ?? []), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>No currents at all.</summary>
    public static CurrentSamples None { get; } = new([], [], []);

    /// <summary>How many points.</summary>
    public int Count => _points.Length;

    /// <summary>Places [m], length n.</summary>
    public ReadOnlySpan<Vector> Points => _points;

    /// <summary>J dS [A m], length n.</summary>
    public ReadOnlySpan<ComplexVector> Electric => _electric;

    /// <summary>M dS [V m], length n.</summary>
    public ReadOnlySpan<ComplexVector> Magnetic => _magnetic ?? _none.Value;

    /// <summary>The same; none at all where none flow.</summary>
    internal ReadOnlySpan<ComplexVector> FlowingMagnetic => _magnetic;

    /// <summary>Which components can be other than zero: half the work for the kernel where half of them are.</summary>
    internal CurrentKind Kind => _kind.Value;

    /// <summary>jM dS/η [A m]: with it in place of M, E and jηH come from one formula with the currents swapped.</summary>
    internal ReadOnlySpan<ComplexVector> Dual => _dual.Value;

    /// <summary>As the kernel walks them.</summary>
    internal CurrentSpans Spans => new(_points, _electric, _dual.Value, Kind);

    /// <summary>Samples that keep the arrays given, of one length, which nobody writes to any more; no magnetic ones where none flow.</summary>
    internal static CurrentSamples Keeping(Vector[] points, ComplexVector[] electric, ComplexVector[]? magnetic) => new(points, electric, magnetic);

    /// <summary>The same currents held in a pose: points and vectors of the own frame expressed in the bench frame.</summary>
    public CurrentSamples Posed(Pose pose)
    {
        Frame frame = Frame.Of(pose);
        return Keeping(
            Array.ConvertAll(_points, frame.Place), Array.ConvertAll(_electric, frame.Turn), Converted(_magnetic, frame.Turn));
    }

    /// <summary>All currents multiplied by a number.</summary>
    public CurrentSamples Scaled(Complex factor) =>
        new(_points, Array.ConvertAll(_electric, v => v * factor), Converted(_magnetic, v => v * factor));

    /// <summary>Some of them.</summary>
    /// <param name="chosen">Their places in the order of these.</param>
    internal CurrentSamples Chosen(int[] chosen) => new(
        Array.ConvertAll(chosen, i => _points[i]), Array.ConvertAll(chosen, i => _electric[i]), _magnetic is { } magnetic ? Array.ConvertAll(chosen, i => magnetic[i]) : null);

    /// <summary>These currents and others at the same points times a factor; none count as zero.</summary>
    internal CurrentSamples Plus(CurrentSamples other, Complex factor) => Plus([(other, factor)]);

    /// <summary>These currents and several others at the same points, each times a factor; none count as zero.</summary>
    internal CurrentSamples Plus(ReadOnlySpan<(CurrentSamples Other, Complex Factor)> others)
    {
        ComplexVector[] electric = [.. _electric];
        ComplexVector[]? magnetic = _magnetic is null ? null : [.. _magnetic];
        foreach ((CurrentSamples other, Complex factor) in others)
        {
            PhasorSums.Add(electric, other._electric, factor);
            if (other._magnetic is not null)
            {
                PhasorSums.Add(magnetic ??= new ComplexVector[Count], other._magnetic, factor);
            }
        }

        return new CurrentSamples(_points, electric, magnetic);
    }

    /// <summary>The points weighted with |J|² + |M|²/η²; their plain middle where nothing flows [m].</summary>
    internal Vector Centre()
    {
        Vector sum = Vector.Zero, middle = Vector.Zero;
        double weights = 0.0;
        for (int i = 0; i < Count; i++)
        {
            double weight = _electric[i].SquaredMagnitude + (PerImpedance * PerImpedance * (_magnetic?[i].SquaredMagnitude ?? 0.0));
            sum += _points[i] * weight;
            middle += _points[i];
            weights += weight;
        }

        return weights > 0.0 ? sum * (1.0 / weights) : middle * (1.0 / Math.Max(1, Count));
    }

    /// <summary>Σ |J|² + |M|²/η² [A² m²].</summary>
    internal double Squared() => Inner(this, this).Real;

    /// <summary>Σ J*·J' + M*·M'/η² [A² m²] of currents at the same points; none count as zero.</summary>
    internal static Complex Inner(CurrentSamples a, CurrentSamples b) =>
        PhasorSums.Inner(a._electric, b._electric) + (PerImpedance * PerImpedance * PhasorSums.Inner(a._magnetic, b._magnetic));

    private static ComplexVector[]? Converted(ComplexVector[]? currents, Converter<ComplexVector, ComplexVector> conversion) =>
        currents is null ? null : Array.ConvertAll(currents, conversion);

    private static ComplexVector Turned(ComplexVector m) => new(Turned(m.X), Turned(m.Y), Turned(m.Z));

    // j times it over the impedance.
    private static Complex Turned(Complex m) => new(-PerImpedance * m.Imaginary, PerImpedance * m.Real);

    private static CurrentKind KindOf(ComplexVector[] electric, ComplexVector[] magnetic)
    {
        if (Array.TrueForAll(electric, j => j.X == Complex.Zero && j.Y == Complex.Zero)
            && Array.TrueForAll(magnetic, m => m.X == Complex.Zero && m.Z == Complex.Zero))
        {
            return CurrentKind.Mouth;
        }

        return Array.TrueForAll(magnetic, m => m == default) ? CurrentKind.Electric : CurrentKind.Any;
    }
}
