namespace Hornbook.Physics.Radiation;

/// <summary>Several numbers that one instruction works on, doubles or floats. The kernel is written once over this and runs at the width of the machine.</summary>
internal interface ILanes<TSelf>
    where TSelf : unmanaged, ILanes<TSelf>
{
    /// <summary>How many.</summary>
    static abstract int Count { get; }

    /// <summary>The same number in every lane.</summary>
    static abstract TSelf All(double value);

    /// <summary>The same, of a number that changes from turn to turn of a loop.</summary>
    static abstract TSelf Broadcast(double value);

    /// <summary>The first numbers of a span, one a lane.</summary>
    static abstract TSelf Load(ReadOnlySpan<double> source);

    /// <summary>a b + c, rounded once where the machine can.</summary>
    static abstract TSelf MultiplyAdd(TSelf a, TSelf b, TSelf c);

    /// <summary>Square root.</summary>
    static abstract TSelf Sqrt(TSelf value);

    /// <summary>Square root and one over it.</summary>
    static abstract (TSelf Root, TSelf Inverse) RootAndInverse(TSelf value);

    /// <summary>Whether the lanes hold seven digits, not sixteen: shorter series will do.</summary>
    static abstract bool IsSingle { get; }

    /// <summary>Nearest whole number.</summary>
    static abstract TSelf Round(TSelf value);

    /// <summary>Magnitude.</summary>
    static abstract TSelf Abs(TSelf value);

    /// <summary>Writes the lanes to the first numbers of a span.</summary>
    void Store(Span<double> destination);

    static abstract TSelf operator +(TSelf a, TSelf b);

    static abstract TSelf operator -(TSelf a, TSelf b);

    static abstract TSelf operator -(TSelf a);

    static abstract TSelf operator *(TSelf a, TSelf b);

    static abstract TSelf operator /(TSelf a, TSelf b);
}
