using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;

namespace Hornbook.Bench.Explanations;

/// <summary>What is to be explained: a bench with everything where it stands now.</summary>
/// <param name="Scene">The bench made ready.</param>
/// <param name="Source">The sending end.</param>
/// <param name="Receiver">The receiving end.</param>
/// <param name="Reading">What is read there.</param>
public sealed record ExplainedBench(Scene Scene, SourceEnd Source, ReceiverEnd Receiver, Reading Reading)
{
    internal BenchPlan Plan => Scene.Plan;

    internal Antenna Sending => Scene.Antenna(Source.Antenna);

    internal Antenna Receiving => Scene.Antenna(Receiver.Antenna);

    internal double Wavelength => FreeSpace.Wavelength(Plan.Frequency);

    internal double Distance => (Receiver.Pose.Position - Source.Pose.Position).Length;

    internal bool HasPanels => Plan.Table.Panel is not null || Plan.Panels.Any(panel => panel.Stands);
}
