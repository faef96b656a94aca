using Hornbook.Physics;
using Hornbook.Physics.Exposure;

namespace Hornbook.Commands.Reports;

/// <summary>Power density on the axis, exact and by the far-zone formula.</summary>
internal sealed record DensityReport(double DistanceM, double DensityWPerM2, double FarFormulaWPerM2)
{
    internal static DensityReport Of(ExposureField field, double incidentPower, double distance) => new(
        distance, field.Density(new Vector(distance, 0.0, 0.0)), PowerDensity.FarAway(field.Antenna, incidentPower, distance));
}
