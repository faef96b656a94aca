using System.Numerics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Panels.Exchange;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;

namespace Hornbook.Physics.Panels;

/// <summary>A bench with its source on: the currents that it raises on every panel, solved once and then read by any receiver. Immutable.</summary>
/// <remarks>
/// The panels exchange their fields in sweeps from the source outwards, each answering to what all others send at that moment, until less of the currents is missing than
/// <see cref="Settling"/> allows, which is told by how their changes shrink. Docs: physics/panels.
/// </remarks>
public sealed class Illumination
{
    private readonly Antenna _source;
    private readonly Pose _sourcePose;
    private readonly Mouth _mouth;
    private readonly PanelExchange _exchange;
    private readonly PanelSweeps _solved;
    // When this has settled, and when whatever is gone on to from here has.
    private readonly Settling _settling;
    private readonly Settling _after;

    // The same for every receiver.
    private readonly Lazy<Complex> _sourceEcho;
    private readonly Lazy<Vector[]> _brightest;

    private Illumination(Antenna source, Pose sourcePose, Mouth mouth, PanelExchange exchange, IReadOnlyList<PosedPanel> panels, PanelSweeps solved, Settling settling, Settling? after = null)
    {
        (_source, _sourcePose, _mouth, _exchange, Panels, _solved, _settling, _after) = (source, sourcePose, mouth, exchange, panels, solved, settling, after ?? settling);
        _sourceEcho = new Lazy<Complex>(Echo, LazyThreadSafetyMode.PublicationOnly);
        _brightest = new Lazy<Vector[]>(() => Array.ConvertAll(solved.Currents, currents => currents.Centre()), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The panels, in the order given.</summary>
    public IReadOnlyList<PosedPanel> Panels { get; }

    /// <summary>How many sweeps were made.</summary>
    public int Sweeps => _solved.Count;

    /// <summary>What is still missing of the currents, by the shrinking of their changes, over the currents [-], root mean square; 0 where nothing is exchanged.</summary>
    public double Residue => _solved.Residue;

    /// <summary>Whether the currents have settled.</summary>
    public bool IsSettled => Residue <= _settling.Residue;

    /// <summary>The currents in the panels' own frames: a start for the same panels in other poses. Worked out when asked for.</summary>
    public KnownCurrents Known => KnownCurrents.Of(Panels, _solved.Currents, _solved.ToCome, _solved.ToAndFro);

    /// <summary>Turns the source on.</summary>
    /// <param name="source">Sending antenna.</param>
    /// <param name="sourcePose">Its pose.</param>
    /// <param name="panels">The panels that stand, in any number and pose, prepared for the antenna's frequency.</param>
    /// <param name="start">Currents to begin with, as for <see cref="With"/>.</param>
    /// <param name="settling">When they have settled, here and wherever this is gone on from; null for <see cref="Settling.Fine"/>.</param>
    public static Illumination Of(Antenna source, Pose sourcePose, IReadOnlyList<PosedPanel> panels, KnownCurrents? start = null, Settling? settling = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(panels);
        settling ??= Settling.Fine;
        Mouth mouth = new(source, sourcePose);
        PanelExchange exchange = PanelExchange.Of(mouth, panels);
        return new Illumination(source, sourcePose, mouth, exchange, panels, Solved(exchange, start, settling), settling);
    }

    /// <summary>The same source with other panels, or the same ones elsewhere: what has not moved is not prepared anew.</summary>
    /// <param name="panels">The panels that stand now.</param>
    /// <param name="start">Currents of the same prepared panels in the same order to begin with: the nearer they are to the solution, the fewer sweeps.</param>
    /// <returns>What <see cref="Of"/> would give; with a start, within what the settling leaves open.</returns>
    public Illumination With(IReadOnlyList<PosedPanel> panels, KnownCurrents? start = null)
    {
        ArgumentNullException.ThrowIfNull(panels);
        PanelExchange exchange = _exchange.With(panels);
        return new Illumination(_source, _sourcePose, _mouth, exchange, panels, Solved(exchange, start, _after), _after);
    }

    /// <summary>The same for panels of which some have moved a moment ago: begins with what the others carry here, so that it is sooner done.</summary>
    /// <param name="panels">The panels that stand now.</param>
    /// <param name="settling">When they have settled; null for as before. What is gone on to from there settles as before again.</param>
    /// <returns>What <see cref="Of"/> would give, within what the settling leaves open.</returns>
    public Illumination Moved(IReadOnlyList<PosedPanel> panels, Settling? settling = null)
    {
        ArgumentNullException.ThrowIfNull(panels);
        Dictionary<PosedPanel, CurrentSamples> here = [];
        for (int i = 0; i < Panels.Count; i++)
        {
            here.TryAdd(Panels[i], _solved.Currents[i]);
        }

        CurrentSamples[] kept = [.. panels.Select(panel => here.GetValueOrDefault(panel, CurrentSamples.None))];
        if (panels.Count < 2 || Array.TrueForAll(kept, currents => currents.Count == 0))
        {
            return With(panels);
        }

        PanelExchange exchange = _exchange.With(panels);
        settling ??= _after;
        return new Illumination(_source, _sourcePose, _mouth, exchange, panels, PanelSweeps.Moved(exchange, kept, _solved.ToAndFro, settling), settling, _after);
    }

    private static PanelSweeps Solved(PanelExchange exchange, KnownCurrents? start, Settling settling) =>
        start is null ? PanelSweeps.Run(exchange, settling) : PanelSweeps.From(exchange, start, settling);

    /// <summary>The wave delivered into a receiver's guide over the wave that the source's guide brings [-]; |.|² is the link.</summary>
    /// <inheritdoc cref="Parts"/>
    public Complex Link(Antenna receiver, Pose receiverPose) => Parts(receiver, receiverPose).Aggregate(Complex.Zero, (sum, part) => sum + part);

    /// <summary>What that wave is made of: the one straight from the source, then the one by way of each panel in the order given [-].</summary>
    /// <param name="receiver">Receiving antenna, at the same frequency.</param>
    /// <param name="receiverPose">Its pose.</param>
    /// <remarks>Behind a screen the first two nearly cancel: the screen's part is its shadow.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The two mouths stand in the same place.</exception>
    public IReadOnlyList<Complex> Parts(Antenna receiver, Pose receiverPose)
    {
        ArgumentNullException.ThrowIfNull(receiver);
        Complex direct = Links.Link.Amplitude(_source, _sourcePose, receiver, receiverPose);
        return [direct, .. PanelParts(receiver, receiverPose)];
    }

    /// <summary>The part of that wave by way of each panel, in the order given [-].</summary>
    /// <inheritdoc cref="Parts"/>
    public IReadOnlyList<Complex> PanelParts(Antenna receiver, Pose receiverPose)
    {
        ArgumentNullException.ThrowIfNull(receiver);
        return Received(receiver, receiverPose, _solved.Currents);
    }

    /// <summary>How much the link's wave may still move [-], by what the last sweep moved it and how the changes shrink: the uncertainty of a bench that has not settled.</summary>
    /// <param name="receiver">Receiving antenna.</param>
    /// <param name="receiverPose">Its pose.</param>
    public double Unsettled(Antenna receiver, Pose receiverPose)
    {
        ArgumentNullException.ThrowIfNull(receiver);
        return Residue == 0.0
            ? 0.0
            : Received(receiver, receiverPose, [.. _solved.Currents.Zip(_solved.Before, (after, before) => after.Plus(before, -1.0))])
                .Aggregate(Complex.Zero, (sum, part) => sum + part).Magnitude * _solved.ToCome;
    }

    /// <summary>The wave that the panels throw back into the source's guide over the one that it brings [-].</summary>
    public Complex SourceEcho() => _sourceEcho.Value;

    /// <summary>The middle of the lit part of a panel: its cells weighted with the squares of their currents [m].</summary>
    /// <param name="panel">Its place in <see cref="Panels"/>.</param>
    public Vector Brightest(int panel) => _brightest.Value[panel];

    /// <summary>The field of source and panels together at points in space, for one watt radiated by the source.</summary>
    /// <param name="points">Places [m], length n; none on a mouth or a panel's cell.</param>
    /// <param name="fields">Filled with the fields, length ≥ n.</param>
    public void Field(ReadOnlySpan<Vector> points, Memory<FieldSample> fields)
    {
        if (points.Length == 0)
        {
            return;
        }

        fields.Span[..points.Length].Clear();
        Body map = Body.Of(points.ToArray(), Frame.Of(default));
        FieldTransfer.Between(_mouth.Body.Tree, map.Tree, _source.Wavenumber).Add(_mouth.Currents, fields);
        for (int i = 0; i < Panels.Count; i++)
        {
            FieldTransfer.Between(_exchange.Cells(i).Tree, map.Tree, _source.Wavenumber).Add(_solved.Currents[i], fields);
        }
    }

    private Complex Echo()
    {
        double kept = Links.Link.Mismatch(_source, _source) * Links.Link.Ohmic(_source, _source);
        Complex reaction = Enumerable.Range(0, _solved.Currents.Length).Aggregate(Complex.Zero, (sum, i) => sum + _exchange.Echo(i, _solved.Currents[i]));
        return 0.25 * Math.Sqrt(kept) * reaction;
    }

    // The reaction is symmetric, and an antenna's own field is the cheaper one.
    private Complex[] Received(Antenna receiver, Pose receiverPose, CurrentSamples[] currents)
    {
        double kept = Math.Sqrt(Links.Link.Mismatch(_source, receiver) * Links.Link.Ohmic(_source, receiver));
        Mouth mouth = new(receiver, receiverPose);
        return [.. currents.Select((own, panel) => 0.25 * kept * mouth.Reaction(_exchange.Cells(panel), own))];
    }
}
