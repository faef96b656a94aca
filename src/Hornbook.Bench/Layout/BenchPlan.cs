using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Layout;

/// <summary>Everything that a bench file says, checked and in SI units.</summary>
public sealed record BenchPlan
{
    /// <summary>What the bench is called.</summary>
    public required string Title { get; init; }

    /// <summary>Frequency of the oscillator [Hz].</summary>
    public required double Frequency { get; init; }

    /// <summary>The table.</summary>
    public required TableTop Table { get; init; }

    /// <summary>The antennas at hand, in the order of the file; names are unique.</summary>
    public required IReadOnlyList<NamedAntenna> Antennas { get; init; }

    /// <summary>The panels at hand, standing or lying aside, in the order of the file; names are unique.</summary>
    public IReadOnlyList<BenchPanel> Panels { get; init; } = [];

    /// <summary>The sending end.</summary>
    public required SourceEnd Source { get; init; }

    /// <summary>The receiving end.</summary>
    public required ReceiverEnd Receiver { get; init; }

    /// <summary>Detector, amplifier and tone.</summary>
    public required DetectionChain Detection { get; init; }

    /// <summary>The exposure limit chosen for the keep-out distance: an identifier of a limit set, or "strictest".</summary>
    public string ExposureLimit { get; init; } = "strictest";

    /// <summary>The demonstrations wanted, in the order of the file.</summary>
    public IReadOnlyList<Demonstration> Demonstrations { get; init; } = [];

    /// <summary>The antenna of a name that the file is known to have.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public AntennaShape Antenna(string name) =>
        Antennas.FirstOrDefault(a => a.Name == name)?.Shape ?? throw new KeyNotFoundException($"no antenna is called '{name}'");
}
