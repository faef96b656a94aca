namespace Hornbook.Bench.Demonstrations;

/// <summary>A number that a demonstration shows, beside what books say.</summary>
/// <param name="What">What it is, a few words: "angle of the mirror".</param>
/// <param name="Quantity">Of what kind.</param>
/// <param name="OnBench">As this bench will show it, SI units; null where its curve does not show it.</param>
/// <param name="InBooks">By the textbook law, SI units; null where there is none.</param>
/// <param name="Remark">How it is read off, or what the law leaves out.</param>
public sealed record Comparison(string What, ComparedQuantity Quantity, double? OnBench, double? InBooks, string Remark);

/// <summary>What kind of number is compared.</summary>
public enum ComparedQuantity
{
    /// <summary>An angle [rad].</summary>
    Angle,

    /// <summary>A length [m].</summary>
    Length,

    /// <summary>A level or a difference of levels [dB].</summary>
    Level,

    /// <summary>A bare number [-].</summary>
    Number,
}
