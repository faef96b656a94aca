using System.Globalization;
using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class BenchFileTests
{
    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    [Fact]
    public void Every_value_arrives_in_SI_where_it_belongs()
    {
        BenchPlan plan = Plan(Minimal);

        // The numbers of minimal-bench.toml, by hand.
        Assert.Equal("Minimal bench", plan.Title);
        Assert.Equal(10.525e9, plan.Frequency);
        Assert.Equal(new TableTop(1.8, 0.7), plan.Table);
        Assert.Equal(["horn", "probe"], plan.Antennas.Select(antenna => antenna.Name));
        Horn horn = Assert.IsType<Horn>(plan.Antenna("horn"));
        Assert.Equal((0.094, 0.079, 0.13), (horn.MouthWidth, horn.MouthHeight, horn.Length));
        Assert.Equal((0.4, 0.0, 0.25), (plan.Source.Pose.Position.X, plan.Source.Pose.Position.Y, plan.Source.Pose.Position.Z));
        Assert.Equal((12e-3, 12e-3), (plan.Source.Power, plan.Source.WorstCasePower));
        Assert.Equal(Math.PI, plan.Receiver.Pose.Turn);
        Assert.Equal(new Amplifier(200.0, 0.0, 0.0, 8.0, 12e-9, 30.0), plan.Detection.Amplifier);
        Assert.Equal(new LinearTone { AtZero = 110.0, Slope = 180.0, Lowest = 20.0, Highest = 20e3 }, plan.Detection.Tone);
        Assert.Equal(new JunctionDetector(500.0, 8e3), plan.Detection.Detector);
        Assert.Equal("strictest", plan.ExposureLimit);
        Assert.Empty(plan.Demonstrations);
    }

    [Fact]
    public void A_worst_case_that_is_left_out_is_the_power_and_is_known_to_be_unstated()
    {
        Assert.False(Plan(Minimal).Source.IsWorstCaseStated);
        Assert.True(Plan(Minimal.Replace("power = \"12 mW\"", "power = \"12 mW\"\nworst_case_power = \"12 mW\"", StringComparison.Ordinal)).Source.IsWorstCaseStated);
    }

    [Fact]
    public void Sectoral_horns_keep_the_guides_own_size_in_the_other_plane()
    {
        BenchPlan plan = Plan(Minimal + "\n[antennas.e]\nkind = \"E-plane horn\"\nguide = \"WR-42\"\nmouth_height = \"30 mm\"\nlength = \"40 mm\"\n"
            + "[antennas.h]\nkind = \"H-plane horn\"\nguide = { width = \"10 mm\", height = \"5 mm\" }\nmouth_width = \"30 mm\"\nlength = \"40 mm\"\nreflection = \"-20 dB\"\n");

        Assert.Equal(plan.Antenna("e").Guide.Width, plan.Antenna("e").MouthWidth);
        Assert.Equal(0.005, plan.Antenna("h").MouthHeight);
        Close.Relative(0.1, plan.Antenna("h").MeasuredReflection!.Value, 1e-15); // derived: 10^(−20/20)
    }

    [Fact]
    public void A_diode_hears_weak_waves_in_proportion()
    {
        // Law: the junction is square at low power, so a tenth of −50 dBm is a tenth of the voltage; the published closed form reads nothing there.
        string diode = Minimal.Replace("law = \"junction\"", "law = \"diode\"", StringComparison.Ordinal)
            .Replace("sensitivity = \"0.5 mV/µW\"", "saturation_current = \"3 µA\"\nideality = 1.06\nseries_resistance = \"25 ohm\"", StringComparison.Ordinal)
            .Replace("video_resistance = \"8 kohm\"\n", string.Empty, StringComparison.Ordinal);
        IDetectorLaw detector = Plan(diode).Detection.Detector;
        Close.Relative(0.1, detector.Voltage(1e-9) / detector.Voltage(1e-8), 1e-3);
    }

    [Fact]
    public void A_guide_below_cut_off_loads_since_that_is_a_finding_and_no_slip() =>
        Assert.Equal(5e9, Plan(Minimal.Replace("10.525 GHz", "5 GHz", StringComparison.Ordinal)).Frequency);

    [Fact]
    public void Demonstrations_keep_their_order_and_their_defaults()
    {
        BenchPlan plan = Plan(Minimal + "\n[[demonstrations]]\nkind = \"distance\"\nname = \"b\"\nfrom = \"50 cm\"\nto = \"1 m\"\n"
            + "[[demonstrations]]\nkind = \"beam width\"\nname = \"a\"\nend = \"source\"\nfrom = \"-90 deg\"\nto = \"90 deg\"\npoints = 5\n");

        Assert.Equal([new DistanceDemonstration("b", 0.5, 1.0, 121), new BeamWidthDemonstration("a", BenchEnd.Source, -Math.PI / 2.0, Math.PI / 2.0, 5)], plan.Demonstrations);
    }

    [Fact]
    public void A_country_with_decimal_commas_reads_the_same_bench()
    {
        CultureInfo commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NumberGroupSeparator = ".";
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = commas;
            BenchFile file = BenchFile.Parse(Minimal, "bench.toml");
            Assert.Equal(10.525e9, file.Plan!.Frequency);
            FileProblem problem = Assert.Single(BenchFile.Parse(Minimal.Replace("\"1.8 m\"", "1.8", StringComparison.Ordinal), "bench.toml").Problems);
            Assert.StartsWith("bench.toml:6:10: length = 1.8 has no unit", problem.Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Problems_come_in_the_order_of_the_file_and_mark_what_they_mean()
    {
        BenchFile file = BenchFile.Parse(Minimal.Replace("\"30 Hz\"", "30", StringComparison.Ordinal).Replace("\"1.8 m\"", "1.8", StringComparison.Ordinal), "bench.toml");

        Assert.Equal([6, 41], file.Problems.Select(problem => problem.Line));
        Assert.Equal([3, 2], file.Problems.Select(problem => problem.Length));
    }

    [Fact]
    public void A_file_that_is_not_there_is_a_problem_and_no_exception() => Assert.Equal(
        "nowhere.toml:1:1: there is no such file; the name of a bench file fits; give another name", Assert.Single(BenchFile.Read("nowhere.toml").Problems).Message);

    [Fact]
    public void A_folder_is_a_problem_and_no_exception() =>
        Assert.Contains("the file cannot be read", Assert.Single(BenchFile.Read(Path.GetTempPath()).Problems).Read, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    public void A_name_that_is_none_is_a_problem_and_no_exception(string path) => Assert.Single(BenchFile.Read(path).Problems);

    [Fact]
    public void A_file_that_is_too_long_is_a_problem() =>
        Assert.Contains("a bench file has 262144 at most", Assert.Single(BenchFile.Parse(new string('#', BenchFile.LongestFile + 1), "bench.toml").Problems).Fits, StringComparison.Ordinal);

    [Fact]
    public void An_empty_file_lacks_everything_that_is_needed() =>
        Assert.Equal(10, BenchFile.Parse(string.Empty, "bench.toml").Problems.Count); // derived: the keys of the file without exposure and demonstrations

    [Fact]
    public void What_is_saved_reads_back()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("hornbook").FullName, "bench.toml");
        BenchFile.Parse(Minimal, "bench.toml").Save(path);

        Assert.Equal(Minimal, BenchFile.Read(path).Text);
    }

    private static BenchPlan Plan(string text)
    {
        BenchFile file = BenchFile.Parse(text, "bench.toml");
        Assert.Empty(file.Problems);
        return file.Plan!;
    }
}
