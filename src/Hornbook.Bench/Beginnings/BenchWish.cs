using Hornbook.Bench.Files.Quantities;

namespace Hornbook.Bench.Beginnings;

/// <summary>The answers to the five questions from which a first bench is made.</summary>
/// <param name="Frequency">Of the oscillator [Hz]; 2.6 to 40 GHz, where there are standard guides.</param>
/// <param name="Power">The most that the source can give [W]; 10 µW to 1 W.</param>
/// <param name="Antennas">What sends and receives.</param>
/// <param name="TableLength">Along the bench [m]; 0.4 to 10 m.</param>
/// <param name="TableWidth">Across it [m]; 0.2 to 5 m.</param>
/// <param name="Audience">Before whom it is shown.</param>
public sealed record BenchWish(double Frequency, double Power, AntennaSet Antennas, double TableLength, double TableWidth, Audience Audience)
{
    /// <summary>What each number may be, by its question.</summary>
    internal static IReadOnlyDictionary<BenchQuestion, WishRange> Ranges { get; } = new Dictionary<BenchQuestion, WishRange>
    {
        [BenchQuestion.Frequency] = new(Quantity.Frequency, "2.6 GHz", "40 GHz", "10.525 GHz"),
        [BenchQuestion.Power] = new(Quantity.Power, "10 µW", "1 W", "5 mW"),
        [BenchQuestion.TableLength] = new(Quantity.Length, "40 cm", "10 m", "1.8 m"),
        [BenchQuestion.TableWidth] = new(Quantity.Length, "20 cm", "5 m", "70 cm"),
    };

    /// <summary>Reads one typed answer.</summary>
    /// <param name="question">One that is answered with a number.</param>
    /// <param name="text">As typed, with its unit.</param>
    /// <param name="answer">In SI units; of no meaning where something is wrong.</param>
    /// <returns>What is wrong and what would fit; null where nothing is.</returns>
    /// <exception cref="KeyNotFoundException">The question is not answered with a number.</exception>
    public static string? Read(BenchQuestion question, string text, out double answer)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Ranges[question].Read(text, out answer);
    }

    /// <summary>The first number that is out of its range; null where none is.</summary>
    internal Obstacle? OutOfRange() => new[]
    {
        Beyond(BenchQuestion.Frequency, Frequency),
        Beyond(BenchQuestion.Power, Power),
        Beyond(BenchQuestion.TableLength, TableLength),
        Beyond(BenchQuestion.TableWidth, TableWidth),
    }.FirstOrDefault(obstacle => obstacle is not null);

    private static Obstacle? Beyond(BenchQuestion question, double answer) =>
        Ranges[question].Contains(answer) ? null : new Obstacle(question, $"That is out of range: from {Ranges[question].Lowest} to {Ranges[question].Highest} fits.");
}
