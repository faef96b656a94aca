using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

public static class TurnsTests
{
    public sealed class CosSin
    {
        [Theory]
        [InlineData(0.0)]
        [InlineData(17.0)]
        [InlineData(-1000.0)]
        public void Is_right_to_the_last_bits_at_any_number_of_turns(double whole)
        {
            // Derived: the cut series is within 1e-16 and the roundings of its evaluation add at most two units in the last place of one.
            for (double part = -1.0; part <= 1.0; part += 1.0 / 4096.0)
            {
                (double cos, double sin) = At(whole + part);
                Close.Absolute(double.CosPi(2.0 * part), cos, 5.5e-16);
                Close.Absolute(double.SinPi(2.0 * part), sin, 5.5e-16);
            }
        }

        [Fact]
        public void Is_right_to_the_last_places_of_floats()
        {
            for (double turns = -1.0; turns <= 1.0; turns += 1.0 / 1024.0)
            {
                (SingleLanes128 cos, SingleLanes128 sin) = Turns.CosSin(SingleLanes128.All(turns));
                // Derived: 24 bits of one are 6e-8; the cut series and the roundings of its evaluation add three of them.
                Close.Absolute(double.CosPi(2.0 * turns), First(cos), 2.5e-7);
                Close.Absolute(double.SinPi(2.0 * turns), First(sin), 2.5e-7);
            }
        }

        [Fact]
        public void Is_exactly_zero_where_it_should_be()
        {
            Assert.Equal(0.0, At(3.0).Sin);
            Assert.Equal(0.0, At(0.25).Cos);
            Assert.Equal(0.0, At(-7.5).Sin);
            Assert.Equal(0.0, At(0.75).Cos);
        }

        private static (double Cos, double Sin) At(double turns)
        {
            (Lanes128 cos, Lanes128 sin) = Turns.CosSin(Lanes128.All(turns));
            return (First(cos), First(sin));
        }

        private static double First<T>(T value)
            where T : unmanaged, ILanes<T>
        {
            double[] lanes = new double[T.Count];
            value.Store(lanes);
            return lanes[0];
        }
    }
}
