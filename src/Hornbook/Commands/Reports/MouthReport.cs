using Hornbook.Physics.Exposure;

namespace Hornbook.Commands.Reports;

/// <summary>What an eye or a hand at the mouth would get.</summary>
internal sealed record MouthReport(double PeakWPerM2, double MeanOver4Cm2WPerM2, double TextbookWPerM2)
{
    internal static MouthReport Of(ExposureField field)
    {
        MouthExposure mouth = MouthExposure.Of(field);
        return new MouthReport(mouth.Peak, mouth.Average, mouth.SurfaceEstimate);
    }
}
