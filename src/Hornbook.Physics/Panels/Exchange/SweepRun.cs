using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>Sweep after sweep until panels have settled: corrected by images where panels face each other; else as they are while the wave goes outwards, then mixed.</summary>
internal sealed class SweepRun
{
    /// <summary>So many sweeps only carry the wave outwards; there is nothing to mix yet.</summary>
    internal const int Outwards = 3;

    // Three corrected sweeps leave a hundredth of the change or so; where they leave more than this, images know too little.
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
    private ImageCorrection? _images;

    internal SweepRun(PanelExchange exchange, Heard heard, Beginning begun)
    {
        (_exchange, _heard, _asTheyAre, _changes, _toCome) = (exchange, heard, begun.AsTheyAre, [begun.Change], begun.ToCome);
        _latest = (begun.Before, begun.After);
        _best = (begun.Before, begun.After, 1);
        _images = begun.Images;
    }

    private double Residue => _toCome * _changes[^1];

    /// <summary>Goes on until the currents have settled.</summary>
    /// <param name="settled">At what residue to stop [-].</param>
    /// <param name="most">After how many sweeps to give up.</param>
    internal PanelSweeps Until(double settled, int most)
    {
        while (Residue > settled && _count < most)
        {
            Sweep();
        }

        // Where they do not settle, the sweep that came closest is the best there is; how far it is off is told by how the last ones went.
        if (Residue > settled)
        {
            BackToBest();
        }

        return new PanelSweeps(_latest.After, _latest.Before, _count, _toCome, Residue);
    }

    private void Sweep()
    {
        CurrentSamples[] before = Next(), after = _images is null ? _exchange.Sweep(before, _heard) : _exchange.Sweep(before, _heard, _images);
        _count++;
        _changes.Add(PanelSweeps.Change(before, after));
        _latest = (before, after);
        if (_changes[^1] <= _changes[_best.Changes - 1])
        {
            _best = (before, after, _changes.Count);
        }

        if (_images is not null && _changes.Count > SweepsGiven + 1 && _changes[^1] > LeastGain * _changes[^(SweepsGiven + 1)])
        {
            GoOnWithoutImages();
        }

        _toCome = StillToCome(_changes);
    }

    private CurrentSamples[] Next() => _count < _asTheyAre ? _latest.After : _acceleration.Next(_latest.Before, _latest.After);

    private void GoOnWithoutImages()
    {
        (_images, _acceleration) = (null, new SweepAcceleration());
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
    /// <param name="Images">Those of panels in others, where there are any.</param>
    internal sealed record Beginning(
        CurrentSamples[] Before, CurrentSamples[] After, double Change, double ToCome, int AsTheyAre, ImageCorrection? Images = null);
}
