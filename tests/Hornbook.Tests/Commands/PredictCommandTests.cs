using System.Text.Json.Nodes;
using System.Xml.Linq;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Readings;
using Hornbook.Commands;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class PredictCommandTests : IDisposable
{
    private static readonly string Bench = Repository.At("examples", "evening-bench.toml");

    private static readonly string[] LessonKeys = ["stand", "spoils", "wrong_picture", "why_it_fails", "for_a_child", "for_a_student"];

    private const string Mirrors = """

        [panels.near]
        kind = "metal plate"
        width = "10 cm"
        height = "10 cm"
        x = "60 cm"
        y = "3 cm"
        z = "40 cm"

        [panels.far]
        kind = "metal plate"
        width = "10 cm"
        height = "10 cm"
        x = "75 cm"
        z = "40 cm"
        turn = "20 deg"
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-predict-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Json_of_the_bench_as_it_stands_is_what_the_scene_reads()
    {
        Reading reading = Scene.Of(BenchFile.Read(Bench).Plan!).Read();
        JsonNode json = await Json(Bench);
        Close.Relative(Decibels.FromRatio(reading.Link), Number(json, "link_db"), 1e-15);
        Close.Relative(Decibels.FromRatio(reading.Mismatch), Number(json, "mismatch_db"), 1e-15);
        Close.Relative(Decibels.PowerToDbm(reading.ReceivedPower), Number(json, "received_dbm"), 1e-15);
        Close.Relative(reading.Heard.DetectorVoltage, Number(json, "detector_v"), 1e-15);
        Close.Relative(reading.Heard.AmplifierVoltage, Number(json, "amplifier_v"), 1e-15);
        Close.Relative(reading.Heard.Tone, Number(json, "tone_hz"), 1e-15);
        Close.Relative(reading.RippleDb, Number(json, "ripple_db"), 1e-15);
        Close.Relative(reading.Heard.JitterCents, Number(json, "jitter_cents"), 1e-15);
    }

    [Fact]
    public async Task Text_says_the_same_numbers()
    {
        JsonNode json = await Json(Bench);
        Typed text = await Typed.In("predict", Bench);
        Assert.Contains(FormattableString.Invariant($"{Number(json, "link_db"):F1} dB"), text.Output, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{Number(json, "received_dbm"):F1} dBm"), text.Output, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{Number(json, "tone_hz"):F1} Hz"), text.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_number_of_all_demonstrations_has_its_unit_in_the_key()
    {
        JsonNode json = await Json(Bench, "--all");
        Assert.Empty(UnitOfKey.Missing(json));
        Assert.Equal(["beam_width", "gain", "distance_law", "polarisation"], json["demonstrations"]!.AsArray().Select(d => d!["evaluation"]!["shows"]!.GetValue<string>()));
    }

    [Theory]
    [MemberData(nameof(CheckCommandTests.Examples), MemberType = typeof(CheckCommandTests))]
    public async Task All_demonstrations_fit_into_80_columns(string bench)
    {
        Typed text = await Typed.In("predict", bench, "--all");
        Assert.Equal(ExitCode.Fine, text.Code);
        Assert.All(text.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task A_demonstration_is_written_as_figure_and_as_table()
    {
        string figure = Path.Combine(_folder, "beam.svg"), csv = Path.Combine(_folder, "beam.csv");
        Typed typed = await Typed.In("predict", Bench, "beam-width", "--figure", figure, "--csv", csv);
        Assert.Equal(ExitCode.Fine, typed.Code);
        Assert.Equal("img", XElement.Load(figure).Attribute("role")?.Value);
        string[] rows = File.ReadAllLines(csv);
        // As in the example: from −60 degrees, and not from −59.99999999999999.
        Assert.StartsWith("-60,", rows[1], StringComparison.Ordinal);
        // derived: a line for each point that the example asks for, and the header.
        BeamWidthDemonstration demonstration = BenchFile.Read(Bench).Plan!.Demonstrations.OfType<BeamWidthDemonstration>().Single();
        Assert.Equal(demonstration.Points + 1, rows.Length);
        Assert.StartsWith("turn [deg],link [dB],", rows[0], StringComparison.Ordinal);
        Assert.EndsWith($"wrote {figure}\nwrote {csv}\n", typed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_table_has_the_numbers_of_the_JSON_to_the_last_bit()
    {
        string csv = Path.Combine(_folder, "gain.csv");
        JsonNode json = await Json(Bench, "gain", "--csv", csv);
        string[] first = File.ReadAllLines(csv)[1].Split(',');
        JsonNode point = json["demonstrations"]![0]!["points"]![0]!;
        Assert.Equal("large-horn", first[0]);
        Assert.Equal(Number(point, "link_db"), double.Parse(first[1], System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(Number(point, "tone_hz"), double.Parse(first[6], System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task Explained_a_demonstration_says_in_text_and_json_what_its_lesson_says()
    {
        Lesson lesson = BenchFile.Read(Bench).Plan!.Demonstrations.Single(d => d.Name == "polarisation").Lesson(BenchFile.Read(Bench).Plan!)!;
        JsonNode told = (await Json(Bench, "polarisation", "--explain"))["demonstrations"]![0]!["lesson"]!;
        Assert.Equal(
            [lesson.Stand, lesson.Spoils, lesson.WrongPicture, lesson.WhyItFails, lesson.ForAChild, lesson.ForAStudent],
            LessonKeys.Select(key => told[key]!.GetValue<string>()));
        Typed text = await Typed.In("predict", Bench, "polarisation", "--explain");
        string flowing = System.Text.RegularExpressions.Regex.Replace(text.Output, @"\s+", " ");
        Assert.Contains($"For a student of physics: {lesson.ForAStudent}", flowing, StringComparison.Ordinal);
        Assert.All(text.Lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task Unasked_nothing_is_explained_and_without_a_demonstration_nothing_can_be()
    {
        Assert.Null((await Json(Bench, "polarisation"))["demonstrations"]![0]!["lesson"]);
        Typed typed = await Typed.In("predict", Bench, "--explain");
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Equal("--explain needs a demonstration, or --all\n", typed.Error);
    }

    [Fact]
    public async Task An_unknown_demonstration_is_wrong_input_and_the_known_ones_are_listed()
    {
        Typed typed = await Typed.In("predict", Bench, "beam");
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Equal("\"beam\" is no demonstration of this bench; type one of beam-width, gain, distance-law, polarisation, or --all\n", typed.Error);
        Assert.Empty(typed.Output);
    }

    [Theory]
    [InlineData("--figure", "out.pdf")]
    [InlineData("--figure", "out.svg")]
    [InlineData("--csv", "out.csv")]
    public async Task A_file_that_cannot_be_made_is_wrong_input(string option, string file)
    {
        // The first for its ending, the others because the bench as it stands is no curve.
        Typed typed = await Typed.In("predict", Bench, option, Path.Combine(_folder, file));
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public async Task A_file_that_cannot_be_written_is_said_in_one_line()
    {
        Typed typed = await Typed.In("predict", Bench, "gain", "--csv", Path.Combine(_folder, "nowhere", "gain.csv"));
        Assert.Equal(ExitCode.Failed, typed.Code);
        Assert.StartsWith("hornbook: ", typed.Error, StringComparison.Ordinal);
        Assert.Single(typed.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public async Task Mistakes_of_a_bench_file_are_told_with_their_places()
    {
        string path = Path.Combine(_folder, "wrong.toml");
        await File.WriteAllTextAsync(path, File.ReadAllText(Bench).Replace("frequency = \"10.525 GHz\"", "frequency = \"10.525 GHx\"", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        Typed typed = await Typed.In("predict", path);
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Matches($@"^{System.Text.RegularExpressions.Regex.Escape(path)}:\d+:\d+: .*GHx", typed.Error);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_wrong_input()
    {
        Typed typed = await Typed.In("predict", Path.Combine(_folder, "none.toml"));
        Assert.Equal(ExitCode.BadInput, typed.Code);
        Assert.Contains("none.toml", typed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shell_completes_the_demonstrations_of_the_bench()
    {
        string line = $"predict {Bench} ";
        Typed typed = await Typed.In($"[suggest:{line.Length}]", line);
        Assert.Contains("polarisation", typed.Lines);
    }

    private static async Task<JsonNode> Json(params string[] arguments)
    {
        Typed typed = await Typed.In(["predict", .. arguments, "--json"]);
        Assert.Equal(ExitCode.Fine, typed.Code);
        return JsonNode.Parse(typed.Output)!;
    }

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();

    [Fact]
    public async Task With_panels_it_says_how_they_settled_and_without_it_does_not()
    {
        Assert.DoesNotContain("Panels ", (await Typed.In("predict", Bench)).Output, StringComparison.Ordinal);
        Assert.Null((await Json(Bench))["panel_sweeps_count"]);

        string file = Path.Combine(_folder, "mirrors.toml");
        await File.WriteAllTextAsync(file, await File.ReadAllTextAsync(Bench, TestContext.Current.CancellationToken) + Mirrors, TestContext.Current.CancellationToken);
        JsonNode told = await Json(file, "--exchange");

        // derived: two plates that face each other exchange waves, so one sweep is not enough; and nature knows no difference between the ends.
        Assert.InRange(told["panel_sweeps_count"]!.GetValue<int>(), 2, 30);
        Assert.InRange(told["panel_residue_ratio"]!.GetValue<double>(), 0.0, 2e-3);
        Assert.InRange(Math.Abs(told["reciprocity_gap_db"]!.GetValue<double>()), 1e-9, 3.0);
        string text = (await Typed.In("predict", file, "--exchange")).Output;
        Assert.Contains("sweeps  settled: ", text, StringComparison.Ordinal);
        Assert.Contains("Exchanged", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ends_are_exchanged_on_the_bench_as_it_stands_only()
    {
        Typed typed = await Typed.In("predict", Bench, "polarisation", "--exchange");
        Assert.Equal("--exchange is for the bench as it stands: leave out the demonstration\n", typed.Error);
    }
}
