using System.Globalization;
using System.Runtime.CompilerServices;

namespace Hornbook.Physics.Guides;

/// <summary>An air-filled rectangular guide.</summary>
public sealed record RectangularGuide
{
    /// <summary>A guide by its inside dimensions.</summary>
    /// <param name="width">Broad inner wall, a [m]; finite, &gt; 0.</param>
    /// <param name="height">Narrow inner wall, b [m]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not finite and positive.</exception>
    public RectangularGuide(double width, double height)
    {
        Width = Require.Positive(width);
        Height = Require.Positive(height);
    }

    /// <summary>Broad inner wall, a [m].</summary>
    public double Width { get; }

    /// <summary>Narrow inner wall, b [m].</summary>
    public double Height { get; }

    /// <summary>Cut-off frequency of TE10, f_c = c/2a [Hz].</summary>
    public double CutoffFrequency => Constants.SpeedOfLight / (2.0 * Width);

    /// <summary>Phase constant over wavenumber, β/k = √(1−(f_c/f)²) [-]; NaN below cut-off.</summary>
    public double RelativePhaseConstant(double frequency) =>
        Math.Sqrt(1.0 - Math.Pow(CutoffFrequency / Require.Positive(frequency), 2.0));

    /// <summary>Passes a frequency at which TE10 travels.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite, or not above the cut-off.</exception>
    internal double Carried(double frequency, [CallerArgumentExpression(nameof(frequency))] string name = "") =>
        double.IsFinite(frequency) && frequency > CutoffFrequency
            ? frequency
            : throw new ArgumentOutOfRangeException(name, frequency, string.Create(
                CultureInfo.InvariantCulture, $"{name} = {frequency} Hz; the guide carries a wave only above its cut-off, {CutoffFrequency:G6} Hz"));
}
