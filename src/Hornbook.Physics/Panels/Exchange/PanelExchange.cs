using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Complex = System.Numerics.Complex;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Panels where they stand, lit by a source, each ready to answer to the others. Immutable.</summary>
internal sealed class PanelExchange
{
    private readonly Mouth _mouth;
    private readonly Standing[] _panels;
    private readonly int[] _outwards;

    private PanelExchange(Mouth mouth, Standing[] panels)
    {
        (_mouth, _panels) = (mouth, panels);
        _outwards =
        [
            .. Enumerable.Range(0, panels.Length).OrderBy(i => panels[i].Place.Cells.Points.Min(point => (point - mouth.Centre).Length))
        ];
    }

    /// <summary>Lights panels.</summary>
    /// <param name="mouth">The source.</param>
    /// <param name="posed">The panels.</param>
    internal static PanelExchange Of(Mouth mouth, IReadOnlyList<PosedPanel> posed) => Of(mouth, posed, []);

    /// <summary>The same source with other panels: what did not move keeps its light and its ways.</summary>
    internal PanelExchange With(IReadOnlyList<PosedPanel> posed) => Of(_mouth, posed, _panels);

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
        Arrivals light = _panels[panel].FromSource;
        return Echo(light.On(SheetFace.Front), currents) + Echo(light.On(SheetFace.Back), currents);
    }

    /// <summary>Lets every panel answer once, from the source outwards, to what the others send at that moment.</summary>
    /// <param name="before">The currents of the panels.</param>
    /// <param name="heard">What each answered to last; kept up to date.</param>
    /// <returns>Their currents afterwards.</returns>
    internal CurrentSamples[] Sweep(CurrentSamples[] before, Heard heard) => Answered(before, _outwards, heard);

    /// <summary>The first sweep where some panels have moved: they answer to those that have not, and then all do, towards the source, since that is where they throw something new.</summary>
    /// <param name="before">The currents of the panels; none of those that have moved.</param>
    /// <param name="heard">What each answered to last; kept up to date.</param>
    /// <returns>Their currents before that sweep, those that have moved with their answer, and after it.</returns>
    internal (CurrentSamples[] Before, CurrentSamples[] After) SweepInwards(CurrentSamples[] before, Heard heard)
    {
        CurrentSamples[] lit = Answered(before, [.. _outwards.Where(i => before[i].Count == 0)], heard);
        return (lit, Answered(lit, [.. _outwards.Reverse()], heard));
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

        return _panels[panel].Place.Answer(arrivals);
    }

    private static Complex Echo(ReadOnlySpan<FieldSample> light, CurrentSamples currents)
    {
        Complex sum = Complex.Zero;
        for (int i = 0; i < Math.Min(light.Length, currents.Count); i++)
        {
            sum += ComplexVector.Dot(light[i].Electric, currents.Electric[i]) - ComplexVector.Dot(light[i].Magnetic, currents.Magnetic[i]);
        }

        return sum;
    }

    private static PanelExchange Of(Mouth mouth, IReadOnlyList<PosedPanel> posed, Standing[] earlier)
    {
        Dictionary<PosedPanel, int> known = Enumerable.Range(0, earlier.Length).DistinctBy(i => earlier[i].Place.Posed)
            .ToDictionary(i => earlier[i].Place.Posed);
        int[] was = [.. posed.Select(panel => known.TryGetValue(panel, out int index) ? index : -1)];
        PanelInPlace[] places = [.. posed.Select((panel, i) => was[i] >= 0 ? earlier[was[i]].Place : new PanelInPlace(panel))];
        Way? Between(int from, int to) => was[from] >= 0 && was[to] >= 0 && was[from] != was[to]
            ? earlier[was[to]].FromOthers[was[from]]
            : Way.Between(places[from].Cells, places[to], mouth.Wavenumber);
        Standing[] standing = [.. places.Select((place, to) => new Standing(
            place,
            was[to] >= 0 ? earlier[was[to]].FromSource : mouth.Light(place),
            [.. places.Select((_, from) => from == to ? null : Between(from, to))]))];
        return new PanelExchange(mouth, standing);
    }

    /// <summary>A panel with what it needs to answer.</summary>
    /// <param name="Place">Where it stands.</param>
    /// <param name="FromSource">What comes straight from the source.</param>
    /// <param name="FromOthers">The way from each other panel; nothing at its own place.</param>
    private sealed record Standing(PanelInPlace Place, Arrivals FromSource, Way?[] FromOthers);
}
