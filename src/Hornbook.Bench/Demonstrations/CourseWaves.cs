using System.Numerics;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Links;
using Hornbook.Physics.Panels;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What the panels do at every setting of a course: solved at as few settings as the smoothness of the waves allows, interpolated at the others.</summary>
/// <remarks>
/// While something is moved steadily, the waves are smooth functions of it. They are solved at a few settings, then half-way between two of them wherever interpolation did not foresee
/// what is found there, until it does everywhere. Between the solved ones lies the polynomial through the nearest six, since where waves resonate the solved settings crowd, and what is
/// smooth over all of them does badly beside the crowd. Once may be luck: a wave that repeats itself from one solved setting to the next looks as if it stood still. So the polynomial
/// through the nearest four must say the same. Where panels throw waves to and fro, the currents are interpolated too, and the sweeps begin with them. Where only the receiver moves,
/// the panels are solved once, and what it receives is read at a few settings in the same way.
/// </remarks>
internal sealed class CourseWaves
{
    private const int FewestSettings = 33;
    private const int FirstStride = 16;

    // Solved settings on either side that an interpolation goes through, and the one beside which it is checked. With two, up to half as many more have to be solved.
    private const int Side = 3;
    private const int FewerSide = 2;

    // By how much the link's wave may miss what was foreseen half-way between two settings: 0.03 dB, or 75 dB below the strongest of the course.
    // It is then solved itself, so that mostly a fraction of that is left; docs/performance.md has what is.
    private const double Tolerance = 3.6e-3;
    private const double Floor = 1.8e-4;

    // By at least so much the miss must have shrunk from a gap to its halves to be trusted to shrink on.
    private const double SureGain = 0.5;

    private readonly Scene _scene;
    private readonly IReadOnlyList<Setting> _settings;
    private readonly CancellationToken _cancellation;
    private readonly SortedDictionary<int, PanelWaves> _solved = [];
    private readonly SortedDictionary<int, KnownCurrents> _known = [];

    // Where only the receiver moves: the same at every setting.
    private readonly Illumination? _lit;

    private CourseWaves(Scene scene, IReadOnlyList<Setting> settings, CancellationToken cancellation)
    {
        (_scene, _settings, _cancellation) = (scene, settings, cancellation);
        Setting first = settings[0];
        _lit = settings.All(setting => setting.Source == first.Source && setting.Panels.SequenceEqual(first.Panels)) ? scene.Light(first.Source, first.Panels) : null;
    }

    /// <summary>Whether a course is worth it: long, steady, and with panels that must be solved, or read, anew at each setting.</summary>
    internal static bool IsFor(Scene scene, IReadOnlyList<Setting> settings) =>
        settings.Count >= FewestSettings
        && settings.All(setting => setting.Label.Length == 0 && IsAlike(settings[0], setting))
        && (scene.Plan.Table.Panel is not null || settings[0].Panels.Any(panel => panel.Stands));

    /// <summary>The waves of each setting, in their order.</summary>
    /// <param name="scene">The bench made ready.</param>
    /// <param name="settings">Of one thing moved in even steps; those for which <see cref="IsFor"/> holds.</param>
    /// <param name="progress">Told the share that is done, 0 to 1 [-], now and then.</param>
    /// <param name="cancellation">Stops the computing.</param>
    internal static PanelWaves[] Of(Scene scene, IReadOnlyList<Setting> settings, IProgress<double>? progress, CancellationToken cancellation)
    {
        CourseWaves course = new(scene, settings, cancellation);
        course.Refine(progress);
        return [.. Enumerable.Range(0, settings.Count).Select(i => course._solved.TryGetValue(i, out PanelWaves? solved) ? solved : course.Between(i))];
    }

    private static bool IsAlike(Setting first, Setting other) =>
        first.Source.Antenna == other.Source.Antenna && first.Receiver.Antenna == other.Receiver.Antenna
        && first.Panels.Select(panel => (panel.Panel, panel.Stands)).SequenceEqual(other.Panels.Select(panel => (panel.Panel, panel.Stands)));

    private void Refine(IProgress<double>? progress)
    {
        int last = _settings.Count - 1;
        int[] first = [.. Enumerable.Range(0, (last + FirstStride - 1) / FirstStride).Select(i => i * FirstStride), last];

        // The ends first, then what lies half-way between: the others need not begin dark, and know whether the panels throw the wave to and fro.
        Solve([0, last], null);
        for (int stride = FirstStride * (int)BitOperations.RoundUpToPowerOf2((uint)first.Length) / 2; stride >= FirstStride; stride /= 2)
        {
            Solve([.. first.Where(i => i % stride == 0 && !_solved.ContainsKey(i))], Part(progress, 0));
        }

        Gap[] open = [.. first.Zip(first.Skip(1), (from, to) => new Gap(from, to, null))];
        for (int round = 1; open.Length > 0; round++)
        {
            Complex[] foreseen = [.. open.Select(gap => Between(gap.Middle).Sum)];
            Solve(Array.ConvertAll(open, gap => gap.Middle), Part(progress, round));
            double strongest = _solved.Max(node => Wave(node.Key, node.Value).Magnitude);
            Missed[] missed = [.. open.Zip(foreseen, (gap, sum) => new Missed(gap, Miss(gap.Middle, sum, _solved[gap.Middle], strongest)))];
            open = [.. missed.SelectMany(gap => gap.Halves.Where(half => half.To - half.From > 1 && !(IsForeseen(gap, missed) && IsSure(half, strongest))))];
        }
    }

