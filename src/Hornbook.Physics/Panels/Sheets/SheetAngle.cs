using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What a sheet makes of the power of a plane wave from one direction, for both lies of its electric field.</summary>
/// <param name="Angle">Between the wave and the normal [rad].</param>
/// <param name="Beside">Of a wave with its field across the plane of incidence.</param>
/// <param name="Within">Of a wave with its field within it.</param>
/// <param name="Scatters">Whether a second beam leaves: power goes astray.</param>
public sealed record SheetAngle(double Angle, SheetResponse Beside, SheetResponse Within, bool Scatters)
{
    /// <summary>A direction tilted across the strips or along them; for a sheet that is alike in both, either.</summary>
    /// <param name="sheet">The sheet, in its own frame.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="angle">Between the wave and the normal [rad]; 0 to just below 90°.</param>
    /// <param name="alongStrips">Whether the plane of incidence holds the strips. Then the field within it lies along them, else the field beside it does.</param>
    /// <param name="face">The face that the wave meets.</param>
    public static SheetAngle Of(ISheet sheet, double frequency, double angle, bool alongStrips = false, SheetFace face = SheetFace.Front)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        double sine = Math.Sin(Incidence.Checked(angle));
        (double across, double along) = alongStrips ? (0.0, sine) : (sine, 0.0);
        SheetMatrices matrices = sheet.At(frequency).Arriving(face, across, along);
        SheetResponse Own(Func<TangentialMatrix, Complex> own) => new(own(matrices.Reflection), own(matrices.Transmission));
        SheetResponse fieldAlong = Own(matrix => matrix.AlongAlong), fieldAcross = Own(matrix => matrix.AcrossAcross);
        bool scatters = sheet.Scatters(frequency, across, along);
        return alongStrips ? new SheetAngle(angle, fieldAcross, fieldAlong, scatters) : new SheetAngle(angle, fieldAlong, fieldAcross, scatters);
    }
}
