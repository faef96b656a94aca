using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Tabletop.Desk;

namespace Hornbook.Tabletop;

/// <summary>A desk with something in hand, of which it is asked what is read.</summary>
/// <param name="Desk">The desk.</param>
/// <param name="Source">The sending end as held or as it lies.</param>
/// <param name="Receiver">The receiving end as held or as it lies.</param>
/// <param name="Panels">The panels as held or as they lie.</param>
/// <param name="InHand">Whether something is held.</param>
internal sealed record Moment(DeskState Desk, SourceEnd Source, ReceiverEnd Receiver, IReadOnlyList<BenchPanel> Panels, bool InHand)
{
    /// <summary>What is read now, and what was before the present move, or the last one when nothing is in hand.</summary>
    internal ReadMoment Read() => InHand
        ? new ReadMoment(Desk.Scene.ReadInHand(Source, Receiver, Panels), Desk.Reading)
        : new ReadMoment(Desk.Reading, Desk.Before);
}

/// <summary>What is read, and what was.</summary>
/// <param name="Now">Now.</param>
/// <param name="Before">Before the move; null where there was none.</param>
internal sealed record ReadMoment(Reading Now, Reading? Before);
