using System.Collections.Concurrent;
using System.Numerics;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Panels;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Bench.Readings;

/// <summary>The panels of a bench prepared once, and the source's light on them solved once for each way in which they stand.</summary>
/// <remarks>Safe to share between threads. Only the latest few solutions are kept: a sweep of the receiver needs one, a sweep of a panel each once.</remarks>
internal sealed class PanelLights
{
    private const int MostKept = 24;

    // A quarter of the cells: for searching, and for the echo of the receiver, of which a guide value is enough.
    private const double RoughRefinement = 0.5;

    // Of this, the mouth throws a fifth forward again: less than a tenth of a decibel.
    private const double LeastEcho = 0.05;

    // A table top casts no shadow where anybody listens, and its ends lie outside the beam: 3.6 cells a wavelength leave 0.005 dB.
    private const double TopRefinement = 0.8;
    private const double MetalTopRefinement = 0.6;

    // Every edit of a bench file makes panels anew, alike or not: what was prepared for old ones is let go now and then.
    private const int MostPrepared = 64;

    private readonly double _frequency;
    private readonly double _refinement;
    private readonly Settling _settling;
    private readonly ConcurrentDictionary<(Panel Panel, double Refinement), PreparedPanel> _prepared;
    private readonly ConcurrentDictionary<Asked, Lazy<Illumination>> _lit = new();
    private readonly ConcurrentQueue<Asked> _kept = new();
    private volatile Solved? _latest;

    /// <param name="frequency">f [Hz].</param>
    internal PanelLights(double frequency)
        : this(frequency, 1.0, Settling.Fine, new())
    {
    }

    private PanelLights(double frequency, double refinement, Settling settling, ConcurrentDictionary<(Panel Panel, double Refinement), PreparedPanel> prepared) =>
        (_frequency, _refinement, _settling, _prepared) = (frequency, refinement, settling, prepared);

    /// <summary>The same panels in a quarter of the cells and roughly settled.</summary>
    internal PanelLights Rough() => new(_frequency, RoughRefinement, Settling.Rough, _prepared);

    /// <summary>The source turned on with panels standing.</summary>
    /// <param name="antenna">The source's antenna.</param>
    /// <param name="source">Its pose.</param>
    /// <param name="table">The table, which is the first of the panels where it has a sheet.</param>
    /// <param name="panels">The panels at hand; those that lie aside are left out.</param>
    internal Illumination Of(Antenna antenna, Pose source, TableTop table, IReadOnlyList<BenchPanel> panels)
    {
        Setup setup = new(antenna, source, [.. Standing(table, panels)]);
        return Kept(new Asked(setup, InHand: false), () => Solve(setup, PutDown(setup)));
    }

    /// <summary>The same while something is moved by hand: begins where the latest solution ended and ends a little sooner, <see cref="Settling.InHand"/>.</summary>
    /// <inheritdoc cref="Of"/>
    internal Illumination InHand(Antenna antenna, Pose source, TableTop table, IReadOnlyList<BenchPanel> panels)
    {
        Setup setup = new(antenna, source, [.. Standing(table, panels)]);
        return _lit.TryGetValue(new Asked(setup, InHand: false), out Lazy<Illumination>? fine) ? fine.Value : Kept(new Asked(setup, InHand: true), () => SolveMoved(setup));
    }

    /// <summary>The same for one of many settings that nobody comes back to: not kept.</summary>
    /// <param name="antenna">The source's antenna.</param>
    /// <param name="source">Its pose.</param>
    /// <param name="table">The table.</param>
    /// <param name="panels">The panels at hand.</param>
    /// <param name="start">Currents of the same panels elsewhere to begin with; without them they begin dark.</param>
    internal Illumination Once(Antenna antenna, Pose source, TableTop table, IReadOnlyList<BenchPanel> panels, KnownCurrents? start) =>
        Solve(new Setup(antenna, source, [.. Standing(table, panels)]), start);

    /// <summary>What the panels on the table would throw back into an antenna if it sent, each alone: |.| [-]. The table top is too far away to matter.</summary>
    internal double Echo(Antenna antenna, Pose pose, IReadOnlyList<BenchPanel> panels) => panels
        .Where(panel => panel.Stands && MostEcho(antenna, (panel.Pose.Position - pose.Position).Length) > LeastEcho)
        .Select(panel => Illumination.Of(antenna, pose, [new PosedPanel(Prepared(panel.Panel, RoughRefinement), panel.Pose)]).SourceEcho())
        .Aggregate(Complex.Zero, (sum, echo) => sum + echo).Magnitude;

