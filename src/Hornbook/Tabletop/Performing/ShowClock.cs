namespace Hornbook.Tabletop.Performing;

/// <summary>How long the show and its present item have been running. A value; whoever shows it asks with the time.</summary>
/// <param name="ItemBefore">What had run of the item when the clock was last started or stopped [s].</param>
/// <param name="ShowBefore">The same of the show [s].</param>
/// <param name="StartedAt">Time of the last start [s]; null while it stands.</param>
public sealed record ShowClock(double ItemBefore = 0.0, double ShowBefore = 0.0, double? StartedAt = null)
{
    public bool IsRunning => StartedAt is not null;

    /// <summary>Of the present item [s].</summary>
    public double Item(double now) => ItemBefore + Since(now);

    /// <summary>Of the whole show [s].</summary>
    public double Show(double now) => ShowBefore + Since(now);

    /// <summary>Starts it, or lets it stand.</summary>
    public ShowClock Toggled(double now) => IsRunning ? new ShowClock(Item(now), Show(now)) : this with { StartedAt = now };

    /// <summary>Another item begins; the show goes on.</summary>
    public ShowClock AtNewItem(double now) => new(0.0, Show(now), IsRunning ? now : null);

    private double Since(double now) => now - (StartedAt ?? now);
}
