using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Exposure;

public sealed class ApertureFormulasTests
{
    [Fact]
    public void Surface_density_is_four_times_the_mean() =>
        // [Oet65] 4P/A, from memory; derived: 4 × 10 mW/(76 × 94 mm²) = 5.599 W/m²
        Close.Relative(5.599, ApertureFormulas.SurfaceDensity(10e-3, 76e-3 * 94e-3), 1e-4);

    // derived: √(PG/4πS) for 10 mW and 16.5 dBi
    [Theory]
    [InlineData(0.0596, 10.0)]
    [InlineData(0.0267, 50.0)]
    [InlineData(0.596, 0.1)]
    public void Far_density_meets_the_limits_at_the_textbook_distances(double distance, double density) =>
        Close.Relative(density, ApertureFormulas.FarDensity(10e-3, Decibels.ToRatio(16.5), distance), 4e-3); // three printed digits, squared

    [Fact]
    public void The_zones_join()
    {
        // [Oet65] from memory: R_nf = D²/4λ, R_ff = 0.6 D²/λ, S_nf = 16ηP/πD², S_t = S_nf R_nf/R
        double nearEnd = ApertureFormulas.NearZoneEnd(0.6, 0.0285);
        Close.Relative(0.6 * 0.6 / (4.0 * 0.0285), nearEnd, 1e-14);
        Close.Relative(2.4 * nearEnd, ApertureFormulas.FarZoneBegin(0.6, 0.0285), 1e-14);
        double near = ApertureFormulas.NearZoneDensity(10e-3, 0.6, 0.55);
        Close.Relative(16.0 * 0.55 * 10e-3 / (Math.PI * 0.36), near, 1e-14);
        Close.Relative(near, ApertureFormulas.TransitionDensity(near, nearEnd, nearEnd), 1e-14);
        Close.Relative(0.5 * near, ApertureFormulas.TransitionDensity(near, nearEnd, 2.0 * nearEnd), 1e-14);
    }

    // derived: on the axis of an evenly lit disc S/S0 = 4 sin²(πN/2), N = a²/λz: 4 at the most. Independent of the formulas: the two
    // rays from centre and rim, e^{-jkz} − e^{-jk√(z²+a²)}, whose obliquity at z = 200 λ, a = √200 λ is 0.25 %.
    [Fact]
    public void Four_is_what_an_evenly_lit_disc_reaches_on_its_axis()
    {
        const double Z = 200.0;
        double rim = Math.Sqrt((Z * Z) + 200.0);
        double amplitude = 2.0 * Math.Sin(Math.PI * (rim - Z));
        Close.Relative(ApertureFormulas.SurfaceDensity(1.0, 1.0), amplitude * amplitude, 3e-3);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void A_mouth_without_area_is_rejected(double area) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(area), () => ApertureFormulas.SurfaceDensity(1.0, area));
}
