using System.Numerics;
using Hornbook.Physics.Panels.Sheets.Strips;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>Strips on a board as a panel: what the bare board does, and what the currents of the strips add on both sides. Eq. strip-grids (12) and (13).</summary>
/// <param name="board">The bare board.</param>
/// <param name="strips">The face that the strips are on.</param>
/// <param name="currents">Of the strips.</param>
internal sealed class BoardedResponse(LayeredResponse board, SheetFace strips, StripCurrents currents) : ISheetResponse
{
    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        SheetMatrices bare = board.Arriving(strips, across, along, out Complex toMiddle);
        Complex toStrips = Complex.Conjugate(toMiddle);
        TangentialMatrix opened = TangentialMatrix.Identity + (bare.Reflection * toStrips);
        TangentialMatrix air = StripResponse.AirImpedance(across, along);
        TangentialMatrix radiated = air * currents.For(across, along, opened * air);
        if (face == strips)
        {
            TangentialMatrix field = radiated * opened;
            return new SheetMatrices(bare.Reflection + (opened * field * -toMiddle), bare.Transmission + (bare.Transmission * field * -1.0));
        }

        TangentialMatrix through = radiated * bare.Transmission;
        TangentialMatrix reflection = board.Arriving(face, across, along).Reflection;
        return new SheetMatrices(reflection + (bare.Transmission * through * -toStrips), bare.Transmission + (opened * through * -1.0));
    }
}
