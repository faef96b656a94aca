using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Layout;
using Hornbook.Physics.Antennas.Choosing;

namespace Hornbook.Tabletop.Design;

/// <summary>The antennas of the bench, and new ones from a wish.</summary>
public sealed partial class AntennasPage
{
    private const double FirstToleranceMm = 1.0;

    private string? _chosen;

    public AntennasPage()
        : base(AntennaStudy.Of, HornOffer.Of, FirstToleranceMm)
    {
    }

    private HornFigures? Picked => Offer.Answer is { } offer && PickedAt < offer.Horns.Count ? offer.Horns[PickedAt].Figures : null;

    protected override void OnInitialized()
    {
        _chosen = Session.Source.Antenna;
        base.OnInitialized();
    }

    protected override AntennaQuestion OfChosen()
    {
        NamedAntenna antenna = Session.Plan.Antennas.FirstOrDefault(one => one.Name == _chosen) ?? Session.Plan.Antennas[0];
        _chosen = antenna.Name;
        return new AntennaQuestion(antenna.Name, antenna.Shape, Session.Plan.Frequency, Tolerance);
    }

    protected override AntennaQuestion? OfPicked() =>
        Picked is { } horn ? new AntennaQuestion("chosen horn", horn.Horn, horn.Frequency, Tolerance) : null;

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

    private void Add(BenchEnd? hand)
    {
        if (Picked is { } horn)
        {
            Remember(Session.Add(horn.Horn, hand));
        }
    }
}
