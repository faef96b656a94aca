using Hornbook.Physics.Detection;
using MathNet.Numerics;

namespace Hornbook.Physics.Tests.Detection;

/// <summary>The circuit that the diode laws stand for, solved in time: source and series resistance, exponential junction, smoothed load.</summary>
internal static class DiodeCircuit
{
    private const int Phases = 512;

    /// <summary>The direct voltage for which the mean current through the diode is the current through the load.</summary>
    internal static double Voltage(DiodeDetector detector, double power)
    {
        double peak = Math.Sqrt(8.0 * detector.SourceResistance * power);
        double low = 0.0, high = peak;
        for (int step = 0; step < 60; step++)
        {
            double v = 0.5 * (low + high);
            (low, high) = MeanCurrent(detector, peak, v) > v / detector.LoadResistance ? (v, high) : (low, v);
        }

        return 0.5 * (low + high);
    }

    private static double MeanCurrent(DiodeDetector detector, double peak, double direct)
    {
        double sum = 0.0;
        for (int i = 0; i < Phases; i++)
        {
            sum += Current(detector, (peak * Math.Cos(Math.PI * (i + 0.5) / Phases)) - direct);
        }

        return sum / Phases;
    }

    // v = i (R_g + R_s) + V_t ln(1 + i/I_s), by Newton's steps in u = ln(1 + i/I_s), which come down from above.
    private static double Current(DiodeDetector detector, double v)
    {
        double saturation = detector.Diode.SaturationCurrent, scale = detector.Diode.ScaleVoltage(detector.Temperature);
        double resistance = detector.SourceResistance + detector.Diode.SeriesResistance;
        double u = v > 0.0 ? Math.Min(v / scale, SpecialFunctions.Log1p(v / resistance / saturation)) : v / scale;
        for (int step = 0; step < 40; step++)
        {
            double missing = (saturation * SpecialFunctions.Expm1(u) * resistance) + (scale * u) - v;
            u -= missing / ((saturation * Math.Exp(u) * resistance) + scale);
        }

        return saturation * SpecialFunctions.Expm1(u);
    }
}
