using Hornbook.Commands.Printing;
using Hornbook.Physics.Antennas;
using Xunit;

namespace Hornbook.Tests.Commands.Printing;

public sealed class JsonReportTests
{
    [Fact]
    public void Keys_are_snake_case_and_what_is_not_finite_is_null() => Assert.Equal(
        "{\n  \"gain_dbi\": 16.5,\n  \"half_power_width_deg\": null,\n  \"depth_db\": null,\n  \"plane\": \"electric\",\n  \"note\": \"A4 ± 2 °\"\n}\n",
        JsonReport.Text(new Sample(16.5, null, double.NegativeInfinity, PatternPlane.Electric, "A4 ± 2 °")));

    private sealed record Sample(double GainDbi, double? HalfPowerWidthDeg, double DepthDb, PatternPlane Plane, string Note) : IReport
    {
        public void Describe(TextPage page) => page.Paragraph(Note);
    }
}
