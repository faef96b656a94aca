using System.Diagnostics.CodeAnalysis;
using Hornbook.Bench.Beginnings;

namespace Hornbook.Tabletop.Benches;

/// <summary>The five answers as they are typed, with those of a usual bench to begin with.</summary>
public sealed class FirstAnswers
{
    /// <summary>What can be answered to the question for antennas.</summary>
    public static IReadOnlyList<(AntennaSet Set, string Said)> Sets { get; } =
    [
        (AntennaSet.TwoSizesAndOpenGuide, "A large horn, a small horn and an open guide"),
        (AntennaSet.HornAndOpenGuide, "A horn and an open guide"),
        (AntennaSet.TwoHorns, "Two horns alike"),
        (AntennaSet.OpenGuides, "Two open guides: nothing to build"),
    ];

    /// <summary>What can be answered to the question for the audience.</summary>
    public static IReadOnlyList<(Audience Audience, string Said)> Audiences { get; } =
    [
        (Audience.AroundTheTable, "A few people around the table"),
        (Audience.Class, "A class"),
        (Audience.Hall, "A hall with large loudspeakers"),
    ];

    public string Name { get; set; } = "my bench";

    public string Frequency { get; set; } = "10.525 GHz";

    public string Power { get; set; } = "5 mW";

    public AntennaSet Antennas { get; set; } = AntennaSet.TwoSizesAndOpenGuide;

    public string TableLength { get; set; } = "1.8 m";

    public string TableWidth { get; set; } = "70 cm";

    public Audience Audience { get; set; } = Audience.Class;

    /// <summary>Reads what is typed.</summary>
    public bool TryRead([NotNullWhen(true)] out BenchWish? wish, [NotNullWhen(false)] out Obstacle? obstacle)
    {
        obstacle = null;
        double frequency = Read(BenchQuestion.Frequency, Frequency, ref obstacle), power = Read(BenchQuestion.Power, Power, ref obstacle);
        double length = Read(BenchQuestion.TableLength, TableLength, ref obstacle), width = Read(BenchQuestion.TableWidth, TableWidth, ref obstacle);
        wish = obstacle is null ? new BenchWish(frequency, power, Antennas, length, width, Audience) : null;
        return obstacle is null;
    }

    // The first that is wrong is told.
    private static double Read(BenchQuestion question, string text, ref Obstacle? obstacle)
    {
        string? wrong = BenchWish.Read(question, text, out double answer);
        obstacle ??= wrong is null ? null : new Obstacle(question, $"{wrong}.");
        return answer;
    }
}
