using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Bench.Beginnings;

/// <summary>The antennas of a first bench and how far apart they can stand on its table.</summary>
/// <param name="All">Name, shape and what is said of it, the source's first.</param>
/// <param name="Receiver">Name of the receiver's.</param>
/// <param name="SourceAt">Of the source's mouth, along the bench [m].</param>
/// <param name="ReceiverAt">Of the receiver's mouth, along the bench [m].</param>
internal sealed record FirstAntennas(IReadOnlyList<(string Name, AntennaShape Shape, string Said)> All, string Receiver, double SourceAt, double ReceiverAt)
{
    /// <summary>Name of the guide cut square.</summary>
    internal const string Probe = "probe";

    // What the chooser is asked for, the best first [dB]: below the last a horn is hardly more than the guide that feeds it.
    private const int LeastGainDb = 10;

    // So much less has the small horn: a clear step of pitch, still clearly more than an open guide [dB].
    private const double SmallerDb = 5.0;

    // A horn is worth building from so much more gain than the open guide has [-].
    private const double WorthBuilding = 1.5;

    // Guide, oscillator or detector behind a throat [m].
    private const double Behind = 0.10;

    // Mouth to mouth, least: three wavelengths are no longer a joint, ten are a bench.
    private const double LeastInWaves = 6.0;

    // Half a millimetre can be read off a steel rule (common practice, no source).
    private const double Step = 0.5e-3;

    /// <summary>Name of the source's.</summary>
    internal string Source => All[0].Name;

    /// <summary>Mouth to mouth [m].</summary>
    internal double Distance => ReceiverAt - SourceAt;

    /// <summary>Where the far zone of the largest begins, 2D²/λ [m].</summary>
    internal double FarZone(double wavelength) => All.Max(antenna => 2.0 * antenna.Shape.LargerSide * antenna.Shape.LargerSide) / wavelength;

    /// <summary>Chooses the horn of most gain that the table has room for.</summary>
    internal static Obstacle? Choose(BenchWish wish, out FirstAntennas? antennas)
    {
        RectangularGuide guide = Guide(wish.Frequency);
        OpenGuide open = new(guide, Brass);
        double wavelength = FreeSpace.Wavelength(wish.Frequency);
        antennas = wish.Antennas == AntennaSet.OpenGuides
            ? Placed(wish, [(Probe, open, OpenSaid)], Probe)
            : Enumerable.Range(LeastGainDb, MostGainDb(wish.Audience) - LeastGainDb + 1).Reverse()
                .Select(gainDb => WithHorn(wish, new Feed(guide, wish.Frequency, Brass), open, gainDb))
                .FirstOrDefault(set => set is not null && Fits(wish, set, wavelength));
        return antennas is not null && Fits(wish, antennas, wavelength) ? null : new Obstacle(BenchQuestion.TableLength,
            $"The table has no room for these antennas at {InWords.Frequency(wish.Frequency)}, where the wavelength is {InWords.Length(wavelength)}. Take a longer or wider table, other antennas or a higher frequency.");
    }

    private static Conductor Brass => Conductors.Find("brass")!;

    private static string OpenSaid => "A piece of guide, cut square: it looks almost everywhere and disturbs little.";

    // Around a table a broad beam is no harm; into a hall a narrow one keeps the table's own echoes out.
    private static int MostGainDb(Audience audience) => audience switch
    {
        Audience.AroundTheTable => 15,
        Audience.Class => 17,
        _ => 19,
    };

    /// <summary>The standard guide in the middle of whose band the frequency lies most.</summary>
    private static RectangularGuide Guide(double frequency) => StandardGuides.For(frequency)
        .MinBy(size => Math.Abs(Math.Log(frequency * frequency / (size.RecommendedBand.Lowest * size.RecommendedBand.Highest))))!.Guide;

    private static FirstAntennas? WithHorn(BenchWish wish, Feed feed, OpenGuide open, int gainDb)
    {
        double openGain = feed.OpenGuideGain;
        if (Horn(feed, gainDb, openGain) is not { } horn)
        {
            return null;
        }

        string name = wish.Antennas == AntennaSet.TwoSizesAndOpenGuide ? "large-horn" : "horn";
        (string, AntennaShape, string) large = (name, horn.Horn, Said(horn));
        return wish.Antennas switch
        {
            AntennaSet.TwoHorns => Placed(wish, [large], name),
            AntennaSet.TwoSizesAndOpenGuide => Horn(feed, gainDb - SmallerDb, openGain) is { } small
                ? Placed(wish, [large, ("small-horn", small.Horn, $"For the comparison. {Said(small)}"), (Probe, open, OpenSaid)], Probe)
                : null,
            _ => Placed(wish, [large, (Probe, open, OpenSaid)], Probe),
        };
    }

    private static HornFigures? Horn(Feed feed, double gainDb, double openGain)
    {
        double gain = Decibels.ToRatio(gainDb);
        return gain < WorthBuilding * openGain ? null : HornWish.ForGain(feed, gain).Figures?.Rounded(Step);
    }

    private static string Said(HornFigures horn)
    {
        double farZone = 2.0 * horn.Horn.LargerSide * horn.Horn.LargerSide * horn.Frequency / Constants.SpeedOfLight;
        return $"The shortest horn of {InWords.Decibels(Decibels.FromRatio(horn.Gain))}i; its far zone begins at {InWords.Length(farZone)}.";
    }

    private static FirstAntennas Placed(BenchWish wish, IReadOnlyList<(string Name, AntennaShape Shape, string Said)> all, string receiver)
    {
        double source = all.Max(antenna => Depth(antenna.Shape));
        double far = wish.TableLength - Depth(all.First(antenna => antenna.Name == receiver).Shape);
        return new FirstAntennas(all, receiver, ToCentimetres(source, up: true), ToCentimetres(far, up: false));
    }

    // From the table's end to the mouth [m].
    private static double Depth(AntennaShape shape) => Behind + ((shape as Horn)?.Length ?? 0.0);

    private static double ToCentimetres(double length, bool up) => (up ? Math.Ceiling((length * 100.0) - 1e-6) : Math.Floor((length * 100.0) + 1e-6)) / 100.0;

    // The far zone shall begin at half of the way at the latest, so that laws that need it can be shown.
    private static bool Fits(BenchWish wish, FirstAntennas set, double wavelength) =>
        set.Distance >= LeastInWaves * wavelength
        && set.FarZone(wavelength) <= 0.5 * set.Distance
        && set.All.Max(antenna => antenna.Shape.MouthWidth) <= 0.5 * wish.TableWidth;
}
