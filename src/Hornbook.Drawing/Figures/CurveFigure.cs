using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Readings;
using Hornbook.Physics;
using Hornbook.Physics.Detection;

namespace Hornbook.Drawing.Figures;

/// <summary>The predicted curve of a demonstration with its band: what is heard, what a voltmeter shows, what the wave does.</summary>
public static class CurveFigure
{
    private const double FloorDb = 60.0;

    /// <summary>The figure of a prediction.</summary>
    /// <param name="title">Name of the bench.</param>
    /// <param name="prediction">What is predicted.</param>
    public static Figure Of(string title, Prediction prediction)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        Curve curve = prediction.Curve;
        return LineFigure.Of($"{title}: {prediction.Demonstration.Name}", prediction.Heard, Axis(curve), [Tone(curve), Voltage(curve), Power(curve)]);
    }

    private static HorizontalAxis Axis(Curve curve)
    {
        Abscissa shown = curve.Abscissa;
        return new HorizontalAxis(shown.Unit.Length > 0 ? $"{shown.Name} [{shown.Unit}]" : shown.Name)
        {
            Names = IsApart(curve) ? [.. curve.Points.Select(p => p.Setting.Label)] : [],
        };
    }

    private static Panel Tone(Curve curve) => Heard(curve, "tone [Hz]", "predicted, with its band", h => h.Tone);

    private static Panel Voltage(Curve curve) => Heard(curve, "amplifier [V]", string.Empty, h => h.AmplifierVoltage);

    private static Panel Heard(Curve curve, string axis, string label, Func<HeardTone, double> quantity) =>
        new(axis, [Line(curve, label, quantity)]) { Greyed = Untrusted(curve), Levels = Clipped(curve, quantity) };

    // At most two: where the chain cannot go higher, and where it cannot go lower.
    private static Mark[] Clipped(Curve curve, Func<HeardTone, double> quantity) =>
    [
        .. curve.Points.Where(p => p.Reading.Heard.State == ToneState.Clipped).Select(p => quantity(p.Reading.Heard)).Distinct().Order()
            .Select(value => new Mark(value, "clipped")).Take(2),
    ];

    private static Panel Power(Curve curve)
    {
        double[] level = [.. curve.Points.Select(p => Decibels.PowerToDbm(p.Reading.ReceivedPower))];
        double top = level.Max();
        Trace received = new(string.Empty, X(curve), [.. level.Select(l => Math.Max(l, top - FloorDb))])
        {
            Low = [.. curve.Points.Select((p, i) => Math.Max(level[i] - p.Reading.RippleDb, top - FloorDb))],
            High = [.. curve.Points.Select((p, i) => Math.Max(level[i] + p.Reading.RippleDb, top - FloorDb))],
            Apart = IsApart(curve),
        };
        return new Panel("received [dBm]", [received]) { Greyed = Untrusted(curve) };
    }

    private static Trace Line(Curve curve, string label, Func<HeardTone, double> quantity) =>
        new(label, X(curve), [.. curve.Points.Select(p => quantity(p.Reading.Heard))])
        {
            Low = [.. curve.Points.Select(p => Math.Min(quantity(p.Lower), quantity(p.Upper)))],
            High = [.. curve.Points.Select(p => Math.Max(quantity(p.Lower), quantity(p.Upper)))],
            Apart = IsApart(curve),
        };

    private static double[] X(Curve curve) => [.. curve.Points.Select(p => curve.Abscissa.Shown(p.Setting.At))];

    private static bool IsApart(Curve curve) => curve.Points.Any(p => p.Setting.Label.Length > 0);

    // Runs of neighbouring points outside of what the formulation can do.
    private static List<(double From, double To)> Untrusted(Curve curve)
    {
        double[] x = X(curve);
        List<(double From, double To)> runs = [];
        for (int i = 0; i < x.Length; i++)
        {
            if (curve.Points[i].Reading.Trust.Level != TrustLevel.Outside)
            {
                continue;
            }

            int first = i;
            while (i + 1 < x.Length && curve.Points[i + 1].Reading.Trust.Level == TrustLevel.Outside)
            {
                i++;
            }

            runs.Add((x[first], x[i]));
        }

        return runs;
    }
}
