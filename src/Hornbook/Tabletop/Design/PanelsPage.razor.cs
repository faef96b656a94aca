using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Tabletop.Design;

/// <summary>The panels of the bench, and new ones from a wish.</summary>
public sealed partial class PanelsPage
{
    private const int MostShown = 8;
    private const double FirstToleranceMm = 0.2;

    private string? _chosen;

    public PanelsPage()
        : base(SheetStudy.Of, GridOffer.Of, FirstToleranceMm)
    {
    }

    private GridFigures? Picked => Offer.Answer is { } offer && PickedAt < offer.Choices.Found.Count ? offer.Choices.Found[PickedAt].Figures : null;

    protected override SheetQuestion? OfChosen()
    {
        BenchPanel? panel = Session.Plan.Panels.FirstOrDefault(one => one.Name == _chosen) ?? (Session.Plan.Panels is [BenchPanel first, ..] ? first : null);
        _chosen = panel?.Name;
        return panel is null ? null : new SheetQuestion(panel.Name, Own(panel.Panel.Sheet), Session.Plan.Frequency, Tolerance);
    }

    protected override SheetQuestion? OfPicked() =>
        Picked is { } grid ? new SheetQuestion("chosen grid", grid.Make.Made(grid.Period, grid.Metal), grid.Frequency, Tolerance) : null;

    private static string Metal(GridOffer offer) => offer.Choices.Nearest?.Make is WireMake ? "Wire" : "Strip";

    private static string Nearest(GridOffer offer) => offer.Choices.Nearest is { } near
        ? $"The nearest is a period of {Shown.Size(near.Period)} with {Shown.Size(near.Metal)} of metal: {Shown.Level(Decibels.FromRatio(near.PassedAlong))} along, {Shown.FineLevel(Decibels.FromRatio(near.PassedAcross))} across."
        : "The narrowest metal and gap together are already too wide for one wave only.";

    // A grid is looked at along its own strips, however it lies in its frame.
    private static ISheet Own(ISheet sheet) => sheet is TurnedSheet turned ? turned.Sheet : sheet;

    private void Choose(string panel)
    {
        _chosen = panel;
        Follow();
    }

    private void AddGrid()
    {
        if (Picked is { } grid)
        {
            Add(grid.Make.Made(grid.Period, grid.Metal));
        }
    }

    private void Add(ISheet sheet) => Remember(Session.Add(sheet));
}
