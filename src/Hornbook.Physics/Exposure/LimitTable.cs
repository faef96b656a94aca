using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Exposure;

/// <summary>Short forms for the tables of limits.</summary>
internal static class LimitTable
{
    internal const double Minute = 60.0;
    internal const double SquareCentimetre = 1e-4;

    internal const string FromMemory = "from memory; check the text";

    internal static Func<double, double> Always(double same) => _ => same;

    /// <summary>Power density of a plane wave [W/m²] of an rms field strength [V/m].</summary>
    internal static Func<double, double> OfField(double strength) => Always(strength * strength / Constants.VacuumImpedance);

    internal static FrequencyBand Gigahertz(double lowest, double highest) => new(lowest * 1e9, highest * 1e9);

    /// <summary>6 min to 10 GHz, then 68/f^1.05 min with f in GHz: ICNIRP 1998 and what was taken from it.</summary>
    internal static double AveragingTime1998(double frequency) =>
        frequency <= 10e9 ? 6.0 * Minute : 68.0 * Minute / Math.Pow(frequency / 1e9, 1.05);
}
