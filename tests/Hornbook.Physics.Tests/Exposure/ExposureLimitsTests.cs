using System.Globalization;
using System.Text.RegularExpressions;
using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Exposure;

public static partial class ExposureLimitsTests
{
    private static ExposureLimit Limit(string id) => ExposureLimits.Find(id) ?? throw new KeyNotFoundException(id);

    public sealed class Values
    {
        // [Icnirp2020] table 6: 55 and 275 × f^−0.177 W/m², f in GHz; 36.26 and 181.3 W/m² derived at 10.525 GHz.
        [Theory]
        [InlineData("icnirp-2020-local-public", 10.525, 36.26)]
        [InlineData("icnirp-2020-local-workers", 10.525, 181.3)]
        [InlineData("icnirp-2020-local-public", 4.0, 40.0)]
        [InlineData("icnirp-2020-local-workers", 4.0, 200.0)]
        public void Of_the_local_limit_of_2020_fall_slowly_with_frequency(string id, double gigahertz, double expected) =>
            Close.Relative(expected, Limit(id).PowerDensity(gigahertz * 1e9), 5e-4); // four printed digits

        // [Icnirp2020] table 6 prints 40, 20, 200, 100 W/m² at the ends; its formula gives 40.05, 20.04, 200.3, 100.2 there (0.3 %).
        [Theory]
        [InlineData("icnirp-2020-local-public", 40.0, 20.0)]
        [InlineData("icnirp-2020-local-workers", 200.0, 100.0)]
        public void Of_the_local_limit_of_2020_meet_the_printed_ends(string id, double atSix, double atThreeHundred)
        {
            Close.Relative(atSix, Limit(id).PowerDensity(6.000001e9), 3e-3);
            Close.Relative(atThreeHundred, Limit(id).PowerDensity(300e9), 3e-3);
        }

        // derived: E = √(ηS); the instruments print 61, 137 to 140, 40, 20 and 6 V/m
        [Theory]
        [InlineData("us-public", 61.4)]
        [InlineData("us-workers", 137.2)]
        [InlineData("italy-limit-public", 38.8)]
        [InlineData("russia-public", 6.14)]
        [InlineData("italy-attention-2024-public", 15.0)]
        [InlineData("switzerland-public", 61.0)]
        public void Have_a_field_strength(string id, double expected) =>
            Close.Relative(expected, Limit(id).FieldStrength(10.525e9), 1e-3); // three printed digits

        // derived: 1 mW/cm² = 10 W/m² (47 CFR 1.1310, read in two copies), 10 µW/cm² = 0.1 W/m² (Russian table, read in regional copies)
        [Theory]
        [InlineData("us-public", 10.0)]
        [InlineData("russia-public", 0.1)]
        [InlineData("russia-scanning-public", 0.25)]
        public void Are_in_watts_a_square_metre(string id, double expected) => Close.Relative(expected, Limit(id).PowerDensity(10.525e9), 1e-15);

        // GB 8702-2014, from memory: f/7500 W/m² with f in MHz to 15 GHz, then 2 W/m²
        [Theory]
        [InlineData(10.525, 1.40333)]
        [InlineData(15.0, 2.0)]
        [InlineData(24.125, 2.0)]
        public void Of_China_rise_to_two_watts(double gigahertz, double expected) =>
            Close.Relative(expected, Limit("china-2014-public").PowerDensity(gigahertz * 1e9), 1e-5);

        [Fact]
        public void Are_refused_outside_their_band() =>
            Assert.StartsWith(
                "frequency = 900000000 Hz; us-public is kept for ",
                Assert.Throws<ArgumentOutOfRangeException>(() => Limit("us-public").PowerDensity(0.9e9)).Message,
                StringComparison.Ordinal);
    }

    public sealed class AveragingTime
    {
        // [SafetyCode6] from memory: 616 000/f^1.2 min above 15 GHz, f in MHz; derived: 3.39 min at 24.125 GHz
        [Fact]
        public void Of_Canada_shortens_above_15_GHz()
        {
            Close.Relative(3.39 * 60.0, Limit("canada-public").AveragingTime(24.125e9), 2e-3);
            Close.Relative(360.0, Limit("canada-public").AveragingTime(10.525e9), 1e-15);
        }

