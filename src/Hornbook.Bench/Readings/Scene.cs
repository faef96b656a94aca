using System.Numerics;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Links;
using Hornbook.Physics.Panels;

namespace Hornbook.Bench.Readings;

/// <summary>A bench made ready to compute: its antennas turned into currents once, then read in any pose.</summary>
/// <remarks>What it says does not change, and it is safe to share between threads; solved panels are remembered for a while.</remarks>
public sealed class Scene
{
    private readonly Dictionary<string, Antenna> _antennas;
    private readonly PanelLights _lights;

    private Scene(BenchPlan plan, Dictionary<string, Antenna> antennas, PanelLights lights)
    {
        Plan = plan;
        _antennas = antennas;
        _lights = lights;
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
        return new Scene(plan, plan.Antennas.ToDictionary(a => a.Name, a => Physics.Antennas.Antenna.At(a.Shape, plan.Frequency)), new PanelLights(plan.Frequency));
    }

    /// <summary>This scene for a bench that was changed: antennas and panels that are as they were are taken over, the others computed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A guide does not carry a wave at the bench's frequency: see <see cref="CanRead"/>.</exception>
    public Scene With(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new Scene(
            plan,
            plan.Antennas.ToDictionary(a => a.Name, a => Had(a, plan.Frequency) ?? Physics.Antennas.Antenna.At(a.Shape, plan.Frequency)),
            plan.Frequency == Plan.Frequency ? _lights : new PanelLights(plan.Frequency));
    }

    /// <summary>The same bench with panels of a quarter of the cells, roughly settled, for searching: some tenths of a decibel off where they are lit.</summary>
    public Scene Sketch() => new(Plan, _antennas, _lights.Rough());

    /// <summary>An antenna of the bench at its frequency.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public Antenna Antenna(string name) =>
        _antennas.TryGetValue(name, out Antenna? antenna) ? antenna : throw new KeyNotFoundException($"no antenna is called '{name}'");

    /// <summary>The reading as the bench stands.</summary>
    public Reading Read() => Read(Plan.Source, Plan.Receiver);

    /// <summary>The reading with source and receiver as given and the panels as they stand.</summary>
    public Reading Read(SourceEnd source, ReceiverEnd receiver) => Read(source, receiver, Plan.Panels);

    /// <summary>The reading with everything as given.</summary>
    /// <param name="source">The sending end.</param>
    /// <param name="receiver">The receiving end.</param>
    /// <param name="panels">The panels; those that lie aside are left out, the table top is taken from the plan.</param>
    /// <exception cref="ArgumentOutOfRangeException">The two mouths stand in the same place.</exception>
    public Reading Read(SourceEnd source, ReceiverEnd receiver, IReadOnlyList<BenchPanel> panels) =>
        Read(source, receiver, panels, Waves(source, receiver, panels));

    /// <summary>The same while something is moved by hand: sooner there after a small move, and within 0.15 dB of what <see cref="Read(SourceEnd, ReceiverEnd, IReadOnlyList{BenchPanel})"/> says.</summary>
    /// <inheritdoc cref="Read(SourceEnd, ReceiverEnd, IReadOnlyList{BenchPanel})"/>
    public Reading ReadInHand(SourceEnd source, ReceiverEnd receiver, IReadOnlyList<BenchPanel> panels)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(panels);
        return Read(source, receiver, panels, Waves(_lights.InHand(Antenna(source.Antenna), source.Pose, Plan.Table, panels), receiver));
    }

    /// <summary>What the panels do to the link with everything as given: what a reading takes long for.</summary>
    internal PanelWaves Waves(SourceEnd source, ReceiverEnd receiver, IReadOnlyList<BenchPanel> panels) => Waves(Light(source, panels), receiver);

    /// <summary>The same where the panels are solved already.</summary>
    internal PanelWaves Waves(Illumination lit, ReceiverEnd receiver)
    {
        ArgumentNullException.ThrowIfNull(receiver);
        return PanelWaves.Of(lit, Antenna(receiver.Antenna), receiver.Pose);
    }

    /// <summary>The reading with everything as given, where it is known what the panels do.</summary>
    internal Reading Read(SourceEnd source, ReceiverEnd receiver, IReadOnlyList<BenchPanel> panels, PanelWaves waves)
    {
        Antenna sending = Antenna(source.Antenna);
        Antenna receiving = Antenna(receiver.Antenna);
        LinkParts parts = LinkParts.Of(sending, source.Pose, receiving, receiver.Pose, waves);
        double power = parts.Link * source.Power;
        double rippleDb = StandingRipple.HalfWidthDb(
            sending, receiving, parts.Distance, waves.SourceEcho.Magnitude, _lights.Echo(receiving, receiver.Pose, panels));
        return new Reading(
            parts.Link,
            Link.Mismatch(sending, receiving),
            Link.Ohmic(sending, receiving),
            power,
            Plan.Detection.Hear(power),
            rippleDb + (parts.Solution?.UnsettledDb ?? 0.0),
            GridTrust.Held(LinkTrust.Of(parts), Plan.Frequency, source.Pose, receiver.Pose, panels))
        {
            Panels = parts.Solution,
        };
    }

    /// <summary>The bench with its source on: from it come the reading of any receiver and the field anywhere.</summary>
    /// <param name="source">The sending end.</param>
    /// <param name="panels">The panels; those that lie aside are left out, the table top is taken from the plan.</param>
    public Illumination Light(SourceEnd source, IReadOnlyList<BenchPanel> panels)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(panels);
        return _lights.Of(Antenna(source.Antenna), source.Pose, Plan.Table, panels);
    }

    /// <summary>The same for one of many settings, not kept: begins with the currents of the same panels elsewhere, and is the same within what the sweeps leave open.</summary>
    internal Illumination Light(SourceEnd source, IReadOnlyList<BenchPanel> panels, KnownCurrents? start) =>
        _lights.Once(Antenna(source.Antenna), source.Pose, Plan.Table, panels, start);

    /// <summary>The wave in the receiver's guide for the poses given and the panels as they stand [-]: complex link amplitude, |.|² = link.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The two mouths stand in the same place.</exception>
    public Complex LinkAmplitude(SourceEnd source, ReceiverEnd receiver)
    {
        ArgumentNullException.ThrowIfNull(receiver);
        return Light(source, Plan.Panels).Link(Antenna(receiver.Antenna), receiver.Pose);
    }

    /// <summary>Link with source and receiver exchanged, over the link as it is [dB]: 0 in nature; what it is here shows how good the panels' part is.</summary>
    /// <inheritdoc cref="Read(SourceEnd, ReceiverEnd, IReadOnlyList{BenchPanel})"/>
    public double ReciprocityGapDb(SourceEnd source, ReceiverEnd receiver, IReadOnlyList<BenchPanel> panels)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        ArgumentNullException.ThrowIfNull(panels);
        Complex forth = Light(source, panels).Link(Antenna(receiver.Antenna), receiver.Pose);
        Complex back = _lights.Of(Antenna(receiver.Antenna), receiver.Pose, Plan.Table, panels).Link(Antenna(source.Antenna), source.Pose);
        return 2.0 * Decibels.FromRatio(back.Magnitude / forth.Magnitude);
    }

    /// <summary>The tone that a power would give [W].</summary>
    public HeardTone Hear(double power) => Plan.Detection.Hear(power);

    private Antenna? Had(NamedAntenna wanted, double frequency) =>
        frequency == Plan.Frequency && _antennas.TryGetValue(wanted.Name, out Antenna? had) && had.Shape == wanted.Shape ? had : null;
}
