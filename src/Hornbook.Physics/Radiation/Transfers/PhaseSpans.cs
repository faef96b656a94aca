namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>cos kR and sin kR of points.</summary>
/// <param name="cos">cos kR.</param>
/// <param name="sin">sin kR, as long.</param>
internal readonly ref struct PhaseSpans(Span<double> cos, Span<double> sin)
{
    /// <summary>cos kR.</summary>
    internal Span<double> Cos { get; } = cos;

    /// <summary>sin kR.</summary>
    internal Span<double> Sin { get; } = sin;

    /// <summary>How many there is room for.</summary>
    internal int Length => Cos.Length;

    /// <summary>Some of them.</summary>
    internal PhaseSpans Slice(int start, int length) => new(Cos.Slice(start, length), Sin.Slice(start, length));
}
