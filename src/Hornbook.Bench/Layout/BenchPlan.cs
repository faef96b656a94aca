using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
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

/// <summary>An antenna at hand.</summary>
/// <param name="Name">As in the file.</param>
/// <param name="Shape">Its dimensions.</param>
public sealed record NamedAntenna(string Name, AntennaShape Shape);

/// <summary>The table: x runs along it from the left edge at 0, y across it with 0 in the middle, z = 0 is its top.</summary>
/// <param name="Length">Along x [m].</param>
/// <param name="Width">Across, along y [m].</param>
public sealed record TableTop(double Length, double Width);

/// <summary>The sending end.</summary>
/// <param name="Antenna">Name of its antenna.</param>
/// <param name="Pose">Where the mouth's centre stands and how it is held.</param>
/// <param name="Power">Power that the guide brings to the antenna [W].</param>
/// <param name="WorstCasePower">The most that the source can give, for exposure [W]; ≥ power.</param>
public sealed record SourceEnd(string Antenna, Pose Pose, double Power, double WorstCasePower);

/// <summary>The receiving end.</summary>
/// <param name="Antenna">Name of its antenna.</param>
/// <param name="Pose">Where the mouth's centre stands and how it is held; facing the source its turn is 180°.</param>
public sealed record ReceiverEnd(string Antenna, Pose Pose);
