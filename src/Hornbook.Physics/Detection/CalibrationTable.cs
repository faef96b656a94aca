using MathNet.Numerics.Interpolation;

namespace Hornbook.Physics.Detection;

/// <summary>A detector known by calibration points, with a smooth curve through them that never turns back.</summary>
/// <remarks>
/// Monotone cubic interpolation [FritschCarlson1980] of ln V over ln P. Beyond the points the curve goes on straight (a power law)
/// with the mean slope of its last interval; <see cref="TrustedPower"/> says where that begins.
/// </remarks>
public sealed class CalibrationTable : IDetectorLaw
{
    private readonly double[] _logPower;
    private readonly double[] _logVoltage;
    private readonly CubicSpline _curve;

    /// <summary>A table.</summary>
    /// <param name="points">Three or more, in any order; of two points the one with more power has the higher voltage.</param>
    /// <param name="videoResistance">R_v [Ω]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentException">There are fewer than three points, or the voltage does not rise with the power.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A power or voltage is not finite and positive.</exception>
    public CalibrationTable(IEnumerable<CalibrationPoint> points, double videoResistance)
    {
        ArgumentNullException.ThrowIfNull(points);
        CalibrationPoint[] sorted = [.. points.OrderBy(p => p.Power)];
        Points = sorted;
        VideoResistance = Require.Positive(videoResistance);
        RequireRising(sorted);
        _logPower = Array.ConvertAll(sorted, p => Math.Log(p.Power));
        _logVoltage = Array.ConvertAll(sorted, p => Math.Log(p.Voltage));
        _curve = CubicSpline.InterpolatePchipSorted(_logPower, _logVoltage);
    }

    /// <summary>The points, by rising power.</summary>
    public IReadOnlyList<CalibrationPoint> Points { get; }

    /// <inheritdoc/>
    public double VideoResistance { get; }

    /// <inheritdoc/>
    public double Temperature { get; init => field = Require.Positive(value, nameof(Temperature)); } = 293.15;

    /// <summary>From the first point to the last [W].</summary>
    public (double Lowest, double Highest) TrustedPower => (Points[0].Power, Points[^1].Power);

    /// <inheritdoc/>
    public double Voltage(double power) => Require.NotNegative(power) == 0.0 ? 0.0 : Math.Exp(LogVoltage(Math.Log(power)));

    /// <inheritdoc/>
    public double Power(double voltage) => Require.Finite(voltage) <= 0.0 ? 0.0 : Math.Exp(LogPower(Math.Log(voltage)));

    private double LogVoltage(double logPower)
    {
        if (logPower >= _logPower[0] && logPower <= _logPower[^1])
        {
            return _curve.Interpolate(logPower);
        }

        int i = logPower < _logPower[0] ? 0 : _logPower.Length - 2;
        return _logVoltage[i] + ((logPower - _logPower[i]) * MeanSlope(i));
    }

    private double LogPower(double logVoltage)
    {
        if (logVoltage < _logVoltage[0] || logVoltage > _logVoltage[^1])
        {
            int i = logVoltage < _logVoltage[0] ? 0 : _logVoltage.Length - 2;
            return _logPower[i] + ((logVoltage - _logVoltage[i]) / MeanSlope(i));
        }

        // The curve passes through every point, so that the interval is known and holds the root.
        int right = Math.Clamp(Array.FindIndex(_logVoltage, v => v >= logVoltage), 1, _logVoltage.Length - 1);
        return MathNet.Numerics.RootFinding.Brent.FindRoot(
            p => _curve.Interpolate(p) - logVoltage, _logPower[right - 1], _logPower[right], 1e-14, 200);
    }

    private double MeanSlope(int i) => (_logVoltage[i + 1] - _logVoltage[i]) / (_logPower[i + 1] - _logPower[i]);

    private static void RequireRising(CalibrationPoint[] sorted)
    {
        if (sorted.Length < 3)
        {
            throw new ArgumentException($"points = {sorted.Length}; a calibration needs three or more");
        }

        for (int i = 0; i < sorted.Length; i++)
        {
            Require.Positive(sorted[i].Power, $"power of point {i + 1}");
            Require.Positive(sorted[i].Voltage, $"voltage of point {i + 1}");
            if (i > 0 && (sorted[i].Power == sorted[i - 1].Power || sorted[i].Voltage <= sorted[i - 1].Voltage))
            {
                throw new ArgumentException(FormattableString.Invariant(
                    $"point {i + 1} by power: {sorted[i].Power} W gives {sorted[i].Voltage} V after {sorted[i - 1].Power} W with {sorted[i - 1].Voltage} V; the voltage must rise with the power"));
            }
        }
    }
}
