using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Files;

public sealed class PanelTextTests
{
    private static readonly BenchFile Minimal = BenchFile.Read(Repository.At("tests", "Hornbook.Bench.Tests", "Files", "minimal-bench.toml"));

    public static TheoryData<string> Kinds => [.. PanelText.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_new_panel_of_every_kind_can_be_put_into_a_file(string kind)
    {
        BenchFile edited = Minimal.Edit(BenchChange.ToNew("panels.new", PanelText.Lines(kind)));

        Assert.Empty(edited.Problems);
        BenchPanel panel = Assert.Single(edited.Plan!.Panels);
        Assert.Equal(kind, panel.Kind);
        Assert.NotEmpty(panel.Panel.Surface.Cells(5e-3));
    }

    [Fact]
    public void Another_kind_is_refused() => Assert.Throws<ArgumentException>(() => PanelText.Lines("mirror"));

    public static TheoryData<ISheet> Sheets =>
    [
        new StripGrid(4e-3, 1.5e-3),
        new BoardedStripGrid(new StripGrid(3e-3, 1.2e-3), new LayeredSheet(new Layer(Dielectrics.Find("FR-4")!, 0.8e-3))),
        new WireGrid(6e-3, 0.5e-3),
        new LayeredSheet(new Layer(Dielectrics.Find("polystyrene")!, 8.943e-3)),
    ];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_chosen_sheet_comes_back_as_it_was(ISheet sheet)
    {
        BenchFile edited = Minimal.Edit(BenchChange.ToNew("panels.new", PanelText.Lines(sheet)));
        Assert.Empty(edited.Problems);
        Assert.Equal(sheet, Assert.Single(edited.Plan!.Panels).Panel.Sheet);
    }

    [Fact]
    public void A_sheet_that_no_file_states_so_is_refused() => Assert.Throws<ArgumentException>(() => PanelText.Lines(new Metal()));
}
