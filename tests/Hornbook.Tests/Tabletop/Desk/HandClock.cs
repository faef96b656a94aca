namespace Hornbook.Tests.Tabletop.Desk;

/// <summary>A clock that stands still until it is told that time has passed.</summary>
internal sealed class HandClock : TimeProvider
{
    private long _now;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => _now;

    public override DateTimeOffset GetUtcNow() => DateTimeOffset.UnixEpoch.AddTicks(_now);

    internal void Pass(TimeSpan time) => _now += time.Ticks;
}
