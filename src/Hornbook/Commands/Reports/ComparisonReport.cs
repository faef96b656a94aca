using System.Text.Json.Serialization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>A number beside what books say, in the key of its unit.</summary>
internal sealed record ComparisonReport(string What, string Remark)
{
    private const double LargestDb = 200.0;

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BenchDeg { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BooksDeg { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BenchM { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BooksM { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BenchDb { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BooksDb { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BenchRatio { get; private init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? BooksRatio { get; private init; }

    internal static ComparisonReport Of(Comparison c) => c.Quantity switch
    {
        ComparedQuantity.Angle => new(c.What, c.Remark) { BenchDeg = Degrees(c.OnBench), BooksDeg = Degrees(c.InBooks) },
        ComparedQuantity.Length => new(c.What, c.Remark) { BenchM = c.OnBench, BooksM = c.InBooks },
        ComparedQuantity.Level => new(c.What, c.Remark) { BenchDb = c.OnBench, BooksDb = c.InBooks },
        _ => new(c.What, c.Remark) { BenchRatio = c.OnBench, BooksRatio = c.InBooks },
    };

    internal void AddTo(TextTable table) => table.Row(
        What,
        Shown(BenchDeg, BenchM, BenchDb, BenchRatio),
        Shown(BooksDeg, BooksM, BooksDb, BooksRatio),
        Remark);

    private static string Shown(double? degrees, double? metres, double? decibels, double? ratio) => (degrees, metres, decibels, ratio) switch
    {
        ({ } angle, _, _, _) => Show.Fixed(angle, 1, "deg"),
        (_, { } length, _, _) => Show.Fixed(1000.0 * length, 1, "mm"),
        (_, _, <= -LargestDb, _) => "nothing",
        (_, _, >= LargestDb, _) => "no limit",
        (_, _, { } level, _) => Show.Db(level),
        (_, _, _, { } number) => Show.Fixed(number, 2),
        _ => "-",
    };

    private static double? Degrees(double? angle) => angle * 180.0 / Math.PI;
}
