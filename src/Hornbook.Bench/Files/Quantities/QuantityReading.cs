namespace Hornbook.Bench.Files.Quantities;

/// <summary>What a text says of a quantity: a value, or why there is none.</summary>
public sealed record QuantityReading
{
    private QuantityReading()
    {
    }

    /// <summary>The value in SI; 0 where the text cannot be read.</summary>
    public double Value { get; private init; }

    /// <summary>The unit in which it was written; null where the text cannot be read.</summary>
    public Unit? Unit { get; private init; }

    /// <summary>Why the text cannot be read; null where it can.</summary>
    public Misreading? Misreading { get; private init; }

    internal static QuantityReading Of(double value, Unit unit) => new() { Value = value, Unit = unit };

    internal static QuantityReading Not(string read, string fits, string type) => new() { Misreading = new Misreading(read, fits, type) };
}

/// <summary>Why a text cannot be read, in the three parts of every message.</summary>
/// <param name="Read">What was read.</param>
/// <param name="Fits">What would fit.</param>
/// <param name="Type">What to type.</param>
public sealed record Misreading(string Read, string Fits, string Type)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Read}; {Fits}; {Type}";
}
