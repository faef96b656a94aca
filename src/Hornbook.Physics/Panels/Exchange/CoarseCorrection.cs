using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>What panels that throw a wave to and fro will still add to it, found with larger cells, which cost a quarter: the two-grid correction of a sweep.</summary>
/// <remarks>
/// The full approximation scheme [Brandt1977], since the direction in which a wave travels is taken from the field itself: on the larger cells the currents y are sought for which
/// y = F(y) + τ, with τ such that the sweep before, F(x), is met exactly; by what y differs from that, the sweep is corrected.
/// </remarks>
internal sealed class CoarseCorrection
{
    // More is spoilt by what the larger cells do not know.
    private const double Settled = 0.25;
    private const int MostSweeps = 25;

    // Steps on the larger cells are short to remember, and as true for the next correction as for this one: the first learns, the others know.
    private const int StepsRemembered = 15;

    private readonly PanelExchange _fine;
    private readonly PanelExchange _coarse;
    private readonly SweepAcceleration _acceleration = new(StepsRemembered);

    // Of the panels that have larger cells.
    private readonly (int Panel, CoarsePanel Coarse)[] _parts;

    private CoarseCorrection(PanelExchange fine, PanelExchange coarse, (int Panel, CoarsePanel Coarse)[] parts) => (_fine, _coarse, _parts) = (fine, coarse, parts);

    /// <summary>For panels where they stand; null where fewer than two have larger cells.</summary>
    internal static CoarseCorrection? Of(PanelExchange exchange)
    {
        (int Panel, CoarsePanel Coarse)[] parts =
        [
            .. Enumerable.Range(0, exchange.Count).Where(i => exchange.Posed(i).Panel.Coarse is not null).Select(i => (i, exchange.Posed(i).Panel.Coarse!))
        ];
        return parts.Length < 2 ? null : new CoarseCorrection(exchange, exchange.Lighting([.. parts.Select(part => new PosedPanel(part.Coarse.Panel, exchange.Posed(part.Panel).Pose))]), parts);
    }

    /// <summary>A sweep with what is still to come of it.</summary>
    /// <param name="before">The currents before it.</param>
    /// <param name="after">The currents after it.</param>
    internal CurrentSamples[] Corrected(CurrentSamples[] before, CurrentSamples[] after)
    {
        CurrentSamples[] swept = Down(after), lacking = Less(swept, Sweep(Down(before)));
        CurrentSamples[] found = Solved(swept, lacking), more = Less(found, swept), corrected = [.. after];
        for (int k = 0; k < _parts.Length; k++)
        {
            (int panel, CoarsePanel coarse) = _parts[k];
            corrected[panel] = after[panel].Plus(coarse.Up(more[k], _fine.Cells(panel)), 1.0);
        }

        return corrected;
    }

    private static CurrentSamples[] Less(CurrentSamples[] a, CurrentSamples[] b) => [.. a.Zip(b, (one, other) => one.Plus(other, -1.0))];

    private CurrentSamples[] Solved(CurrentSamples[] start, CurrentSamples[] lacking)
    {
        _acceleration.Leap();
        (CurrentSamples[] before, double first) = (start, 0.0);
        for (int sweeps = 1; true; sweeps++)
        {
            CurrentSamples[] after = [.. Sweep(before).Zip(lacking, (swept, add) => swept.Plus(add, 1.0))];
            double change = PanelSweeps.Change(before, after);
            first = sweeps == 1 ? change : first;
            if (change <= Settled * first || sweeps == MostSweeps)
            {
                return after;
            }

            before = _acceleration.Next(before, after);
        }
    }

    private CurrentSamples[] Down(CurrentSamples[] currents) => [.. _parts.Select((part, k) => part.Coarse.Down(currents[part.Panel], _coarse.Cells(k)))];

    private CurrentSamples[] Sweep(CurrentSamples[] currents) => _coarse.Sweep(currents, new Heard(_coarse.Count));
}
