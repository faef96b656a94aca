using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Panels.Choosing;

/// <summary>How a grid is made: two numbers are left open, the period and the size of the metal.</summary>
public abstract record GridMake
{
    private protected GridMake()
    {
    }

    /// <summary>The least share of the period that the metal may take [-].</summary>
    public abstract double LeastShare { get; }

    /// <summary>The largest share of the period that the metal may take [-].</summary>
    public abstract double LargestShare { get; }

    /// <summary>The grid.</summary>
    /// <param name="period">From the middle of one strip or wire to the middle of the next, p [m]; finite, &gt; 0.</param>
    /// <param name="metal">Width of a strip or diameter of a wire [m]; from the least to the largest share of the period.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range.</exception>
    public abstract ISheet Made(double period, double metal);

    /// <summary>The same, without a table: each direction that is asked for is solved alone.</summary>
    internal abstract ISheetResponse Solved(double period, double metal, double frequency);
}

/// <summary>Flat strips.</summary>
/// <param name="Board">What they are on; null in air.</param>
public sealed record StripMake(LayeredSheet? Board = null) : GridMake
{
    /// <inheritdoc/>
    public override double LeastShare => 0.01;

    /// <inheritdoc/>
    public override double LargestShare => 0.99;

    /// <inheritdoc/>
    public override ISheet Made(double period, double metal)
    {
        StripGrid strips = new(period, metal);
        return Board is null ? strips : new BoardedStripGrid(strips, Board);
    }

    /// <inheritdoc/>
    internal override ISheetResponse Solved(double period, double metal, double frequency)
    {
        StripGrid strips = new(period, metal);
        return Board is null ? strips.Solved(frequency) : new BoardedStripGrid(strips, Board).Solved(frequency);
    }
}

/// <summary>Round wires in air.</summary>
public sealed record WireMake : GridMake
{
    /// <inheritdoc/>
    public override double LeastShare => 0.001;

    /// <inheritdoc/>
    public override double LargestShare => 0.4;

    /// <inheritdoc/>
    public override ISheet Made(double period, double metal) => new WireGrid(period, metal);

    /// <inheritdoc/>
    internal override ISheetResponse Solved(double period, double metal, double frequency) => new WireGrid(period, metal).Solved(frequency);
}
