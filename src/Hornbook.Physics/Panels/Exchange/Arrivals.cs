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
    private Arrivals(FieldSample[] front, FieldSample[] back) => (Front, Back) = (front, back);

    /// <summary>From the side to which the front looks.</summary>
    internal FieldSample[] Front { get; }

    /// <summary>From the other side.</summary>
    internal FieldSample[] Back { get; }

    /// <summary>Nothing arrives.</summary>
    /// <param name="count">Cells and feet.</param>
    internal static Arrivals None(int count) => new(new FieldSample[count], new FieldSample[count]);

    /// <summary>The same in arrays of their own, to which more can be added.</summary>
    internal Arrivals Copy() => new([.. Front], [.. Back]);

    /// <summary>Those that meet a face.</summary>
    internal FieldSample[] On(SheetFace face) => face == SheetFace.Front ? Front : Back;
}
