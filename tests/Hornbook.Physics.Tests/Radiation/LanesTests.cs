using CsCheck;
using Hornbook.Physics.Radiation;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>What lanes of every width and kind have in common; widths that the machine has no registers for are put together from what it has.</summary>
public sealed class LanesTests
{
    // Of 53 and of 24 bits, twice: the root is rounded, and what is made of it.
    private const double LastPlaces = 2.3e-16;
    private const double LastPlacesOfFloats = 1.8e-7;

    [Fact]
    public void A_root_and_one_over_it_are_right_to_the_last_places() => Gen.Double[-9.0, 9.0].Sample(decade =>
    {
        double value = Math.Pow(10.0, decade);
        Rooted<Lanes128>(value, LastPlaces);
        Rooted<Lanes256>(value, LastPlaces);
        Rooted<Lanes512>(value, LastPlaces);
        Rooted<SingleLanes128>((float)value, LastPlacesOfFloats);
        Rooted<SingleLanes256>((float)value, LastPlacesOfFloats);
        Rooted<SingleLanes512>((float)value, LastPlacesOfFloats);
    });

    [Fact]
    public void A_number_broadcast_is_that_number_in_every_lane() => Gen.Double[-1e6, 1e6].Sample(value =>
    {
        Assert.All(Lanes(Lanes128.Broadcast(value)), lane => Assert.Equal(value, lane));
        Assert.All(Lanes(Lanes256.Broadcast(value)), lane => Assert.Equal(value, lane));
        Assert.All(Lanes(Lanes512.Broadcast(value)), lane => Assert.Equal(value, lane));
        Assert.All(Lanes(SingleLanes128.Broadcast(value)), lane => Assert.Equal((float)value, lane));
        Assert.All(Lanes(SingleLanes256.Broadcast(value)), lane => Assert.Equal((float)value, lane));
        Assert.All(Lanes(SingleLanes512.Broadcast(value)), lane => Assert.Equal((float)value, lane));
    });

    private static void Rooted<T>(double value, double tolerance)
        where T : unmanaged, ILanes<T>
    {
        (T root, T inverse) = T.RootAndInverse(T.All(value));
        Assert.All(Lanes(root), lane => Close.Relative(Math.Sqrt(value), lane, tolerance));
        Assert.All(Lanes(inverse), lane => Close.Relative(1.0 / Math.Sqrt(value), lane, tolerance));
    }

    private static double[] Lanes<T>(T value)
        where T : unmanaged, ILanes<T>
    {
        double[] lanes = new double[T.Count];
        value.Store(lanes);
        return lanes;
    }
}
