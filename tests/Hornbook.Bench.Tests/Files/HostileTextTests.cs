using System.Diagnostics;
using System.Text;
using Hornbook.Bench.Files;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

/// <summary>Whatever the text, the answer is a plan or problems, soon.</summary>
public sealed class HostileTextTests
{
    private const int Tries = 100_000;

    private static readonly string[] Examples = [.. Directory.GetFiles(Repository.At("examples"), "*.toml").Select(File.ReadAllText)];

    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    /// <summary>Pieces that mean something to a TOML reader, or to ours.</summary>
    private static readonly string[] Pieces =
    [
        "\"", "'", "\"\"\"", "'''", "[", "]", "[[", "]]", "{", "}", "=", ".", ",", "#", "\n", "\r\n", "\r", "\\", "\\u", "\0", "\uFEFF", "µ", "−", "\U0001F600",
        "\uD800", "[antennas]", "[source]", "[[demonstrations]]", "\"1e999 m\"", "nan", "inf", "0x", "1979-05-27", "\" dBm\"", "1,5", " mm", "kind = ", "x.y.z = ",
    ];

    // No one waits for a bench file: five seconds are ten thousand times what the examples take.
    private const double Patience = 5.0;

    [Fact]
    [Trait("Cost", "Slow")]
    public void A_hundred_thousand_broken_texts_end_in_a_plan_or_problems()
    {
        double worst = 0.0;
        Lock slowest = new();
        Parallel.For(0, Tries, i =>
        {
            Random random = new(i); // a failing number is its own seed
            string text = i % 4 == 0 ? Noise(random) : Mutation(random);
            (BenchFile file, double taken) = Timed(text);
            RequireAnswer(file, text);
            lock (slowest)
            {
                worst = Math.Max(worst, taken);
            }
        });

        Assert.True(worst < Patience, $"one text took {worst} s");
    }

    // A clock also counts the work of others on a busy machine: what seems slow is tried twice more.
    private static (BenchFile File, double Taken) Timed(string text)
    {
        BenchFile? file = null;
        double shortest = double.PositiveInfinity;
        for (int tries = 0; tries < 3 && shortest >= Patience; tries++)
        {
            long start = Stopwatch.GetTimestamp();
            file = BenchFile.Parse(text, "bench.toml");
            shortest = Math.Min(shortest, Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        return (file!, shortest);
    }

    [Fact]
    public void Bytes_that_are_no_text_say_where()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("hornbook").FullName, "bench.toml");
        File.WriteAllBytes(path, [.. Encoding.UTF8.GetBytes("format = 1\ntitle = \"B"), 0xE4, .. Encoding.UTF8.GetBytes("nke\"\n")]);

        FileProblem problem = Assert.Single(BenchFile.Read(path).Problems);

        Assert.Equal($"{path}:2:11: a letter is not UTF-8; a bench file is UTF-8 text; save the file as UTF-8 and type the letter again", problem.Message);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("a = [")]
    [InlineData("{")]
    [InlineData("a.")]
    [InlineData("[a]\n")]
    [InlineData("\"")]
    [InlineData("\"\"\"")]
    [InlineData(" ")]
    [InlineData("=")]
    [InlineData("a\n")]
    [InlineData("[[a]]\n")]
    [InlineData("a = \"\\")]
    [InlineData("k = { k = ")]
    [InlineData("a\"\\")]
    [InlineData("a = \"\\u")]
    public void A_file_of_one_piece_repeated_to_the_limit_is_answered(string piece)
    {
        string text = string.Concat(Enumerable.Repeat(piece, BenchFile.LongestFile / piece.Length));

        RequireAnswer(BenchFile.Parse(text, "bench.toml"), text);
    }

    private static void RequireAnswer(BenchFile file, string text)
    {
        Assert.True(file.IsUsable == (file.Problems.Count == 0), Excerpt(text));
        int lines = text.Count(one => one == '\n') + 1;
        foreach (FileProblem problem in file.Problems)
        {
            bool placed = problem.Line >= 1 && problem.Line <= lines && problem.Column >= 1 && problem.Length >= 0;
            Assert.True(placed && !problem.Message.Any(char.IsControl), problem.Message);
        }
    }

    private static string Excerpt(string text) => text.Length > 2000 ? text[..2000] : text;

    private static string Noise(Random random)
    {
        byte[] bytes = new byte[random.Next(200)];
        random.NextBytes(bytes);
        return random.Next(2) == 0 ? TextFile.Decode(bytes).Text : Encoding.Latin1.GetString(bytes);
    }

    private static string Mutation(Random random)
    {
        // Most from the short bench, which has the same tables: the examples' comments take most of the time and break nothing.
        StringBuilder text = new(random.Next(8) == 0 ? Examples[random.Next(Examples.Length)] : Minimal);
        for (int change = random.Next(1, 6); change > 0; change--)
        {
            int at = random.Next(text.Length);
            int length = Math.Min(random.Next(1, 12), text.Length - at);
            string moved = text.ToString(at, length);
            _ = random.Next(4) switch
            {
                0 => text.Remove(at, length),
                1 => text.Insert(at, Pieces[random.Next(Pieces.Length)]),
                2 => text.Insert(random.Next(text.Length), moved),
                _ => text.Replace(text[at], (char)random.Next(32, 0x180), at, 1),
            };
        }

        return text.ToString();
    }
}
