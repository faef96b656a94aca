using Hornbook.Physics.Exposure;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Exposure;

public static class EmissionRulesTests
{
    public sealed class EirpOfField
    {
        // 47 CFR 15.245: 2.5 V/m (at 3 m, from memory); derived: 1.875 W = 32.73 dBm
        [Fact]
        public void Of_a_motion_sensor_is_under_two_watts()
        {
            Close.Relative(1.875, EmissionRules.EirpOfField(2.5, 3.0), 1e-3); // the printed value has η = 120π
            Close.Absolute(32.73, Decibels.PowerToDbm(EmissionRules.EirpOfField(2.5, 3.0)), 0.01);
        }
    }

    public sealed class FieldOfEirp
    {
        // derived: 10 mW into 16.5 dBi is 0.4467 W; √(30 × 0.4467)/3 m = 1.220 V/m
        [Fact]
        public void Of_ten_milliwatts_in_a_horn_is_one_volt_and_a_fifth_at_three_metres() =>
            Close.Relative(1.220, EmissionRules.FieldOfEirp(10e-3 * Decibels.ToRatio(16.5), 3.0), 1e-3);

        [Fact]
        public void Undoes_the_EIRP() => Close.Relative(2.5, EmissionRules.FieldOfEirp(EmissionRules.EirpOfField(2.5, 3.0), 3.0), 1e-14);
    }

    public sealed class At
    {
        [Fact]
        public void Ten_and_a_half_gigahertz_finds_motion_sensors_and_no_amateurs()
        {
            // 47 CFR 15.245: 10.5 to 10.55 GHz; CEPT 70-03 annex 6, from memory: 10.5 to 10.6 GHz; amateur band ends at 10.5 GHz
            Assert.Equal(
                ["us-field-disturbance-10ghz", "cept-radiodetermination-10ghz"], EmissionRules.At(10.525e9).Select(r => r.Id));
        }

        [Fact]
        public void Ten_point_three_gigahertz_finds_amateurs() =>
            Assert.Equal(["amateur-3cm"], EmissionRules.At(10.3e9).Select(r => r.Id));

        [Fact]
        public void Ten_milliwatts_in_a_horn_stay_below_the_rules_of_the_band()
        {
            // derived: 0.4467 W against 1.876 W (15.245) and 0.5 W (CEPT annex 6, from memory)
            double eirp = 10e-3 * Decibels.ToRatio(16.5);
            Assert.All(EmissionRules.At(10.525e9), r => Assert.True(eirp < r.HighestEirp, r.Id));
        }
    }

    [Fact]
    public static void Every_rule_has_its_own_name() => Assert.Equal(EmissionRules.All.Count, EmissionRules.All.DistinctBy(r => r.Id).Count());

    [Fact]
    public static void Cautions_and_the_note_defer_to_the_local_rule()
    {
        Assert.Contains("licence", EmissionRules.Note, StringComparison.Ordinal);
        Assert.Contains("the local rule decides", EmissionRules.Note, StringComparison.Ordinal);
        Assert.Contains(Cautions.All, c => c.Contains("local code", StringComparison.Ordinal));
        Assert.Contains(Cautions.All, c => c.Contains("look into a horn", StringComparison.Ordinal));
    }
}
