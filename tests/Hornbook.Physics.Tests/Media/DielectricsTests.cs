using System.Numerics;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Media;

public sealed class DielectricsTests
{
    [Theory]
    // ITU-R P.2040-3 table 3, conductivity at 9 GHz to the digits of a secondary list made from it.
    [InlineData("concrete", 0.25766)]
    [InlineData("brick", 0.033826)]
    [InlineData("plasterboard", 0.066978)]
    [InlineData("wood", 0.049528)]
    [InlineData("glass", 0.068299)]
    [InlineData("ceiling board", 0.011674)]
    [InlineData("chipboard", 0.12044)]
    [InlineData("plywood", 0.33)]
    [InlineData("marble", 0.04209)]
    [InlineData("floorboard", 0.085726)]
    public void Building_materials_conduct_as_published(string name, double conductivity) =>
        Close.Relative(conductivity, Assert.IsType<BuildingMaterial>(Dielectrics.Find(name)).Conductivity(9e9), 1e-4);

    [Theory]
    // Derived from ITU-R P.2040-3: attenuation in bulk at 10 GHz [dB/m].
    [InlineData("concrete", 199.8)]
    [InlineData("plasterboard", 73.2)]
    [InlineData("wood", 64.3)]
    [InlineData("plywood", 326.0)]
    public void A_wave_dies_out_inside_as_derived(string name, double decibelsPerMetre) =>
        Close.Relative(decibelsPerMetre, 20.0 * Math.Log10(Math.E) * Dielectrics.Find(name)!.Attenuation(10e9), 2e-3);

    [Theory]
    // ITU-R P.527-6 (formulas from memory), agreeing with Kaatze 1989 to 0.3; temperature in °C.
    [InlineData(10e9, 20.0, 60.79, 32.72)]
    [InlineData(10e9, 25.0, 62.85, 29.86)]
    [InlineData(24.125e9, 20.0, 30.06, 35.21)]
    [InlineData(3e9, 25.0, 76.58, 11.09)]
    public void Water_is_as_published(double frequency, double celsius, double real, double loss)
    {
        Complex permittivity = new Water(celsius + 273.15).RelativePermittivity(frequency);
        Close.Absolute(real, permittivity.Real, 0.006);
        Close.Absolute(loss, -permittivity.Imaginary, 0.006);
    }

    [Fact]
    public void Every_material_loses_and_none_gains()
    {
        Assert.All(Dielectrics.All, material =>
        {
            Complex permittivity = material.RelativePermittivity(10.525e9);
            // Law: ε' ≥ 1 and ε'' ≥ 0 for every passive material.
            Assert.True(permittivity.Real >= 1.0 && permittivity.Imaginary <= 0.0, material.Name);
            Assert.True(material.Attenuation(10.525e9) >= 0.0, material.Name);
        });
    }

    [Fact]
    public void Names_are_known_in_any_case_and_once_each()
    {
        Assert.Same(Dielectrics.Find("ptfe"), Dielectrics.Find(" PTFE "));
        Assert.Null(Dielectrics.Find("cheese"));
        Assert.Equal(Dielectrics.All.Count, Dielectrics.All.Select(m => m.Name.ToUpperInvariant()).Distinct().Count());
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_frequency_that_is_none_is_refused(double frequency) =>
        Assert.All(Dielectrics.All, material => Assert.Throws<ArgumentOutOfRangeException>(() => material.RelativePermittivity(frequency)));
}
