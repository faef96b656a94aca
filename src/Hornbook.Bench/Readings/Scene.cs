using System.Numerics;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Links;

namespace Hornbook.Bench.Readings;

/// <summary>A bench made ready to compute: its antennas turned into currents once, then read in any pose.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Scene
{
    private readonly Dictionary<string, Antenna> _antennas;

    private Scene(BenchPlan plan, Dictionary<string, Antenna> antennas)
    {
        Plan = plan;
        _antennas = antennas;
    }

    /// <summary>The bench.</summary>
    public BenchPlan Plan { get; }

    /// <summary>The source's antenna as the bench stands.</summary>
    public Antenna Source => Antenna(Plan.Source.Antenna);

    /// <summary>The receiver's antenna as the bench stands.</summary>
    public Antenna Receiver => Antenna(Plan.Receiver.Antenna);

    /// <summary>Whether a bench can be computed at all: every one of its guides carries a wave at its frequency.</summary>
    public static bool CanRead(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Antennas.All(a => a.Shape.Guide.CutoffFrequency < plan.Frequency);
    }

    /// <summary>Prepares a bench: each antenna is computed once.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A guide does not carry a wave at the bench's frequency: see <see cref="CanRead"/>.</exception>
    public static Scene Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new Scene(plan, plan.Antennas.ToDictionary(a => a.Name, a => Physics.Antennas.Antenna.At(a.Shape, plan.Frequency)));
    }

    /// <summary>An antenna of the bench at its frequency.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public Antenna Antenna(string name) =>
        _antennas.TryGetValue(name, out Antenna? antenna) ? antenna : throw new KeyNotFoundException($"no antenna is called '{name}'");

    /// <summary>The reading as the bench stands.</summary>
    public Reading Read() => Read(Plan.Source, Plan.Receiver);

    /// <summary>The reading with source and receiver as given.</summary>
    public Reading Read(SourceEnd source, ReceiverEnd receiver)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        Antenna sending = Antenna(source.Antenna);
        Antenna receiving = Antenna(receiver.Antenna);
        Complex amplitude = LinkAmplitude(source, receiver);
        double link = (amplitude.Real * amplitude.Real) + (amplitude.Imaginary * amplitude.Imaginary);
        double power = link * source.Power;
        double distance = (receiver.Pose.Position - source.Pose.Position).Length;
        return new Reading(
            link,
            Link.Mismatch(sending, receiving),
            Link.Ohmic(sending, receiving),
            power,
            Plan.Detection.Hear(power),
            StandingRipple.HalfWidthDb(sending, receiving, distance),
            LinkTrust.Of(sending, source.Pose, receiving, receiver.Pose, link));
    }

    /// <summary>The wave in the receiver's guide for the poses given [-]: complex link amplitude, |.|² = link.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The two mouths stand in the same place.</exception>
    public Complex LinkAmplitude(SourceEnd source, ReceiverEnd receiver)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return Link.Amplitude(Antenna(source.Antenna), source.Pose, Antenna(receiver.Antenna), receiver.Pose);
    }

    /// <summary>The tone that a power would give [W].</summary>
    public HeardTone Hear(double power) => Plan.Detection.Hear(power);
}
