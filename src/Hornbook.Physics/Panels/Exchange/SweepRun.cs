using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Sweep after sweep until panels have settled: as they are while the wave goes outwards, then mixed, and corrected where panels throw it to and fro.</summary>
internal sealed class SweepRun
{
    /// <summary>So many sweeps only carry the wave outwards; there is nothing to mix yet.</summary>
    internal const int Outwards = 3;

    // Where these leave more than that, and the last of them more than this of the one before it, panels face each other and the wave is trapped between them.
    private const double MuchLeft = 0.1;
    private const double SlowShare = 0.55;

    // Three corrected sweeps leave a tenth of the change or so; where they leave more than this, the larger cells know too little.
    private const int SweepsGiven = 3;
    private const double LeastGain = 0.7;

    // One lucky sweep does not promise that the next one will be as good, nor a bad one that nothing ever comes.
    private const double LeastShare = 0.1;
    private const double MostShare = 0.98;

    // Mixing makes changes shrink unevenly: they are judged over so many sweeps.
    private const int SweepsJudged = 4;

    private readonly PanelExchange _exchange;
    private readonly Heard _heard;
    private readonly int _asTheyAre;
    private readonly List<double> _changes;
    private int _count = 1;
    private (CurrentSamples[] Before, CurrentSamples[] After) _latest;
    private (CurrentSamples[] Before, CurrentSamples[] After, int Changes) _best;
    private double _toCome;
    private SweepAcceleration _acceleration = new();
    private CoarseCorrection? _correction;
    private bool _wasCorrected;

    internal SweepRun(PanelExchange exchange, Heard heard, Beginning begun)
    {
        (_exchange, _heard, _asTheyAre, _changes, _toCome) = (exchange, heard, begun.AsTheyAre, [begun.Change], begun.ToCome);
        _latest = (begun.Before, begun.After);
        _best = (begun.Before, begun.After, 1);
        if (begun.ToAndFro)
        {
            Correct();
        }
    }

    private double Residue => _toCome * _changes[^1];

    /// <summary>Goes on until the currents have settled.</summary>
    /// <param name="settling">When that is, and after how many sweeps to give up.</param>
    internal PanelSweeps Until(Settling settling)
    {
        while (Residue > settling.Residue && _count < settling.MostSweeps)
        {
            Sweep();
        }

        // Where they do not settle, the sweep that came closest is the best there is; how far it is off is told by how the last ones went.
        if (Residue > settling.Residue)
        {
            BackToBest();
        }

        return new PanelSweeps(_latest.After, _latest.Before, _count, _toCome, Residue, _correction is not null);
    }

    private void Sweep()
    {
        if (_count == Outwards && _changes[^1] > MuchLeft && _changes[^1] > SlowShare * _changes[^2])
        {
            Correct();
        }

        CurrentSamples[] before = Next(), after = _exchange.Sweep(before, _heard);
        _count++;
        _changes.Add(PanelSweeps.Change(before, after));
        _latest = (before, after);
        if (_changes[^1] <= _changes[_best.Changes - 1])
        {
            _best = (before, after, _changes.Count);
        }

        if (_correction is not null && _changes.Count > SweepsGiven + 1 && _changes[^1] > LeastGain * _changes[^(SweepsGiven + 1)])
        {
            CorrectNoMore();
        }

        _toCome = StillToCome(_changes);
    }

    private CurrentSamples[] Next() => (_correction, _count < _asTheyAre) switch
    {
        (CoarseCorrection correction, _) => _acceleration.Next(_latest.Before, correction.Corrected(_latest.Before, _latest.After)),
        (_, true) => _latest.After,
        _ => _acceleration.Next(_latest.Before, _latest.After),
    };

    private void Correct()
    {
        if (!_wasCorrected)
        {
            (_correction, _wasCorrected) = (CoarseCorrection.Of(_exchange), true);
        }
    }

    // On with mixing alone.
    private void CorrectNoMore()
    {
        (_correction, _acceleration) = (null, new SweepAcceleration());
        BackToBest();
    }

    private void BackToBest()
    {
        _latest = (_best.Before, _best.After);
        _changes.RemoveRange(_best.Changes, _changes.Count - _best.Changes);
    }

    // Changes that shrink by a share ρ each time leave ρ/(1 − ρ) of the last one undone.
    private static double StillToCome(List<double> changes)
    {
        int last = changes.Count - 1, first = Math.Max(0, last - SweepsJudged);
        double lately = first < last ? Math.Pow(changes[last] / changes[first], 1.0 / (last - first)) : MostShare;
        double share = Math.Clamp(lately, LeastShare, MostShare);
        return share / (1.0 - share);
    }

    /// <summary>What is known after the first sweep.</summary>
    /// <param name="Before">The currents before it.</param>
    /// <param name="After">The currents after it.</param>
    /// <param name="Change">By how much it changed them [-].</param>
    /// <param name="ToCome">How many times that may still be to come.</param>
    /// <param name="AsTheyAre">How many sweeps follow each other as they are before they are mixed.</param>
    /// <param name="ToAndFro">Whether the panels are known to throw the wave to and fro.</param>
    internal sealed record Beginning(CurrentSamples[] Before, CurrentSamples[] After, double Change, double ToCome, int AsTheyAre, bool ToAndFro);
}
