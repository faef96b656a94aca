using Hornbook.Bench.Readings;
using Hornbook.Physics.Detection;

namespace Hornbook.Commands.Reports;

/// <summary>A reading for programs and people.</summary>
internal sealed record ReadingReport
{
    /// <summary>Power delivered into the receiver's guide over the power that the source's guide brings to its antenna.</summary>
    public required double LinkDb { get; init; }

    /// <summary>The part of the link that both antennas' own reflections take.</summary>
    public required double MismatchDb { get; init; }

    /// <summary>The part of the link that both antennas' walls take.</summary>
    public required double OhmicDb { get; init; }

    /// <summary>Half width of the band from standing waves between the mouths.</summary>
    public required double RippleDb { get; init; }

    public required double ReceivedDbm { get; init; }

    public required double ReceivedW { get; init; }

    public required double DetectorV { get; init; }

    public required double AmplifierV { get; init; }

    public required double AmplifierNoiseV { get; init; }

    public required double ToneHz { get; init; }

    /// <summary>Nearest note of the equal-tempered scale.</summary>
    public required string Note { get; init; }

    /// <summary>How far the tone lies above that note.</summary>
    public required double Cents { get; init; }

    /// <summary>Rms wander of the pitch.</summary>
    public required double JitterCents { get; init; }

    public required ToneState State { get; init; }

    public required TrustLevel Trust { get; init; }

    public required string TrustReason { get; init; }
}
