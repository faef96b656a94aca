using CsCheck;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files.Editing;

/// <summary>Whole tables made, copied and taken out.</summary>
public sealed class TableEditTests
{
    private static readonly string Minimal = File.ReadAllText(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    private static readonly string[] Plate = ["kind = \"metal plate\"", "width = \"30 cm\"", "height = \"20 cm\"", "x = \"70 cm\"", "z = \"25 cm\""];

    /// <summary>One panel in each way of writing it, with comments of its own; what stands between bars is directly above it.</summary>
    private static readonly string[] Styles =
    [
        "# about {0}\n[panels.{0}]   # beside {0}\nkind = \"metal plate\"\n\n# inside {0}\nwidth = \"30 cm\" # beside\nheight = \"20 cm\"\nx = \"70 cm\"\nz = \"25 cm\"",
        "[panels.{0}]\nkind = \"sheet\"\nwidth = \"30 cm\"\nheight = \"20 cm\"\nx = \"70 cm\"\nz = \"25 cm\"\nthickness = \"3 mm\"\n[panels.{0}.material]\npermittivity = 2.6 # {0}",
        "[panels.{0}]\nkind = \"layered sheet\"\nlayers = [\n    {{ material = \"glass\", thickness = \"4 mm\" }}, # {0}\n]\nwidth = \"30 cm\"\nheight = \"20 cm\"\nx = \"70 cm\"\nz = \"25 cm\"",
        "[panels.\"{0}\"]\nkind = \"sheet\"\nwidth = \"30 cm\"\nheight = \"20 cm\"\nx = \"70 cm\"\nz = \"25 cm\"\nthickness = \"3 mm\"\nmaterial.permittivity = 2.6",
    ];

    private static readonly Gen<(string Text, string[] Blocks, int[] Panels)> Benches = Gen.Select(Gen.Int[0, Styles.Length - 1].Array[1, 4], Gen.Int[0, 100].Array[4], Gen.Bool, Gen.Bool, Shuffled);

    private static readonly char[] Break = ['\n'];

    [Fact]
    public void A_new_panel_is_put_in_and_every_other_character_stays() =>
        Benches.Sample(bench =>
        {
            BenchFile file = Parsed(bench.Text);
            BenchFile edited = file.Edit(BenchChange.ToNew("panels.new", Plate));

            Assert.Empty(edited.Problems);
            Assert.Equal(file.Text, WithoutInserted(file.Text, edited.Text, "[panels.new]"));
            Assert.Equal(["new", .. Names(file)], Names(edited).OrderBy(name => name != "new"));
            Assert.Equal(file.Text, edited.Edit(BenchChange.ToNothing("panels.new")).Text);
        });

    [Fact]
    public void A_copy_is_the_same_panel_under_another_name_and_every_other_character_stays() =>
        Benches.Sample(bench =>
        {
            BenchFile file = Parsed(bench.Text);
            BenchFile edited = file.Edit(BenchChange.ToCopy("panels.p0", "twin"));

            Assert.Empty(edited.Problems);
            Assert.Equal(file.Text, WithoutInserted(file.Text, edited.Text, "[panels.twin]"));
            BenchPanel original = edited.Plan!.Panels.Single(panel => panel.Name == "p0"), twin = edited.Plan.Panels.Single(panel => panel.Name == "twin");
            Assert.Equal((original.Kind, original.Pose, original.Stands), (twin.Kind, twin.Pose, twin.Stands));
            Assert.Equal(original.Panel.Sheet.Thickness, twin.Panel.Sheet.Thickness);
            Assert.Equal(file.Text, edited.Edit(BenchChange.ToNothing("panels.twin")).Text);
        });

    [Fact]
    public void A_panel_taken_out_takes_its_own_lines_along_and_no_others() =>
        Benches.Sample(bench =>
        {
            BenchFile file = Parsed(bench.Text);
            BenchFile edited = file.Edit(BenchChange.ToNothing("panels.p0"));

            Assert.Empty(edited.Problems);
            Assert.Equal(Names(file).Where(name => name != "p0"), Names(edited));
            string[] others = [.. bench.Blocks.Where((_, i) => i != bench.Panels[0]).SelectMany(block => block.Split('\n')).Where(line => line.Length > 0)];
            Assert.Equal(others, edited.Text.ReplaceLineEndings("\n").Split(Break, StringSplitOptions.RemoveEmptyEntries));
            Assert.DoesNotContain("\n\n\n", edited.Text.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        });

    [Fact]
    public void The_first_panel_stands_below_the_antennas()
    {
        BenchFile edited = Parsed(Minimal).Edit(BenchChange.ToNew("panels.plate", Plate));

        Assert.Equal(
            Minimal.Replace("[source]", $"[panels.plate]\n{string.Join('\n', Plate)}\n\n[source]", StringComparison.Ordinal),
            edited.Text);
    }

    [Fact]
    public void A_panel_in_one_line_of_braces_is_taken_out_and_copied_too()
    {
        BenchFile file = Parsed(Minimal + "\n[panels]\na = { kind = \"metal plate\", width = \"30 cm\", height = \"20 cm\", x = \"70 cm\", z = \"25 cm\" } # a\n# free\n\nb.kind = \"metal plate\"\nb.width = \"30 cm\"\nb.height = \"20 cm\"\nb.x = \"70 cm\"\nb.z = \"25 cm\" # b\n");

        Assert.EndsWith("\n[panels]\n# free\n\nb.kind = \"metal plate\"\nb.width = \"30 cm\"\nb.height = \"20 cm\"\nb.x = \"70 cm\"\nb.z = \"25 cm\" # b\n", file.Edit(BenchChange.ToNothing("panels.a")).Text, StringComparison.Ordinal);
        Assert.EndsWith(" # a\n# free\n", file.Edit(BenchChange.ToNothing("panels.b")).Text, StringComparison.Ordinal);
        Assert.EndsWith("# b\n\n[panels.c]\nkind = \"metal plate\"\nwidth = \"30 cm\"\nheight = \"20 cm\"\nx = \"70 cm\"\nz = \"25 cm\"\n", file.Edit(BenchChange.ToCopy("panels.a", "c")).Text, StringComparison.Ordinal);
        Assert.EndsWith("z = \"25 cm\" # b\n", file.Edit(BenchChange.ToCopy("panels.b", "c")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_with_letters_of_other_alphabets_is_put_in_quotes()
    {
        BenchFile edited = Parsed(Minimal).Edit(BenchChange.ToNew("panels.gitter-größer", Plate));

        Assert.Empty(edited.Problems);
        Assert.Contains("[panels.\"gitter-größer\"]", edited.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_looks_like_a_comment_inside_a_text_stays()
    {
        string text = Minimal.Replace("title = \"Minimal bench\"\n", string.Empty, StringComparison.Ordinal)
            .Replace("\n[table]", "\ntitle = \"\"\"\n# Minimal bench\"\"\"\n[panels.a]\n" + string.Join('\n', Plate) + "\n\n[table]", StringComparison.Ordinal);

        Assert.Equal("# Minimal bench", Parsed(text).Edit(BenchChange.ToNothing("panels.a")).Plan!.Title);
    }

    [Fact]
    public void A_panel_is_posed_and_laid_aside_like_an_end()
    {
        BenchFile file = Parsed(Minimal).Edit(BenchChange.ToNew("panels.plate", Plate));
        Pose pose = new(new Vector(0.8, 0.1, 0.3), turn: Math.PI / 4.0);
        BenchFile edited = file.Edit([.. BenchChange.ToPose("panels.plate", pose), BenchChange.ToTruth("panels.plate.aside", true)]);

        Assert.Equal(
            file.Text.Replace("x = \"70 cm\"\nz = \"25 cm\"\n", "x = \"80 cm\"\nz = \"30 cm\"\ny = \"10 cm\"\nturn = \"45 deg\"\naside = true\n", StringComparison.Ordinal),
            edited.Text);
        Assert.False(Assert.Single(edited.Plan!.Panels).Stands);
        Assert.True(Assert.Single(edited.Edit(BenchChange.ToTruth("panels.plate.aside", false)).Plan!.Panels).Stands);
    }

    [Theory]
    [InlineData("panels.nobody")]
    [InlineData("panels")]
    [InlineData("panels.")]
    [InlineData("source.x")]
    [InlineData("panels.a.b")]
    public void A_table_that_is_not_there_is_neither_copied_nor_taken_out(string table)
    {
        Assert.Throws<ArgumentException>(() => Parsed(Minimal).Edit(BenchChange.ToNothing(table)));
        Assert.Throws<ArgumentException>(() => Parsed(Minimal).Edit(BenchChange.ToCopy(table, "other")));
    }

    [Fact]
    public void A_name_that_is_taken_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Parsed(Minimal).Edit(BenchChange.ToNew("antennas.horn", Plate)));
        Assert.Throws<ArgumentException>(() => Parsed(Minimal).Edit(BenchChange.ToCopy("antennas.horn", "probe")));
    }

    [Fact]
    public void Tables_that_share_a_pair_of_braces_are_taken_out_by_hand()
    {
        BenchFile file = Parsed("panels = { a = { kind = \"metal plate\", width = \"30 cm\", height = \"20 cm\", x = \"70 cm\", z = \"25 cm\" } }\n" + Minimal);

        Assert.Throws<ArgumentException>(() => file.Edit(BenchChange.ToNothing("panels.a")));
    }

    [Fact]
    public void An_antenna_in_use_that_is_taken_out_leaves_a_file_with_that_problem()
    {
        BenchFile edited = Parsed(Minimal).Edit(BenchChange.ToNothing("antennas.probe"));

        Assert.Null(edited.Plan);
        Assert.Contains("is not among the antennas", edited.Problems[0].Read, StringComparison.Ordinal);
    }

    /// <summary>The minimal bench with panels between its tables, in random places.</summary>
    private static (string Text, string[] Blocks, int[] Panels) Shuffled(int[] styles, int[] places, bool windows, bool comments)
    {
        List<string> blocks = [.. Minimal.TrimEnd().Split("\n\n")];
        if (comments)
        {
            blocks = [.. blocks.Select((block, i) => i == 0 ? block : $"# ---- {i}\n\n# of {i}\n{block} # end of {i}")];
        }

        for (int i = 0; i < styles.Length; i++)
        {
            blocks.Insert(1 + (places[i] % blocks.Count), string.Format(System.Globalization.CultureInfo.InvariantCulture, Styles[styles[i]], $"p{i}"));
        }

        string text = string.Join("\n\n", blocks) + "\n";
        return (windows ? text.ReplaceLineEndings("\r\n") : text, [.. blocks], [.. styles.Select((_, i) => blocks.FindIndex(block => block.Contains($"p{i}]", StringComparison.Ordinal) || block.Contains($"p{i}\"]", StringComparison.Ordinal)))]);
    }

    /// <summary>The new text without the block that was put in: the text before and behind it must be the old one.</summary>
    private static string WithoutInserted(string before, string after, string header)
    {
        int at = after.IndexOf(header, StringComparison.Ordinal);
        int start = after.LastIndexOf(after.Contains("\r\n", StringComparison.Ordinal) ? "\r\n\r\n" : "\n\n", at, StringComparison.Ordinal);
        int length = after.Length - before.Length;
        Assert.Equal(before[..start], after[..start]);
        return after.Remove(start, length);
    }

    private static string[] Names(BenchFile file) => [.. file.Plan!.Panels.Select(panel => panel.Name)];

    private static BenchFile Parsed(string text)
    {
        BenchFile file = BenchFile.Parse(text, "bench.toml");
        Assert.Empty(file.Problems);
        return file;
    }
}
