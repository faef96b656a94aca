using CsCheck;
using Hornbook.Testing;
using UnitsNet.Units;
using Xunit;
using Qty = Hornbook.Bench.Files.Quantities.Quantity;

namespace Hornbook.Bench.Tests.Files.Quantities;

/// <summary>Our table of units against an independent one.</summary>
public sealed class UnitsNetTests
{
    private static readonly (Qty Quantity, string Symbol, Enum Unit, Enum Si)[] Pairs =
    [
        (Qty.Length, "cm", LengthUnit.Centimeter, LengthUnit.Meter), (Qty.Length, "mm", LengthUnit.Millimeter, LengthUnit.Meter),
        (Qty.Length, "µm", LengthUnit.Micrometer, LengthUnit.Meter), (Qty.Length, "in", LengthUnit.Inch, LengthUnit.Meter),
        (Qty.Angle, "deg", AngleUnit.Degree, AngleUnit.Radian),
        (Qty.Frequency, "GHz", FrequencyUnit.Gigahertz, FrequencyUnit.Hertz), (Qty.Frequency, "MHz", FrequencyUnit.Megahertz, FrequencyUnit.Hertz),
        (Qty.Frequency, "kHz", FrequencyUnit.Kilohertz, FrequencyUnit.Hertz),
        (Qty.Power, "mW", PowerUnit.Milliwatt, PowerUnit.Watt), (Qty.Power, "µW", PowerUnit.Microwatt, PowerUnit.Watt),
        (Qty.Power, "nW", PowerUnit.Nanowatt, PowerUnit.Watt),
        (Qty.Voltage, "mV", ElectricPotentialUnit.Millivolt, ElectricPotentialUnit.Volt),
        (Qty.Voltage, "µV", ElectricPotentialUnit.Microvolt, ElectricPotentialUnit.Volt),
        (Qty.Resistance, "kohm", ElectricResistanceUnit.Kiloohm, ElectricResistanceUnit.Ohm),
        (Qty.Resistance, "Mohm", ElectricResistanceUnit.Megaohm, ElectricResistanceUnit.Ohm),
        (Qty.Current, "µA", ElectricCurrentUnit.Microampere, ElectricCurrentUnit.Ampere), (Qty.Current, "nA", ElectricCurrentUnit.Nanoampere, ElectricCurrentUnit.Ampere),
        (Qty.Capacitance, "pF", CapacitanceUnit.Picofarad, CapacitanceUnit.Farad), (Qty.Capacitance, "nF", CapacitanceUnit.Nanofarad, CapacitanceUnit.Farad),
        (Qty.Temperature, "degC", TemperatureUnit.DegreeCelsius, TemperatureUnit.Kelvin),
    ];

    [Fact]
    public void Every_unit_that_both_know_turns_into_the_same_SI_value() =>
        Gen.Select(Gen.Int[0, Pairs.Length - 1], Gen.Double[0.001, 999.0]).Sample((i, number) => Close.Relative(
            (double)UnitsNet.Quantity.From(number, Pairs[i].Unit).As(Pairs[i].Si),
            Pairs[i].Quantity.FindUnit(Pairs[i].Symbol)!.ToSi(number),
            1e-14)); // a few roundings on each side

    [Fact]
    public void Levels_turn_into_the_same_power() =>
        Gen.Double[-90.0, 50.0].Sample(level => Close.Relative(
            (double)UnitsNet.PowerRatio.FromDecibelMilliwatts(level).ToPower().Watts, Qty.Power.FindUnit("dBm")!.ToSi(level), 1e-12));
}
