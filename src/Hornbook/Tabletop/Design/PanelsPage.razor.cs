using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Tabletop.Desk;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Design;

/// <summary>The panels of the bench, and new ones from a wish.</summary>
public sealed partial class PanelsPage : IDisposable
{
    private const int MostShown = 8;

    private readonly Latest<SheetQuestion, SheetStudy> _study = new(SheetStudy.Of);
    private readonly Latest<SheetQuestion, SheetStudy> _offered = new(SheetStudy.Of);
    private readonly Latest<(GridDraft, double), GridOffer> _offer = new(GridOffer.Of);
    private SheetQuestion? _asked;
    private string? _chosen;
    private double _toleranceMm = 0.2;
    private int _picked;
    private string? _added;
    private bool _ready;

    [Inject]
    public required BenchSession Session { get; set; }

    public void Dispose()
    {
        Session.Changed -= Follow;
        _study.Dispose();
        _offered.Dispose();
        _offer.Dispose();
    }

    protected override void OnInitialized()
    {
        Session.OnOwnThread = tell => _ = InvokeAsync(tell);
        Session.Changed += Follow;
        _study.Changed += Show;
        _offered.Changed += Show;
        _offer.Changed += ShowOffer;
    }

    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            _ready = true;
            Follow();
        }
    }

    private static string Metal(GridOffer offer) => offer.Choices.Nearest?.Make is WireMake ? "Wire" : "Strip";

    private static string Nearest(GridOffer offer) => offer.Choices.Nearest is { } near
        ? $"The nearest is a period of {Shown.Size(near.Period)} with {Shown.Size(near.Metal)} of metal: {Shown.Level(Decibels.FromRatio(near.PassedAlong))} along, {Shown.FineLevel(Decibels.FromRatio(near.PassedAcross))} across."
        : "The narrowest metal and gap together are already too wide for one wave only.";

    private void Choose(string panel)
    {
        _chosen = panel;
        Follow();
    }

    private void SetTolerance(double millimetres)
    {
        _toleranceMm = millimetres;
        Follow();
        AskPicked();
    }

    // What another window, an editor or undo does to the panel that is shown, is shown.
    private void Follow()
    {
        BenchPanel? panel = Session.Plan.Panels.FirstOrDefault(one => one.Name == _chosen) ?? (Session.Plan.Panels is [BenchPanel first, ..] ? first : null);
        _chosen = panel?.Name;
        SheetQuestion? question = panel is null ? null : new SheetQuestion(panel.Name, Own(panel.Panel.Sheet), Session.Plan.Frequency, 1e-3 * _toleranceMm);
        if (question is not null && question != _asked)
        {
            _ = _study.Ask(question);
        }

        _asked = question;
        StateHasChanged();
    }

    // A grid is looked at along its own strips, however it lies in its frame.
    private static ISheet Own(ISheet sheet) => sheet is TurnedSheet turned ? turned.Sheet : sheet;

    private void Wish(GridDraft draft)
    {
        (_picked, _added) = (0, null);
        _ = _offer.Ask((draft, Session.Plan.Frequency));
    }

    private void Pick(int picked)
    {
        _picked = picked;
        AskPicked();
    }

    private void AskPicked()
    {
        if (Picked is { } grid)
        {
            _ = _offered.Ask(new SheetQuestion("chosen grid", grid.Make.Made(grid.Period, grid.Metal), grid.Frequency, 1e-3 * _toleranceMm));
        }
    }

    private GridFigures? Picked => _offer.Answer is { } offer && _picked < offer.Choices.Found.Count ? offer.Choices.Found[_picked].Figures : null;

    private void AddGrid()
    {
        if (Picked is { } grid)
        {
            Add(grid.Make.Made(grid.Period, grid.Metal));
        }
    }

    private void Add(ISheet sheet)
    {
        string name = Session.Add(sheet);
        _added = Session.Refusal is null ? name : null;
    }

    private void Show() => _ = InvokeAsync(StateHasChanged);

    private void ShowOffer() => _ = InvokeAsync(() =>
    {
        if (!_offer.IsBusy)
        {
            AskPicked();
        }

        StateHasChanged();
    });
}
