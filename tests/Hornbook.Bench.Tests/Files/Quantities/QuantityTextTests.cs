using System.Globalization;
using CsCheck;
using Hornbook.Bench.Files.Quantities;
using Hornbook.Testing;
using Xunit;
using Qty = Hornbook.Bench.Files.Quantities.Quantity;

namespace Hornbook.Bench.Tests.Files.Quantities;

public sealed class QuantityTextTests
{
    /// <summary>One of every unit in SI: the definitions of the SI, and 1 in = 25.4 mm (international inch, 1959), exact.</summary>
    public static TheoryData<string, string, double> Ones => new()
    {
        { "length", "1 cm", 1e-2 }, { "length", "1 mm", 1e-3 }, { "length", "1 m", 1.0 }, { "length", "1 µm", 1e-6 }, { "length", "1 in", 0.0254 },
        { "angle", "180 deg", Math.PI }, { "angle", "1 rad", 1.0 },
        { "frequency", "1 GHz", 1e9 }, { "frequency", "1 MHz", 1e6 }, { "frequency", "1 kHz", 1e3 }, { "frequency", "1 Hz", 1.0 },
        { "power", "1 mW", 1e-3 }, { "power", "1 W", 1.0 }, { "power", "1 µW", 1e-6 }, { "power", "1 nW", 1e-9 }, { "power", "0 dBm", 1e-3 }, { "power", "-30 dBm", 1e-6 },
        { "voltage", "1 V", 1.0 }, { "voltage", "1 mV", 1e-3 }, { "voltage", "1 µV", 1e-6 },
        { "ratio", "20 dB", 10.0 },
        { "noise density", "1 nV/√Hz", 1e-9 }, { "noise density", "1 µV/√Hz", 1e-6 },
        { "resistance", "1 ohm", 1.0 }, { "resistance", "1 kohm", 1e3 }, { "resistance", "1 Mohm", 1e6 },
        { "current", "1 µA", 1e-6 }, { "current", "1 nA", 1e-9 }, { "current", "1 pA", 1e-12 }, { "current", "1 mA", 1e-3 }, { "current", "1 A", 1.0 },
        { "capacitance", "1 pF", 1e-12 }, { "capacitance", "1 fF", 1e-15 }, { "capacitance", "1 nF", 1e-9 },
        { "temperature", "1 K", 1.0 }, { "temperature", "0 degC", 273.15 },
        { "sensitivity", "1 mV/µW", 1e3 }, { "sensitivity", "1 V/W", 1.0 }, { "sensitivity", "1 µV/nW", 1e3 },
        { "tone slope", "1 Hz/V", 1.0 }, { "tone slope", "1 kHz/V", 1e3 }, { "octave slope", "1 oct/V", 1.0 },
        { "duration", "1 min", 60.0 }, { "duration", "1 s", 1.0 },
    };

    [Theory]
    [MemberData(nameof(Ones))]
    public void One_of_a_unit_is_so_much_in_SI(string quantity, string text, double expected) =>
        Close.Relative(expected, QuantityText.Read(text, Named(quantity)).Value, 1e-15);

    [Fact]
    public void Every_unit_is_in_that_list()
    {
        string[] listed = [.. Ones.Select(one => $"{one.Data.Item1}:{one.Data.Item2.Split(' ')[1]}")];

        Assert.Empty(Qty.All.SelectMany(quantity => quantity.Units.Select(unit => $"{quantity.Name}:{unit.Symbol}")).Except(listed));
    }

    [Fact]
    public void Every_other_spelling_means_the_same()
    {
        foreach (Qty quantity in Qty.All)
        {
            foreach (Unit unit in quantity.Units)
            {
                Assert.All(unit.AlsoWritten, other => Assert.Same(unit, QuantityText.Read("2.5 " + other, quantity).Unit));
            }
        }
    }

    [Fact]
    public void No_spelling_stands_for_two_quantities()
    {
        string[] spellings = [.. Qty.All.SelectMany(quantity => quantity.Units).SelectMany(unit => unit.AlsoWritten.Prepend(unit.Symbol))];

        Assert.Equal(spellings.Length, spellings.Distinct().Count());
    }

    [Theory]
    [InlineData("62cm")]
    [InlineData(" 62 cm ")]
    [InlineData("62\u00A0cm")]
    [InlineData("62\u202Fcm")]
    [InlineData("+62.0 cm")]
    [InlineData("6.2e1 cm")]
    [InlineData("620e-1 cm")]
    public void A_length_may_be_written_in_these_ways(string text) =>
        Assert.Equal(0.62, QuantityText.Read(text, Qty.Length).Value);

    [Theory]
    [InlineData("2.5 \u03BCm", "length", 2.5e-6)]
    [InlineData("-12 dBm", "power", 6.309573444801933e-5)] // derived: 10^(−12/10) mW
    [InlineData("\u221212 dBm", "power", 6.309573444801933e-5)]
    [InlineData("8 k\u2126", "resistance", 8e3)]
    public void Look_alikes_from_keyboards_and_copied_text_are_read(string text, string quantity, double expected) =>
        Close.Relative(expected, QuantityText.Read(text, Named(quantity)).Value, 1e-14);

    [Theory]
    [InlineData("1,5 m")]
    [InlineData("1.500,0 m")]
    [InlineData("1'500 m")]
    [InlineData("1 500 m")]
    [InlineData("1_500 m")]
    [InlineData("60 CM")]
    [InlineData("60 c m")]
    [InlineData("1/2 in")]
    [InlineData("--1 m")]
    [InlineData("1e m")]
    [InlineData("0x10 m")]
    [InlineData("\u0661 m")]
    [InlineData("NaN m")]
    [InlineData("Infinity m")]
    [InlineData("1e400 m")]
    [InlineData("m")]
    [InlineData("")]
    public void Anything_else_is_refused_with_three_parts(string text)
    {
        Misreading? misreading = QuantityText.Read(text, Qty.Length).Misreading;

        Assert.NotNull(misreading);
        Assert.All([misreading.Read, misreading.Fits, misreading.Type], Assert.NotEmpty);
    }

    [Fact]
    public void What_is_written_reads_back_to_the_step_of_its_quantity()
    {
        (Qty Quantity, Unit Unit)[] units = [.. Qty.All.SelectMany(quantity => quantity.Units.Where(unit => unit.Scale is UnitScale.Linear or UnitScale.Divided).Select(unit => (quantity, unit)))];
        Gen.Select(Gen.Int[0, units.Length - 1], Gen.Double[-999.0, 999.0]).Sample((i, number) =>
        {
            (Qty quantity, Unit unit) = units[i];
            double value = unit.ToSi(number);
            double back = QuantityText.Read(QuantityText.Write(value, unit, quantity), quantity).Value;
            // Half a step, or half of the sixth significant digit.
            double step = quantity.Resolution > 0.0 ? 0.5001 * quantity.Resolution : 5.001e-6 * Math.Abs(value);
            Close.Absolute(value, back, step);
        });
    }

    [Fact]
    public void A_country_with_decimal_commas_reads_and_writes_the_same()
    {
        CultureInfo commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NumberGroupSeparator = ".";
        commas.NumberFormat.NegativeSign = "~";
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = commas;
            Assert.Equal(-1.5, QuantityText.Read("-1.5 m", Qty.Length).Value);
            Assert.Equal("-1.5 m", QuantityText.Write(-1.5, Qty.Length.FindUnit("m")!, Qty.Length));
            Assert.NotNull(QuantityText.Read("1,5 m", Qty.Length).Misreading);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static Qty Named(string name) => Qty.All.Single(quantity => quantity.Name == name);
}
