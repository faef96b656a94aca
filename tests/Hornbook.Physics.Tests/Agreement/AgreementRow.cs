using System.Globalization;

namespace Hornbook.Physics.Tests.Agreement;

/// <summary>A published value beside the one computed.</summary>
/// <param name="Quantity">What is compared.</param>
/// <param name="Source">A key of docs/sources.md, or a standard, with its place.</param>
/// <param name="Published">As printed there, in the unit.</param>
/// <param name="Computed">By Hornbook, in the unit.</param>
/// <param name="Unit">As printed in the table.</param>
/// <param name="Decimals">How many the source prints; one more is shown of what is computed.</param>
/// <param name="Tolerance">In the unit: the test fails beyond it.</param>
/// <param name="Why">Where a difference beyond the printed digits comes from; empty where there is none.</param>
internal sealed record AgreementRow(
    string Quantity, string Source, double Published, double Computed, string Unit, int Decimals, double Tolerance, string Why = "")
{
    private static readonly string[] Absolute = ["dB", "dBi", "°"];

    /// <summary>The row as markdown.</summary>
    public string Markdown =>
        $"| {Quantity} | {Text(Published, Decimals)} {Unit} | {Text(Computed, Decimals + 1)} {Unit} | {Difference} | {Source} | {Why} |";

    private string Difference => Absolute.Contains(Unit)
        ? $"{Signed(Computed - Published, Decimals + 1)} {(Unit == "dBi" ? "dB" : Unit)}"
        : $"{Signed(100.0 * ((Computed / Published) - 1.0), 2)} %";

    private static string Text(double value, int decimals) => value.ToString($"F{decimals}", CultureInfo.InvariantCulture);

    // Rounded first, so that −0.00 is never printed.
    private static string Signed(double value, int decimals)
    {
        double rounded = Math.Round(value, decimals) + 0.0;
        return rounded.ToString(rounded > 0.0 ? $"+0.{new string('0', decimals)}" : $"0.{new string('0', decimals)}", CultureInfo.InvariantCulture);
    }
}
