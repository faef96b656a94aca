using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Tabletop.Design;

/// <summary>A wish for a sheet as it is typed.</summary>
public sealed record SheetDraft
{
    public string Material { get; init; } = "acrylic glass";

    public double AngleDeg { get; init; } = 45.0;

    public Polarisation Polarisation { get; init; } = Polarisation.Across;
}

/// <summary>A sheet that is offered.</summary>
/// <param name="Why">What it is good for.</param>
/// <param name="Thickness">d [m].</param>
/// <param name="Response">What it makes of the wave.</param>
/// <param name="Thinner">The same with the thickness 0.2 mm too small; null where nothing is left.</param>
/// <param name="Thicker">The same with it too large.</param>
public sealed record OfferedSheet(string Why, double Thickness, SheetResponse Response, SheetResponse? Thinner, SheetResponse Thicker);

/// <summary>What is offered for a wish for a sheet.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Sheets">By thickness.</param>
/// <param name="Brightest">The most of the power that it throws back at any thickness looked at [-].</param>
/// <param name="HasHalfMirror">Whether there is a half mirror among them.</param>
public sealed record SheetOffer(Dielectric Material, IReadOnlyList<OfferedSheet> Sheets, double Brightest, bool HasHalfMirror)
{
    /// <summary>What sheets as sold are off by (common practice, no source) [m].</summary>
    public const double Error = 0.2e-3;

    public static SheetOffer Of((SheetDraft Draft, double Frequency) question)
    {
        Dielectric material = Dielectrics.Find(question.Draft.Material)!;
        SheetThickness sheet = new(material, question.Frequency, question.Draft.AngleDeg * Math.PI / 180.0, question.Draft.Polarisation);
        OfferedSheet[] offered =
        [
            .. new (string Why, double? Thickness)[]
            {
                ("half mirror: as much back as through", sheet.HalfMirror()),
                ("most thrown back, about a quarter wave", sheet.Brightest(0)),
                ("least thrown back, about half a wave", sheet.Clearest(1)),
                ("most thrown back, about three quarter waves", sheet.Brightest(1)),
                ("least thrown back, about a wave", sheet.Clearest(2)),
            }
            .Where(one => one.Thickness is not null)
            .Select(one => Offered(sheet, one.Why, one.Thickness!.Value))
            .OrderBy(one => one.Thickness),
        ];
        return new SheetOffer(material, offered, offered.Select(one => one.Response.Reflected).DefaultIfEmpty().Max(), sheet.HalfMirror() is not null);
    }

    private static OfferedSheet Offered(SheetThickness sheet, string why, double thickness) => new(
        why, thickness, sheet.Of(thickness), thickness > Error ? sheet.Of(thickness - Error) : null, sheet.Of(thickness + Error));
}