        // [Icnirp1998] from memory: 68/f^1.05 min above 10 GHz, f in GHz; derived: 5.74 min at 10.525 GHz
        [Fact]
        public void Of_1998_shortens_above_10_GHz() =>
            Close.Relative(5.743 * 60.0, Limit("icnirp-1998-public").AveragingTime(10.525e9), 1e-3);
    }

    public sealed class Choice
    {
        // The Russian 10 µW/cm² is the strictest in force for the public since Italy (2024) and Poland (2020) gave up 0.1 W/m² and 7 V/m.
        [Theory]
        [InlineData(10.525e9)]
        [InlineData(24.125e9)]
        public void Of_the_strictest_for_the_public_is_a_tenth_of_a_watt(double frequency)
        {
            ExposureLimit strictest = ExposureLimits.Strictest(ExposureGroup.Public, frequency)!;
            Assert.Equal("russia-public", strictest.Id);
            Close.Relative(0.1, strictest.PowerDensity(frequency), 1e-15);
        }

        [Fact]
        public void Of_the_strictest_for_workers_is_fifty_watts() =>
            // 47 CFR 1.1310, Directive 2013/35/EU: 50 W/m²
            Close.Relative(50.0, ExposureLimits.Strictest(ExposureGroup.Workers, 10.525e9)!.PowerDensity(10.525e9), 1e-15);

        [Theory]
        [InlineData("italy-attention-2003-public")]
        [InlineData("poland-2003-public")]
        [InlineData("icnirp-1998-public")]
        public void Keeps_what_was_replaced_but_does_not_count_it(string id)
        {
            Assert.False(Limit(id).IsInForce);
            Assert.DoesNotContain(ExposureLimits.InForce(ExposureGroup.Public, 10.525e9), l => l.Id == id);
        }

        [Fact]
        public void Leaves_out_limits_for_installations_that_stay()
        {
            ExposureLimit installation = Limit("switzerland-installation-strict-public");
            Assert.True(installation.IsInForce);
            Assert.True(installation.PowerDensity(10.525e9) < ExposureLimits.Strictest(ExposureGroup.Public, 10.525e9)!.PowerDensity(10.525e9));
        }

        [Fact]
        public void Is_none_where_nothing_is_known() => Assert.Null(ExposureLimits.Strictest(ExposureGroup.Workers, 1e12));

        [Fact]
        public void Finds_nothing_under_a_name_that_is_not_there() => Assert.Null(ExposureLimits.Find("icnirp"));
    }

    public sealed partial class Table
    {
        [Fact]
        public void Has_a_plain_name_once_for_each_limit()
        {
            Assert.Equal(ExposureLimits.All.Count, ExposureLimits.All.DistinctBy(l => l.Id).Count());
            Assert.All(ExposureLimits.All, l => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*-(public|workers)$", l.Id));
            Assert.All(ExposureLimits.All, l => Assert.EndsWith(l.Group == ExposureGroup.Public ? "public" : "workers", l.Id, StringComparison.Ordinal));
        }

        [Fact]
        public void Says_where_each_limit_comes_from() =>
            Assert.All(ExposureLimits.All, l => Assert.True(l.Title.Length > 0 && l.Instrument.Length > 0 && l.Origin.Length > 0, l.Id));

        [Fact]
        public void Is_positive_all_over_each_band() =>
            Assert.All(ExposureLimits.All, l =>
            {
                for (int i = 0; i <= 20; i++)
                {
                    double frequency = l.Band.Lowest * Math.Pow(l.Band.Highest / l.Band.Lowest, i / 20.0);
                    frequency = Math.Clamp(frequency, l.Band.Lowest, l.Band.Highest);
                    Assert.True(l.PowerDensity(frequency) > 0.0 && l.AveragingTime(frequency) >= 0.0, l.Id);
                }
            });

        // The page that people read lists the same numbers as the code.
        [Fact]
        public void Is_the_one_on_the_page()
        {
            Dictionary<string, double> page = Row().Matches(File.ReadAllText(Repository.At("docs", "physics", "exposure.md")))
                .ToDictionary(m => m.Groups[1].Value, m => double.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture));
            Assert.Equal(ExposureLimits.All.Select(l => l.Id), page.Keys);
            Assert.All(ExposureLimits.All, l => Close.Relative(l.PowerDensity(10.525e9), page[l.Id], 5e-3)); // two or three printed digits
        }

        [GeneratedRegex(@"^\| `([a-z0-9-]+)` \| ([0-9.]+) \|", RegexOptions.Multiline)]
        private static partial Regex Row();
    }
}
