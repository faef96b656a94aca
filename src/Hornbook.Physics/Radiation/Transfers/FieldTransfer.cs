namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>The field of the samples of each of two bodies at the samples of the other: as <see cref="RadiatedField"/>, in less time, to a stated tolerance.</summary>
/// <remarks>
/// Where boxes of samples are far enough from each other, currents go to few nodes and fields come from few nodes, Eq. radiation (11) to (14); elsewhere
/// and where it is cheaper, every source is summed for every observer. What goes one way is the transpose of what goes the other, so reciprocity
/// holds to rounding. The plan is geometry only: keep the transfer as long as neither body moves. Safe for use on several threads at once.
/// </remarks>
internal sealed class FieldTransfer
{
    /// <summary>−80 dB.</summary>
    internal const double UsualTolerance = 1e-4;

    private readonly OneWay _there;
    private readonly OneWay _back;

    private FieldTransfer(OneWay there, OneWay back, double cost)
    {
        (_there, _back, Cost) = (there, back, cost);
    }

    /// <summary>What one way will take, about, on one core of the machine of docs/performance.md [s].</summary>
    internal double Cost { get; }

    /// <summary>A transfer between two bodies.</summary>
    /// <param name="first">Samples of the one.</param>
    /// <param name="second">Samples of the other; none at the place of one of the first.</param>
    /// <param name="wavenumber">k = 2π/λ [1/m]; finite, &gt; 0.</param>
    /// <param name="tolerance">Error of the field over the largest field there, of currents as they come [-]; 1e-8 to 0.1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wavenumber or the tolerance is out of its range.</exception>
    internal static FieldTransfer Between(SampleTree first, SampleTree second, double wavenumber, double tolerance = UsualTolerance)
    {
        Require.Positive(wavenumber);
        Require.Within(tolerance, 1e-8, 0.1);
        (BoxPair[] pairs, double cost) = TransferPlan.Of(first, second, wavenumber, -Math.Log(tolerance));
        return new FieldTransfer(
            new OneWay(first, second, pairs, wavenumber, cost),
            new OneWay(second, first, pairs.Select(p => new BoxPair(p.Second, p.First, p.SecondGrid, p.FirstGrid)), wavenumber, cost),
            cost * 1e-9);
    }

    /// <summary>Adds E and H of currents at the samples of the first body to the fields at the samples of the second.</summary>
    /// <param name="currents">At the points that the first tree was made from, in their order.</param>
    /// <param name="fields">In the order of the points that the second tree was made from.</param>
    internal void AddFromFirst(CurrentSamples currents, Memory<FieldSample> fields) => _there.Add(currents, fields);

    /// <summary>The other way round.</summary>
    /// <inheritdoc cref="AddFromFirst"/>
    internal void AddFromSecond(CurrentSamples currents, Memory<FieldSample> fields) => _back.Add(currents, fields);
}
