using Hornbook.Physics.Guides;
using MathNet.Numerics.Integration;

namespace Hornbook.Physics.Antennas;

/// <summary>What the walls of a flare take.</summary>
internal static class WallLoss
{
    private const int Points = 24;

    /// <summary>Share of the accepted power that reaches the mouth, exp(−2∫α dx) [-]; 1 for an open guide, whose run belongs to the feed.</summary>
    /// <remarks>The attenuation of a guide of the local size, along the axis; the slant of the walls adds under a tenth of that loss.</remarks>
    internal static double Efficiency(AntennaShape shape, double frequency)
    {
        if (shape is not Horn horn)
        {
            return 1.0;
        }

        GaussLegendreRule rule = new(0.0, horn.Length, Points);
        double nepers = 0.0;
        for (int i = 0; i < rule.Order; i++)
        {
            nepers += rule.Weights[i] * GuideWave.At(horn.SectionAt(rule.Abscissas[i]), frequency).Attenuation(horn.Walls);
        }

        return Math.Exp(-2.0 * nepers);
    }
}
