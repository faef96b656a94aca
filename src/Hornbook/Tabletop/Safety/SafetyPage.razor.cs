using System.Globalization;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Guides;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Safety;

/// <summary>The cautions, and how far to stay away by every limit. For everybody in the room.</summary>
public sealed partial class SafetyPage : IDisposable
{
    private Latest<Scene, SafetyStudy> _study = null!;
    private Scene? _asked;
    private bool _ready;

    [Inject]
    public required BenchSession Session { get; set; }

    [Inject]
    public required Visitor Visitor { get; set; }

    [Inject]
    public required GuestWork Guests { get; set; }

    private LengthUnit Unit => Session.Preferences.Unit;

    private string OpenArea
    {
        get
        {
            RectangularGuide guide = Session.Plan.Antenna(Session.Source.Antenna).Guide;
            return string.Create(CultureInfo.InvariantCulture, $"{1e4 * guide.Width * guide.Height:0.#} cm²");
        }
    }

    public void Dispose()
    {
        Session.Changed -= Follow;
        _study.Dispose();
    }

    protected override void OnInitialized()
    {
        _study = new Latest<Scene, SafetyStudy>(SafetyStudy.Of, Visitor.IsGuest ? Guests.Worker : null);
        _study.Changed += Show;
        Session.OnOwnThread = tell => _ = InvokeAsync(tell);
        Session.Changed += Follow;
    }

    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            _ready = true;
            Follow();
        }
    }

    private static string Against(double density, LimitDistance? limit) => limit is null
        ? "no limit known"
        : density > limit.Density
            ? string.Create(CultureInfo.InvariantCulture, $"▲ {Rounded(density / limit.Density)} times the limit")
            : string.Create(CultureInfo.InvariantCulture, $"within: {Shown.Share(density / limit.Density)} of it");

    private static string Rounded(double times) => times.ToString(times < 10.0 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static string Holds(ExposureLimit limit) => (limit.IsInForce, limit.Scope) switch
    {
        (false, _) => "replaced",
        (_, LimitScope.FixedInstallations) => "for fixed installations, not for benches",
        (_, LimitScope.ScanningAntennas) => "for scanning antennas, not for benches",
        _ => "in force",
    };

    private static string Time(double seconds) => seconds switch
    {
        0.0 => "no mean",
        < 60.0 => string.Create(CultureInfo.InvariantCulture, $"{seconds:0} s"),
        < 3600.0 => string.Create(CultureInfo.InvariantCulture, $"{seconds / 60.0:0} min"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600.0:0} h"),
    };

    private string Away(double distance) => distance > 0.0 ? Shown.Clearance(distance, Unit).ToString() : "nowhere";

    private void Follow()
    {
        if (Session.Scene != _asked)
        {
            Ask();
        }

        StateHasChanged();
    }

    private void Ask()
    {
        _asked = Session.Scene;
        _ = _study.Ask(_asked);
    }

    private void Show() => _ = InvokeAsync(StateHasChanged);
}