    // How many rounds there will be shows only at the last: each goes half of what is left of the way.
    private static Action<double>? Part(IProgress<double>? progress, int round) =>
        progress is null ? null : share => progress.Report(1.0 - Math.Pow(2.0, -round - share));

    /// <summary>By how much one wave by way of the panels misses another one, in what may be missed [-].</summary>
    private double Miss(int setting, Complex foreseen, PanelWaves found, double strongest) =>
        (found.Sum - foreseen).Magnitude / ((Tolerance * Wave(setting, found).Magnitude) + (Floor * strongest));

    /// <summary>Whether both interpolations say the same half-way between two settings.</summary>
    private bool IsSure(Gap gap, double strongest) => Miss(gap.Middle, Between(gap.Middle, FewerSide).Sum, Between(gap.Middle), strongest) <= 1.0;

    /// <summary>Whether a gap needs no more, since what was missed in its middle is solved now: little was missed, or so much less than in the gap of twice the size that little is left for its halves.</summary>
    private static bool IsForeseen(Missed gap, Missed[] all)
    {
        if (gap.Miss <= 1.0)
        {
            return true;
        }

        // Of the two halves of a gap, the one that did worse tells how fast it goes.
        double worse = all.Where(other => other.Gap.Whole == gap.Gap.Whole).Max(other => other.Miss);
        return gap.Gap.Whole is Missed whole && worse <= SureGain * whole.Miss && gap.Miss * worse / whole.Miss <= 1.0;
    }

    private Complex Wave(int index, PanelWaves panels)
    {
        Setting setting = _settings[index];
        return panels.Sum + Link.Amplitude(
            _scene.Antenna(setting.Source.Antenna), setting.Source.Pose, _scene.Antenna(setting.Receiver.Antenna), setting.Receiver.Pose);
    }

    private void Solve(int[] settings, Action<double>? progress)
    {
        int done = 0;
        PanelWaves[] found = new PanelWaves[settings.Length];
        KnownCurrents?[] known = new KnownCurrents?[settings.Length];
        Parallel.For(0, settings.Length, new ParallelOptions { CancellationToken = _cancellation }, i =>
        {
            Setting setting = _settings[settings[i]];
            Illumination lit = _lit ?? _scene.Light(setting.Source, setting.Panels, Start(settings[i]));
            found[i] = _scene.Waves(lit, setting.Receiver);
            known[i] = lit.Panels.Count > 1 && _lit is null ? lit.Known : null;
            progress?.Invoke(Interlocked.Increment(ref done) / (double)settings.Length);
        });
        for (int i = 0; i < settings.Length; i++)
        {
            _solved[settings[i]] = found[i];
            if (known[i] is { } currents)
            {
                _known[settings[i]] = currents;
            }
        }
    }

    private KnownCurrents? Start(int setting)
    {
        if (_known.Count == 0)
        {
            return null;
        }

        (int[] nodes, double[] shares) = Near(setting, Side);
        return KnownCurrents.Mixed(Array.ConvertAll(nodes, node => _known[node]), shares);
    }

    private PanelWaves Between(int setting, int side = Side)
    {
        (int[] nodes, double[] shares) = Near(setting, side);
        return PanelWaves.Mixed(Array.ConvertAll(nodes, node => _solved[node]), shares);
    }

    // Lagrange: the share that each of the nearest solved settings has in the polynomial through them. Shares, because waves and the currents of thousands of cells are mixed alike;
    // the library interpolates numbers only.
    private (int[] Nodes, double[] Shares) Near(int setting, int side)
    {
        int[] all = [.. _solved.Keys];
        int right = ~Array.BinarySearch(all, setting), first = Math.Clamp(right - side, 0, Math.Max(0, all.Length - (2 * side)));
        int[] nodes = all[first..Math.Min(first + (2 * side), all.Length)];
        double[] shares = Array.ConvertAll(nodes, node =>
            nodes.Where(other => other != node).Aggregate(1.0, (share, other) => share * (setting - other) / (node - other)));
        return (nodes, shares);
    }

    /// <summary>A stretch between two solved settings.</summary>
    /// <param name="From">The one.</param>
    /// <param name="To">The other.</param>
    /// <param name="Whole">What it is half of; null for the first.</param>
    private sealed record Gap(int From, int To, Missed? Whole)
    {
        internal int Middle => (From + To) / 2;
    }

    /// <summary>A gap of which the middle has been solved.</summary>
    /// <param name="Gap">The gap.</param>
    /// <param name="Miss">By how much it was missed, in what may be missed [-].</param>
    private sealed record Missed(Gap Gap, double Miss)
    {
        internal Gap[] Halves => [new Gap(Gap.From, Gap.Middle, this), new Gap(Gap.Middle, Gap.To, this)];
    }
}
