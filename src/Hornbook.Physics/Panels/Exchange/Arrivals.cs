using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The fields that arrive at the cells and the rim of a panel, by the face that they meet.</summary>
/// <remarks>
/// What comes from one side is added up before it is taken for a plane wave: behind a screen the wave and the shadow that cancels it must
/// meet first.
/// </remarks>
internal sealed class Arrivals
{
    private Arrivals(FieldSample[] front, FieldSample[] back, FieldSample[] frontRim, FieldSample[] backRim) =>
        (Front, Back, FrontRim, BackRim) = (front, back, frontRim, backRim);

    /// <summary>At the cells, from the side to which the front looks.</summary>
    internal FieldSample[] Front { get; }

    /// <summary>At the cells, from the other side.</summary>
    internal FieldSample[] Back { get; }

    /// <summary>At the feet on the rim, from the side to which the front looks.</summary>
    internal FieldSample[] FrontRim { get; }

    /// <summary>At the feet on the rim, from the other side.</summary>
    internal FieldSample[] BackRim { get; }

    /// <summary>Nothing arrives.</summary>
    internal static Arrivals None(int cells, int feet) => new(new FieldSample[cells], new FieldSample[cells], new FieldSample[feet], new FieldSample[feet]);

    /// <summary>The same in arrays of their own, to which more can be added.</summary>
    internal Arrivals Copy() => new([.. Front], [.. Back], [.. FrontRim], [.. BackRim]);

    /// <summary>At the cells, by the face.</summary>
    internal FieldSample[] Cells(SheetFace face) => face == SheetFace.Front ? Front : Back;

    /// <summary>At the feet on the rim, by the face.</summary>
    internal FieldSample[] Rim(SheetFace face) => face == SheetFace.Front ? FrontRim : BackRim;
}
