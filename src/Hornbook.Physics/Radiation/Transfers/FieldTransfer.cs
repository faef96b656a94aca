namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>The field of the samples of one body at the samples of another: as <see cref="RadiatedField"/>, in less time, to a stated tolerance.</summary>
/// <remarks>
/// Where boxes of samples are far enough from each other, currents go to few nodes and fields come from few nodes, Eq. radiation (11) to (14); elsewhere
/// and where it is cheaper, every source is summed for every observer. The plan is geometry only: keep the transfer as long as neither body moves. Safe for
/// use on several threads at once.
/// </remarks>
internal sealed class FieldTransfer
{
    /// <summary>−80 dB.</summary>
    internal const double UsualTolerance = 1e-4;

    // A phase of some hundred radians in floats is off by 2e-5 or so, a fifth of this.
    private const double ToleranceOfFloats = 1e-4;

    private readonly OneWay _way;

    private FieldTransfer(OneWay way, double gain) => (_way, Gain) = (way, gain);

    /// <summary>How many times as long it would take to sum every source for every observer [-], as planned; ≥ 1.</summary>
    internal double Gain { get; }

    /// <summary>A transfer between two bodies.</summary>
    /// <param name="sources">Samples of the one.</param>
    /// <param name="observers">Samples of the other; none at the place of one of the first.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="tolerance">Error of the field over the largest field there, of currents as they come [-]; 1e-8 to 0.1.</param>
    /// <param name="part">What is asked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wavenumber or the tolerance is out of its range.</exception>
    internal static FieldTransfer Between(SampleTree sources, SampleTree observers, double wavenumber, double tolerance = UsualTolerance, FieldPart part = FieldPart.Whole)
    {
        Require.Positive(wavenumber);
        Require.Within(tolerance, 1e-8, 0.1);
        bool inFloats = tolerance >= ToleranceOfFloats;
        (BoxPair[] pairs, double cost) = TransferPlan.Of(sources, observers, wavenumber, -Math.Log(tolerance), inFloats);
        return new FieldTransfer(new OneWay(sources, observers, pairs, wavenumber, cost, inFloats, part), TransferPlan.DirectCost(sources, observers, inFloats) / cost);
    }

    /// <summary>Adds E and H of currents at the samples of the one body to the fields at the samples of the other.</summary>
    /// <param name="currents">At the points that the tree of the sources was made from, in their order.</param>
    /// <param name="fields">In the order of the points that the tree of the observers was made from.</param>
    internal void Add(CurrentSamples currents, Memory<FieldSample> fields) => _way.Add(currents, fields);
}
