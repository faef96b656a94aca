using Hornbook.Physics.Panels.Exchange.Legs;
using Hornbook.Physics.Panels.Exchange.Symmetries;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Panels where they stand, lit by a source, each ready to answer to the others. Immutable.</summary>
internal sealed class PanelExchange
{
    private readonly Mouth _mouth;
    private readonly BenchSymmetry _symmetry;
    private readonly Standing[] _panels;
    private readonly int[] _outwards;

    private PanelExchange(Mouth mouth, BenchSymmetry symmetry, Standing[] panels)
    {
        (_mouth, _symmetry, _panels) = (mouth, symmetry, panels);
        _outwards =
        [
            .. Enumerable.Range(0, panels.Length).OrderBy(i => panels[i].Place.Cells.Points.Min(point => (point - mouth.Centre).Length))
        ];
    }

    /// <summary>Lights panels.</summary>
    /// <param name="mouth">The source.</param>
    /// <param name="posed">The panels.</param>
    internal static PanelExchange Of(Mouth mouth, IReadOnlyList<PosedPanel> posed) => Of(mouth, BenchSymmetry.Of(mouth, posed), posed, []);

    /// <summary>The same source with other panels: what did not move keeps its light and its ways.</summary>
    /// <remarks>Unless the bench has another symmetry now: then all listen elsewhere.</remarks>
    internal PanelExchange With(IReadOnlyList<PosedPanel> posed)
    {
        BenchSymmetry symmetry = BenchSymmetry.Of(_mouth, posed);
        return Of(_mouth, symmetry, posed, symmetry == _symmetry ? _panels : []);
    }

    /// <summary>Other panels lit by the same source; nothing of these is used.</summary>
    internal PanelExchange Lighting(IReadOnlyList<PosedPanel> posed) => Of(_mouth, posed);

    /// <summary>How many panels.</summary>
    internal int Count => _panels.Length;

    /// <summary>A panel and its pose.</summary>
    internal PosedPanel Posed(int panel) => _panels[panel].Place.Posed;

    /// <summary>The cells of a panel.</summary>
    internal Body Cells(int panel) => _panels[panel].Place.Cells;

    /// <summary>Currents known in the panels' own frames, where the panels stand now.</summary>
    internal CurrentSamples[] InPlace(KnownCurrents known) => [.. _panels.Select((panel, i) => panel.Place.InPlace(known.Electric(i), known.Magnetic(i)))];

    /// <summary>The reaction of a panel's currents with the field that comes to it straight from the source [W]: what it throws back there.</summary>
    internal Complex Echo(int panel, CurrentSamples currents)
    {
        Standing own = _panels[panel];
        return Echo(own.Place, own.FromSource.On(SheetFace.Front), currents) + Echo(own.Place, own.FromSource.On(SheetFace.Back), currents);
    }

    /// <summary>Lets every panel answer once, from the source outwards, to what the others send at that moment.</summary>
    /// <param name="before">The currents of the panels.</param>
    /// <param name="heard">What each answered to last; kept up to date.</param>
    /// <returns>Their currents afterwards.</returns>
    internal CurrentSamples[] Sweep(CurrentSamples[] before, Heard heard) => Answered(before, _outwards, heard);

    /// <summary>The first sweep where some panels have moved: they answer to those that have not, and then these do, towards the source, since that is where they hear something new.</summary>
    /// <param name="before">The currents of the panels; none of those that have moved.</param>
    /// <param name="heard">What each answered to last; kept up to date.</param>
    /// <returns>Their currents before that sweep, those that have moved with their answer, and after it.</returns>
    /// <remarks>Those that have moved have answered to nearly all that they will hear: they answer again in the next sweep.</remarks>
    internal (CurrentSamples[] Before, CurrentSamples[] After) SweepInwards(CurrentSamples[] before, Heard heard)
    {
        CurrentSamples[] lit = Answered(before, [.. _outwards.Where(i => before[i].Count == 0)], heard);
        return (lit, Answered(lit, [.. _outwards.Reverse().Where(i => before[i].Count > 0)], heard));
    }

