using Hornbook.Physics.Detection;

namespace Hornbook.Physics.Tests.Detection;

/// <summary>The published diode law solved the slow way: as printed, by bisection, with I0 from its integral.</summary>
internal static class RawDiodeLaw
{
    internal static double Voltage(DiodeDetector detector, double power)
    {
        double lambda = Constants.ElementaryCharge / (Constants.Boltzmann * detector.Temperature);
        double n = detector.Diode.Ideality, saturation = detector.Diode.SaturationCurrent, series = detector.Diode.SeriesResistance;
        double source = detector.SourceResistance, load = detector.LoadResistance;
        double left = BesselI0(lambda / n * Math.Sqrt(8.0 * source * power));
        double low = -0.999 * load * saturation, high = Math.Sqrt(8.0 * source * power);
        while (high - low > 1e-15 * Math.Max(Math.Abs(high), 1e-9))
        {
            double v = 0.5 * (low + high);
            double right = (1.0 + (v / (load * saturation)))
                * Math.Exp(((1.0 + ((source + series) / load)) * lambda * v / n) + (lambda * series * saturation / n));
            (low, high) = right > left ? (low, v) : (v, high);
            if (v == low && v == high)
            {
                break;
            }
        }

        return 0.5 * (low + high);
    }

    /// <summary>I0(x) = (1/π) ∫ exp(x cos θ) dθ from 0 to π by midpoints, which converge faster than any power for a periodic function.</summary>
    private static double BesselI0(double x)
    {
        const int Points = 400;
        double sum = 0.0;
        for (int i = 0; i < Points; i++)
        {
            sum += Math.Exp(x * Math.Cos(Math.PI * (i + 0.5) / Points));
        }

        return sum / Points;
    }
}
