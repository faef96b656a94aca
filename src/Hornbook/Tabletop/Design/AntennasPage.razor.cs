using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Tabletop.Desk;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Design;

/// <summary>The antennas of the bench, and new ones from a wish.</summary>
public sealed partial class AntennasPage : IDisposable
{
    private readonly Latest<AntennaQuestion, AntennaStudy> _study = new(AntennaStudy.Of);
    private readonly Latest<AntennaQuestion, AntennaStudy> _offered = new(AntennaStudy.Of);
    private readonly Latest<(HornDraft, double), HornOffer> _offer = new(HornOffer.Of);
    private AntennaQuestion? _asked;
    private string? _chosen;
    private double _toleranceMm = 1.0;
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
            Choose(Session.Source.Antenna);
        }
    }

    private static string Angle(double? width) => width is { } angle ? Shown.Angle(angle).ToString() : "none";

    private string Hands(string antenna) => (Session.Source.Antenna == antenna, Session.Receiver.Antenna == antenna) switch
    {
        (true, true) => "(source and receiver)",
        (true, false) => "(source)",
        (false, true) => "(receiver)",
        _ => string.Empty,
    };

    private void Choose(string antenna)
    {
        _chosen = antenna;
        Follow();
    }

    private void SetTolerance(double millimetres)
    {
        _toleranceMm = millimetres;
        Follow();
        AskPicked();
    }

    // What another window, an editor or undo does to the antenna that is shown, is shown.
    private void Follow()
    {
        NamedAntenna antenna = Session.Plan.Antennas.FirstOrDefault(one => one.Name == _chosen) ?? Session.Plan.Antennas[0];
        _chosen = antenna.Name;
        AntennaQuestion question = new(antenna.Name, antenna.Shape, Session.Plan.Frequency, 1e-3 * _toleranceMm);
        if (question != _asked)
        {
            _asked = question;
            _ = _study.Ask(question);
        }

        StateHasChanged();
    }

    private void Wish(HornDraft draft)
    {
        (_picked, _added) = (0, null);
        _ = _offer.Ask((draft, Session.Plan.Frequency));
    }

    private void Pick(int picked)
    {
        (_picked, _added) = (picked, null);
        AskPicked();
    }

    private void AskPicked()
    {
        if (Picked is { } horn)
        {
            _ = _offered.Ask(new AntennaQuestion("chosen horn", horn.Horn, horn.Frequency, 1e-3 * _toleranceMm));
        }
    }

    private HornFigures? Picked => _offer.Answer is { } offer && _picked < offer.Horns.Count ? offer.Horns[_picked].Figures : null;

    private void Add(BenchEnd? hand)
    {
        if (Picked is { } horn)
        {
            string name = Session.Add(horn.Horn, hand);
            _added = Session.Refusal is null ? name : null;
        }
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