    private CurrentSamples[] Answered(CurrentSamples[] before, int[] panels, Heard heard)
    {
        CurrentSamples[] currents = [.. before];
        foreach (int i in panels)
        {
            if (!heard.IsAnswered(i, currents))
            {
                currents[i] = Answer(i, currents);
                heard.Answered(i, currents);
            }
        }

        return currents;
    }

    private CurrentSamples Answer(int panel, CurrentSamples[] currents)
    {
        Arrivals arrivals = _panels[panel].FromSource.Copy();
        for (int other = 0; other < currents.Length; other++)
        {
            if (currents[other].Count > 0)
            {
                _panels[panel].FromOthers[other]?.Add(currents[other], arrivals);
            }
        }

        return _panels[panel].Place.Answer(arrivals, _panels[panel].ToSource);
    }

    private static Complex Echo(PanelInPlace place, ReadOnlySpan<FieldSample> light, CurrentSamples currents)
    {
        if (light.IsEmpty || currents.Count == 0)
        {
            return Complex.Zero;
        }

        FieldSample[] fields = light.ToArray();
        return place.Sum((i, cell) => ComplexVector.Dot(fields[i].Electric, currents.Electric[cell]) - ComplexVector.Dot(fields[i].Magnetic, currents.Magnetic[cell]));
    }

    private static PanelExchange Of(Mouth mouth, BenchSymmetry symmetry, IReadOnlyList<PosedPanel> posed, Standing[] earlier)
    {
        Dictionary<PosedPanel, int> known = Enumerable.Range(0, earlier.Length).DistinctBy(i => earlier[i].Place.Posed)
            .ToDictionary(i => earlier[i].Place.Posed);
        int[] was = [.. posed.Select(panel => known.TryGetValue(panel, out int index) ? index : -1)];
        PanelInPlace[] places = [.. posed.Select((panel, i) => was[i] >= 0 ? earlier[was[i]].Place : new PanelInPlace(panel, symmetry))];
        Way? Between(int from, int to) => was[from] >= 0 && was[to] >= 0 && was[from] != was[to]
            ? earlier[was[to]].FromOthers[was[from]]
            : Way.Between(places[from].Cells, places[to], mouth.Wavenumber, WayUse.Sweeps);
        Standing[] standing = [.. places.Select((place, to) => new Standing(
            place,
            was[to] >= 0 ? earlier[was[to]].FromSource : mouth.Light(place),
            [.. places.Select((_, from) => from == to ? null : Between(from, to))]))];
        return new PanelExchange(mouth, symmetry, standing);
    }

    /// <summary>A panel with what it needs to answer.</summary>
    /// <param name="Place">Where it stands.</param>
    /// <param name="FromSource">What comes straight from the source.</param>
    /// <param name="FromOthers">The way from each other panel; nothing at its own place.</param>
    private sealed record Standing(PanelInPlace Place, Arrivals FromSource, Way?[] FromOthers)
    {
        private readonly Lazy<FaceAnswer?> _toSource = new(() => SourceOnly(Place, FromSource, FromOthers), LazyThreadSafetyMode.PublicationOnly);

        /// <summary>The answer on a face that meets nothing but the light of the source, sweep after sweep; null where there is none.</summary>
        internal FaceAnswer? ToSource => _toSource.Value;

        private static FaceAnswer? SourceOnly(PanelInPlace place, Arrivals light, Way?[] others)
        {
            SheetFace[] faces = [.. Enum.GetValues<SheetFace>().Where(face => !light.On(face).IsEmpty && !others.Any(way => way?.Meets(face) ?? false))];
            return faces.Length == 1 && others.Any(way => way is not null) ? place.AnswerOn(faces[0], light) : null;
        }
    }
}
