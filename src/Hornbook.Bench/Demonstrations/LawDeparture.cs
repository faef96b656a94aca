namespace Hornbook.Bench.Demonstrations;

/// <summary>How far a curve leaves a law.</summary>
internal static class LawDeparture
{
    /// <summary>Below this share of the strongest the law is not compared: there leaks and depth decide.</summary>
    private const double Compared = 0.01;

    /// <summary>Greatest departure where the law asks for more than a hundredth of the most that it says of these points [dB].</summary>
    /// <inheritdoc cref="LargestDb(double[], double[], double)"/>
    internal static double LargestDb(double[] links, double[] law) => LargestDb(links, law, law.Max());

    /// <summary>Greatest departure where the law asks for more than a hundredth of its strongest [dB].</summary>
    /// <param name="links">The curve, length n.</param>
    /// <param name="law">What the law says, in the same unit, length n.</param>
    /// <param name="strongest">The most that the law ever says.</param>
    internal static double LargestDb(double[] links, double[] law, double strongest) =>
        links.Zip(law)
            .Where(point => point.Second > Compared * strongest)
            .Select(point => Math.Abs(TextbookComparison.ErrorDb(point.First, point.Second)))
            .DefaultIfEmpty(0.0)
            .Max();
}
