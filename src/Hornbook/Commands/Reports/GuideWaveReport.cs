using Hornbook.Commands.Printing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Commands.Reports;

/// <summary>TE10 in a guide at a frequency.</summary>
internal sealed record GuideWaveReport(
    double FrequencyHz, GuideUse Use, double GuideWavelengthM, double WaveImpedanceOhm, string Walls, double AttenuationDbPerM)
{
    // One neper of a field in decibels.
    private static readonly double DbPerNeper = 20.0 / Math.Log(10.0);

    internal static GuideWaveReport Of(GuideWave wave, Conductor walls) => new(
        wave.Frequency, wave.Use, wave.GuideWavelength, wave.Travels ? wave.WaveImpedance.Real : double.NaN, walls.Name, DbPerNeper * wave.Attenuation(walls));

    internal void Describe(TextPage page)
    {
        page.Heading($"At {Show.Gigahertz(FrequencyHz)}");
        page.Paragraph(Consequence());
        TextTable table = new(string.Empty, ">", string.Empty);
        bool travels = Use != GuideUse.BelowCutoff;
        table.Row("Wavelength", Show.Length(GuideWavelengthM), "in the guide");
        table.Row("Impedance", Show.Si(WaveImpedanceOhm, "ohm"), "E over H across the guide");
        table.Row("Loss", Show.Fixed(AttenuationDbPerM, travels ? 3 : 0, "dB/m"), travels ? $"in walls of smooth {Walls}" : "the field dies out");
        page.Table(table);
    }

    private string Consequence() => Use switch
    {
        GuideUse.BelowCutoff => "BELOW CUT-OFF: nothing travels, the field dies out along the guide and a horn on it is not fed.",
        GuideUse.Overmoded => "OVERMODED: more than one mode travels; what leaves the guide depends on every joint before it.",
        GuideUse.OutsideRecommendedBand => "Outside the band it is meant for: one mode travels, but close to an end of its range.",
        _ => "One mode travels, as it should.",
    };
}
