using CsCheck;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Physics.Tests.Antennas;

/// <summary>Antennas that several tests share.</summary>
internal static class SampleAntennas
{
    // EIA RS-261: 0.900 × 0.400 in.
    internal static RectangularGuide Wr90 { get; } = new(22.86e-3, 10.16e-3);

    internal static OpenGuide OpenWr90 { get; } = new(Wr90, Conductor.Brass);

    /// <summary>A mouth of 32 times the area of WR-90, as a builder would cut it.</summary>
    internal static Horn TableHorn { get; } = new(Wr90, 94e-3, 79e-3, 66e-3, Conductor.Brass);

    /// <summary>The horn of Stutzman and Thiele's design example with both flares beginning in one plane.</summary>
    internal static Horn OptimumHorn { get; } = new(Wr90, 186.1e-3, 147.5e-3, 295.6e-3, Conductor.Brass);

    /// <summary>Random horns that a table can carry.</summary>
    internal static Gen<Horn> Horns { get; } =
        from width in Gen.Double[30e-3, 110e-3]
        from height in Gen.Double[15e-3, 90e-3]
        from length in Gen.Double[40e-3, 180e-3]
        select new Horn(Wr90, width, height, length, Conductor.Brass);

    /// <summary>Random frequencies of the guide's recommended band.</summary>
    internal static Gen<double> Frequencies { get; } = Gen.Double[8.2e9, 12.4e9];
}
