using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Tabletop.Desk;

/// <summary>Everything that lies on the desk at one moment; immutable, so that any thread may look at it.</summary>
/// <param name="History">The bench, and what was done to it.</param>
/// <param name="Scene">The bench as it is now, made ready to compute.</param>
public sealed record DeskState(History<BenchStep> History, Scene Scene)
{
    private readonly Lazy<Reading> _reading = new(() => Scene.Read());
    private readonly Lazy<Reading?> _before = new(() => History.Before is { } before ? Scene.With(before.Plan).Read() : null);

    public BenchFile File => History.Present.File;

    public BenchPlan Plan => Scene.Plan;

    /// <summary>What is read on the bench as it lies there; computed once for all windows.</summary>
    public Reading Reading => _reading.Value;

    /// <summary>What was read before the last step; null where there was none.</summary>
    public Reading? Before => _before.Value;

    /// <summary>Whether a reading takes longer than a hand moves: the waves between panels have to be solved.</summary>
    public bool IsSlow => Plan.Table.Panel is not null || Plan.Panels.Any(panel => panel.Stands);

    /// <summary>The same desk with another present; what can be computed once is taken over.</summary>
    internal DeskState With(History<BenchStep> history) => new(history, Scene.With(history.Present.Plan));
}
