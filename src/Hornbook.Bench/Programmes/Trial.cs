using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Findings;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Detection;
using Hornbook.Physics.Exposure;

namespace Hornbook.Bench.Programmes;

/// <summary>A demonstration tried at a few of its settings with everything standing in one way; any gain can then be judged without computing waves anew.</summary>
/// <param name="Bench">How everything stands.</param>
/// <param name="Reach">Mouth to mouth [m].</param>
/// <param name="Readings">At the settings tried; the gain does not matter to their powers.</param>
/// <param name="NearShare">Share of them within the near zone [-].</param>
/// <param name="IsHandInside">Whether the hand that moves something reaches into the keep-out distance.</param>
internal sealed record Trial(BenchPlan Bench, double Reach, IReadOnlyList<Reading> Readings, double NearShare, bool IsHandInside)
{
    private const int MostSettings = 9;

    // One decibel of room: the sketch is some tenths off, and the strongest setting may lie between those tried.
    private const double Room = 1.26;

    /// <summary>Tries a demonstration; null where something would leave the table or stand in something else.</summary>
    internal static Trial? Of(Scene scene, Demonstration demonstration, BenchPlan bench, ExposureLimit? limit)
    {
        IReadOnlyList<Setting> course = demonstration.Course(bench);
        if (!course.All(setting => Fits(bench, setting)))
        {
            return null;
        }

        int stride = Math.Max(1, (course.Count + MostSettings - 2) / (MostSettings - 1));
        Setting[] tried = [.. course.Where((_, i) => i % stride == 0 || i == course.Count - 1)];
        Reading ReadingOf(Setting setting) => scene.Read(setting.Source, setting.Receiver, setting.Panels);

        // The first alone: where only the receiver moves, the others then find the panels solved.
        Reading[] readings = [ReadingOf(tried[0]), .. SideBySide.Each(tried[1..], ReadingOf, CancellationToken.None)];
        return new Trial(
            bench,
            (bench.Receiver.Pose.Position - bench.Source.Pose.Position).Length,
            readings,
            tried.Count(setting => setting.Distance < TextbookLink.FarZoneOf(scene, setting)) / (double)tried.Length,
            limit is not null && IsInside(scene, course, limit));
    }

    /// <summary>How well the demonstration is heard with a gain.</summary>
    internal Merit With(Demonstration demonstration, DetectionChain chain)
    {
        HeardTone[] heard = [.. Readings.Select(reading => chain.Hear(reading.ReceivedPower))];
        return new Merit(
            PitchSteps.Between(heard.Min(h => h.Tone), heard.Max(h => h.Tone)),
            Readings.Count(r => ChainSetting.IsAtCeiling(chain, chain.Hear(Room * r.ReceivedPower))) / (double)Readings.Count,
            heard.All(h => h.State == ToneState.Drowned),
            demonstration.NeedsFarZone ? NearShare : 0.0,
            Readings.Count(r => r.Trust.Level == TrustLevel.Outside) / (double)Readings.Count,
            IsHandInside);
    }

    private static bool Fits(BenchPlan bench, Setting setting)
    {
        double wavelength = FreeSpace.Wavelength(bench.Frequency);
        Vector[] mouths = [setting.Source.Pose.Position, setting.Receiver.Pose.Position];
        BenchPanel[] standing = [.. setting.Panels.Where(panel => panel.Stands)];
        return setting.Distance > wavelength
            && mouths.All(mouth => PlaceFindings.Beyond(bench.Table, mouth) == 0.0)
            && standing.All(panel => PlaceFindings.Beyond(bench.Table, panel.Pose.Position) == 0.0)
            && standing.All(panel => mouths.All(mouth => (panel.Pose.Position - mouth).Length > wavelength));
    }

    // What is moved by hand: the receiver, or a panel. Whoever turns the source stands behind it.
    private static bool IsInside(Scene scene, IReadOnlyList<Setting> course, ExposureLimit limit)
    {
        SourceEnd source = course[0].Source;
        ExposureField field = ExposureField.Of(scene.Antenna(source.Antenna), source.WorstCasePower);
        double allowed = limit.PowerDensity(scene.Plan.Frequency);
        return Hands(course).Any(place => TableEdge.DensityAt(field, source.Pose.ToOwn(place)) > allowed);
    }

    private static IEnumerable<Vector> Hands(IReadOnlyList<Setting> course)
    {
        Setting first = course[0];
        foreach (Setting setting in course.Skip(1))
        {
            if (setting.Receiver != first.Receiver)
            {
                yield return setting.Receiver.Pose.Position;
            }

            foreach ((BenchPanel panel, BenchPanel before) in setting.Panels.Zip(first.Panels))
            {
                if (panel != before)
                {
                    yield return panel.Pose.Position;
                }
            }
        }
    }
}
