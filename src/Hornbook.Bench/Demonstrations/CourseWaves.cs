using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Links;
using Complex = System.Numerics.Complex;

namespace Hornbook.Bench.Demonstrations;

/// <summary>What the panels do at every setting of a course: solved at as few settings as the smoothness of the waves allows, interpolated at the others.</summary>
/// <remarks>
/// While something is moved steadily, the waves are smooth functions of it. They are solved at a few settings, then half-way between two of them wherever interpolation did not foresee
/// what is found there, until it does everywhere. Rational interpolation without poles [FloaterHormann2007], whose nodes need not be even.
/// </remarks>
internal sealed class CourseWaves
{
    private const int FewestSettings = 33;
    private const int FirstStride = 16;

    // Of the polynomials that are blended: high ones make too much of the last digits, which are not smooth. With five a resonator was once 10 dB off.
    private const int Order = 3;

    // By how much the link's wave may miss what was foreseen: a twentieth of a decibel, or 70 dB below the strongest of the course.
    private const double Tolerance = 6e-3;
    private const double Floor = 3e-4;

    private readonly Scene _scene;
    private readonly IReadOnlyList<Setting> _settings;
    private readonly CancellationToken _cancellation;
    private readonly SortedDictionary<int, PanelWaves> _solved = [];

    private CourseWaves(Scene scene, IReadOnlyList<Setting> settings, CancellationToken cancellation) =>
        (_scene, _settings, _cancellation) = (scene, settings, cancellation);

    /// <summary>Whether a course is worth it: long, steady, and with panels that must be solved anew at each setting.</summary>
    internal static bool IsFor(Scene scene, IReadOnlyList<Setting> settings) =>
        settings.Count >= FewestSettings
        && settings.All(setting => setting.Label.Length == 0 && IsAlike(settings[0], setting))
        && settings.Any(setting => setting.Source != settings[0].Source || !setting.Panels.SequenceEqual(settings[0].Panels))
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
        Func<int, PanelWaves> between = course.Interpolated();
        return [.. Enumerable.Range(0, settings.Count).Select(i => course._solved.TryGetValue(i, out PanelWaves? solved) ? solved : between(i))];
    }

    private static bool IsAlike(Setting first, Setting other) =>
        first.Source.Antenna == other.Source.Antenna && first.Receiver.Antenna == other.Receiver.Antenna
        && first.Panels.Select(panel => (panel.Panel, panel.Stands)).SequenceEqual(other.Panels.Select(panel => (panel.Panel, panel.Stands)));

    private void Refine(IProgress<double>? progress)
    {
        int last = _settings.Count - 1;
        int[] first = [.. Enumerable.Range(0, (last + FirstStride - 1) / FirstStride).Select(i => i * FirstStride), last];
        Solve(first);
        List<(int From, int To)> open = [.. first.Zip(first.Skip(1))];
        while (open.Count > 0)
        {
            progress?.Report(1.0 - (open.Sum(gap => gap.To - gap.From) / (double)last));
            int[] middles = [.. open.Select(gap => (gap.From + gap.To) / 2)];
            Func<int, PanelWaves> between = Interpolated();
            Complex[] foreseen = [.. middles.Select(i => between(i).Sum)];
            Solve(middles);
            double strongest = _solved.Max(node => Wave(node.Key, node.Value).Magnitude);
            open =
            [
                .. open.Where((_, i) => !IsForeseen(middles[i], foreseen[i], strongest))
                    .SelectMany(gap => new[] { (gap.From, To: (gap.From + gap.To) / 2), (From: (gap.From + gap.To) / 2, gap.To) })
                    .Where(gap => gap.To - gap.From > 1)
            ];
        }
    }

    private bool IsForeseen(int setting, Complex foreseen, double strongest)
    {
        PanelWaves found = _solved[setting];
        return (found.Sum - foreseen).Magnitude <= (Tolerance * Wave(setting, found).Magnitude) + (Floor * strongest) + found.Unsettled;
    }

    private Complex Wave(int index, PanelWaves panels)
    {
        Setting setting = _settings[index];
        return panels.Sum + Link.Amplitude(
            _scene.Antenna(setting.Source.Antenna), setting.Source.Pose, _scene.Antenna(setting.Receiver.Antenna), setting.Receiver.Pose);
    }

    private void Solve(int[] settings)
    {
        PanelWaves[] found = new PanelWaves[settings.Length];
        Parallel.For(0, settings.Length, new ParallelOptions { CancellationToken = _cancellation }, i =>
        {
            Setting setting = _settings[settings[i]];
            found[i] = _scene.Waves(setting.Source, setting.Receiver, setting.Panels);
        });
        for (int i = 0; i < settings.Length; i++)
        {
            _solved[settings[i]] = found[i];
        }
    }

    private Func<int, PanelWaves> Interpolated()
    {
        double[] at = [.. _solved.Keys.Select(i => (double)i)];
        PanelWaves[] nodes = [.. _solved.Values];
        int panels = nodes[0].Parts.Count;
        Func<double, Complex>[] parts = [.. Enumerable.Range(0, panels).Select(i => Smooth(at, [.. nodes.Select(node => node.Parts[i])]))];
        Func<double, Vector>[] places = [.. Enumerable.Range(0, panels).Select(i => Smooth(at, [.. nodes.Select(node => node.Brightest[i])]))];
        Func<double, Complex> echo = Smooth(at, [.. nodes.Select(node => node.SourceEcho)]);
        return index =>
        {
            // How well it has settled is not smooth: as badly as the worse of the two neighbours.
            int right = Math.Clamp(~Array.BinarySearch(at, index), 1, nodes.Length - 1);
            PanelWaves worse = nodes[right].Residue > nodes[right - 1].Residue ? nodes[right] : nodes[right - 1];
            return worse with
            {
                Parts = [.. parts.Select(part => part(index))],
                Brightest = [.. places.Select(place => place(index))],
                SourceEcho = echo(index),
            };
        };
    }

    private static Func<double, Complex> Smooth(double[] at, Complex[] values)
    {
        Func<double, double> real = Smooth(at, Array.ConvertAll(values, value => value.Real)), imaginary = Smooth(at, Array.ConvertAll(values, value => value.Imaginary));
        return place => new Complex(real(place), imaginary(place));
    }

    private static Func<double, Vector> Smooth(double[] at, Vector[] values)
    {
        Func<double, double> x = Smooth(at, Array.ConvertAll(values, value => value.X));
        Func<double, double> y = Smooth(at, Array.ConvertAll(values, value => value.Y)), z = Smooth(at, Array.ConvertAll(values, value => value.Z));
        return place => new Vector(x(place), y(place), z(place));
    }

    private static Func<double, double> Smooth(double[] at, double[] values) =>
        MathNet.Numerics.Interpolation.Barycentric.InterpolateRationalFloaterHormann(at, values, Math.Min(Order, at.Length - 1)).Interpolate;
}
