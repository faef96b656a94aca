using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The fields that arrive at the cells and the rim of a panel, by the face that they meet: first at the cells, then at the feet on the rim.</summary>
/// <remarks>
/// What comes from one side is added up before it is taken for a plane wave: behind a screen the wave and the shadow that cancels it must
/// meet first.
/// </remarks>
internal sealed class Arrivals
{
    private readonly int _count;
    private FieldSample[]? _front;
    private FieldSample[]? _back;

    private Arrivals(int count, FieldSample[]? front, FieldSample[]? back) => (_count, _front, _back) = (count, front, back);

    /// <summary>Nothing arrives.</summary>
    /// <param name="count">Cells and feet.</param>
    internal static Arrivals None(int count) => new(count, null, null);

    /// <summary>The same in arrays of their own, to which more can be added.</summary>
    internal Arrivals Copy() => new(_count, (FieldSample[]?)_front?.Clone(), (FieldSample[]?)_back?.Clone());

    /// <summary>Those that meet a face; none where nothing was ever added to it.</summary>
    internal ReadOnlySpan<FieldSample> On(SheetFace face) => face == SheetFace.Front ? _front : _back;

    /// <summary>Those that meet a face, to add to.</summary>
    internal FieldSample[] AddTo(SheetFace face) =>
        face == SheetFace.Front ? _front ??= new FieldSample[_count] : _back ??= new FieldSample[_count];
}
