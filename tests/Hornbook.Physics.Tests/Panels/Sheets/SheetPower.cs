using System.Numerics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Tests.Panels.Sheets;

/// <summary>The power that a plane wave carries through a sheet, from its tangential electric field.</summary>
internal static class SheetPower
{
    /// <summary>Re(E × H*) along the normal, in units of the vacuum's admittance.</summary>
    internal static double Of((double Angle, double Azimuth) direction, (Complex Across, Complex Along) field)
    {
        (Complex across, Complex along) = Admittance(direction).Of(field.Across, field.Along);
        return ((field.Across * Complex.Conjugate(across)) + (field.Along * Complex.Conjugate(along))).Real;
    }

    /// <summary>n × H of a wave over its tangential E: the impedance of its direction, inverted.</summary>
    internal static TangentialMatrix Admittance((double Angle, double Azimuth) direction)
    {
        (double u, double v) = Cosines(direction);
        double normal = Math.Cos(direction.Angle);
        return new TangentialMatrix((1.0 - (v * v)) / normal, u * v / normal, u * v / normal, (1.0 - (u * u)) / normal);
    }

    /// <summary>Direction cosines across and along the strips.</summary>
    internal static (double Across, double Along) Cosines((double Angle, double Azimuth) direction) =>
        (Math.Sin(direction.Angle) * Math.Cos(direction.Azimuth), Math.Sin(direction.Angle) * Math.Sin(direction.Azimuth));

    /// <summary>What a sheet makes of a wave.</summary>
    internal static SheetMatrices Asked(ISheetResponse response, SheetFace face, (double Angle, double Azimuth) direction)
    {
        (double across, double along) = Cosines(direction);
        return response.Arriving(face, across, along);
    }

    /// <summary>Share of the power of a wave with this field that stays in a sheet.</summary>
    internal static double Kept(SheetMatrices sheet, (double Angle, double Azimuth) direction, Complex across, Complex along)
    {
        double incident = Of(direction, (across, along));
        return 1.0 - ((Of(direction, sheet.Reflection.Of(across, along)) + Of(direction, sheet.Transmission.Of(across, along))) / incident);
    }

    /// <summary>The largest difference between two elements.</summary>
    internal static double Difference(TangentialMatrix a, TangentialMatrix b) => Math.Max(
        Math.Max((a.AcrossAcross - b.AcrossAcross).Magnitude, (a.AlongAlong - b.AlongAlong).Magnitude),
        Math.Max((a.AcrossAlong - b.AcrossAlong).Magnitude, (a.AlongAcross - b.AlongAcross).Magnitude));

    /// <summary>The same of reflection and transmission.</summary>
    internal static double Difference(SheetMatrices a, SheetMatrices b) =>
        Math.Max(Difference(a.Reflection, b.Reflection), Difference(a.Transmission, b.Transmission));
}