    // A mirror that faces the antenna shows it itself at twice the distance: Friis with both gains alike.
    private static double MostEcho(Antenna antenna, double distance) =>
        antenna.RealisedGain * antenna.Wavelength / (8.0 * Math.PI * Math.Max(distance, double.Epsilon));

    private Illumination Kept(Asked asked, Func<Illumination> solve) => _lit.GetOrAdd(asked, _ => Begun(asked, solve)).Value;

    private Lazy<Illumination> Begun(Asked asked, Func<Illumination> solve)
    {
        _kept.Enqueue(asked);
        while (_kept.Count > MostKept && _kept.TryDequeue(out Asked? oldest))
        {
            _lit.TryRemove(oldest, out _);
        }

        // Whoever asks meanwhile solves it too. To wait would be to sleep on the threads that the solver shares its work with: they all slept for half a minute.
        return new Lazy<Illumination>(solve, LazyThreadSafetyMode.PublicationOnly);
    }

    // A bench with the same source has much that is ready to use, whatever its panels; the result does not depend on it.
    private Illumination Solve(Setup setup, KnownCurrents? start)
    {
        PosedPanel[] panels = Posed(setup);
        return Latest(new Asked(setup, InHand: false), Near(setup)?.With(panels, start) ?? Illumination.Of(setup.Antenna, setup.Source, panels, start, _settling));
    }

    private Illumination SolveMoved(Setup setup)
    {
        PosedPanel[] panels = Posed(setup);
        return Latest(new Asked(setup, InHand: true), Near(setup)?.Moved(panels, Settling.InHand) ?? Illumination.Of(setup.Antenna, setup.Source, panels, settling: _settling));
    }

    // What has just been put down was nearly solved in the hand. Nobody else begins where somebody ended: what they read must not depend on it.
    private KnownCurrents? PutDown(Setup setup) => _latest is { Asked: { InHand: true } asked } latest && asked.Setup.Equals(setup) ? latest.Lit.Known : null;

    private PosedPanel[] Posed(Setup setup) => [.. setup.Panels.Select(p => new PosedPanel(Prepared(p.Panel, p.Refinement), p.Pose))];

    private Illumination? Near(Setup setup) =>
        _latest is { Asked.Setup: { } asked } latest && ReferenceEquals(asked.Antenna, setup.Antenna) && asked.Source == setup.Source ? latest.Lit : null;

    private Illumination Latest(Asked asked, Illumination lit)
    {
        _latest = new Solved(asked, lit);
        return lit;
    }

    private PreparedPanel Prepared(Panel panel, double cells)
    {
        if (_prepared.Count > MostPrepared)
        {
            _prepared.Clear();
        }

        return _prepared.GetOrAdd((panel, cells), key => PreparedPanel.At(key.Panel, _frequency, key.Refinement));
    }

    private IEnumerable<(Panel Panel, Pose Pose, double Refinement)> Standing(TableTop table, IReadOnlyList<BenchPanel> panels)
    {
        if (table.Panel is { } top)
        {
            yield return (top, table.Pose, _refinement * (top.Sheet is Metal ? MetalTopRefinement : TopRefinement));
        }

        foreach (BenchPanel panel in panels.Where(panel => panel.Stands))
        {
            yield return (panel.Panel, panel.Pose, _refinement);
        }
    }

    private sealed record Solved(Asked Asked, Illumination Lit);

    private sealed record Asked(Setup Setup, bool InHand);

    // Equal where the same antenna stands the same way among the same panels.
    private sealed class Setup(Antenna antenna, Pose source, (Panel Panel, Pose Pose, double Refinement)[] panels) : IEquatable<Setup>
    {
        internal Antenna Antenna { get; } = antenna;

        internal Pose Source { get; } = source;

        internal (Panel Panel, Pose Pose, double Refinement)[] Panels { get; } = panels;

        public bool Equals(Setup? other) =>
            other is not null && ReferenceEquals(Antenna, other.Antenna) && Source == other.Source && Panels.AsSpan().SequenceEqual(other.Panels);

        public override bool Equals(object? obj) => Equals(obj as Setup);

        public override int GetHashCode()
        {
            HashCode code = default;
            code.Add(Source);
            Array.ForEach(Panels, code.Add);
            return code.ToHashCode();
        }
    }
}
