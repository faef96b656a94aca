using Hornbook.Physics.Antennas;
using Hornbook.Physics.Exposure;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Exposure;

public sealed class LimitDistancesTests
{
    // An open guide with 100 mW (common practice, no source).
    private static readonly ExposureField Field = ExposureField.Of(Antenna.At(new OpenGuide(StandardGuides.Find("WR-90")!.Guide, Conductor.Brass), 10.525e9), 0.1);

    [Fact]
    public void Each_limit_at_the_frequency_is_there_once_with_its_own_distance()
    {
        IReadOnlyList<LimitDistance> distances = LimitDistances.Of(Field, null, TestContext.Current.CancellationToken);
        Assert.Equal(ExposureLimits.All.Where(limit => limit.Band.Contains(10.525e9)), distances.Select(distance => distance.Limit));
        LimitDistance one = distances[0];
        Close.Relative(KeepOut.OnAxis(Field, one.Limit.PowerDensity(10.525e9)), one.OnAxis, 1e-12);
        Assert.All(distances, distance => Assert.True(distance.Anywhere >= distance.OnAxis));
    }

    [Fact]
    public void It_can_be_ended()
    {
        using CancellationTokenSource end = new();
        end.Cancel();
        Assert.Throws<OperationCanceledException>(() => LimitDistances.Of(Field, null, end.Token));
    }
}
