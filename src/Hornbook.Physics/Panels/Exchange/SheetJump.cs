using System.Numerics;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The jump that a sheet imposes on the field of a wave, as surface currents: Eq. panels (1) to (4).</summary>
internal static class SheetJump
{
    // Where a wave grazes the sheet, its tangential electric and magnetic fields differ without limit; the mixing of polarisations is kept finite.
    private const double SmallestCosine = 0.02;

    /// <summary>J and M of a wave that arrives on a face.</summary>
    /// <param name="response">What the sheet does.</param>
    /// <param name="face">The face.</param>
    /// <param name="normal">Out of the front face.</param>
    /// <param name="across">Along the sheet's own y; normal × across is its own z.</param>
    /// <param name="field">The field that arrives there.</param>
    /// <param name="electric">J [A/m].</param>
    /// <param name="magnetic">M [V/m].</param>
    internal static void Of(
        ISheetResponse response, SheetFace face, Vector normal, Vector across, in FieldSample field,
        out ComplexVector electric, out ComplexVector magnetic)
    {
        // Field in front less field behind: what passes less what stood there, for a wave that meets the back face; the opposite for the front.
        double sign = face == SheetFace.Back ? 1.0 : -1.0;
        if (response is Metal)
        {
            // Nothing passes and no electric field is left: only the magnetic one counts, from wherever it comes. Not a number counts as none, as below.
            (electric, magnetic) = (field.Magnetic.SquaredMagnitude > 0.0 ? ComplexVector.Cross(normal, field.Magnetic) * (-2.0 * sign) : default, default);
            return;
        }

        Vector flow = field.PowerDensity;
        double length = flow.Length;
        // Not a number where a cell of another panel stands exactly in this one: panels that cross hear nothing of each other there.
        if (!(length > 0.0))
        {
            (electric, magnetic) = (default, default);
            return;
        }

        Vector along = Vector.Cross(normal, across);
        (double u, double v) = (Vector.Dot(flow, across) / length, Vector.Dot(flow, along) / length);
        SheetMatrices sheet = response.Arriving(face, u, v);
        (Complex e1, Complex e2) = (field.Electric.Component(across), field.Electric.Component(along));
        (Complex h1, Complex h2) = (field.Magnetic.Component(across), field.Magnetic.Component(along));
        (Complex re1, Complex re2) = sheet.Reflection.Of(e1, e2);
        (Complex te1, Complex te2) = sheet.Transmission.Of(e1, e2);
        (Complex h1Jump, Complex h2Jump) = OnMagnetic(sheet.Reflection + sheet.Transmission, u, v, h1, h2);

        (Complex eJump1, Complex eJump2) = (sign * (te1 - e1 - re1), sign * (te2 - e2 - re2));
        (Complex hJump1, Complex hJump2) = (sign * (h1Jump - h1), sign * (h2Jump - h2));

        // n × (a u + b v) = a v − b u.
        electric = ComplexVector.Along(along, hJump1) + ComplexVector.Along(across, -hJump2);
        magnetic = ComplexVector.Along(along, -eJump1) + ComplexVector.Along(across, eJump2);
    }

    // The matrix of the tangential electric field, carried over to the magnetic one by the wave admittance: K D R D⁻¹ K⁻¹ with D = 1/cos within
    // the plane of incidence and cos across it, K a quarter turn in the sheet.
    private static (Complex Across, Complex Along) OnMagnetic(TangentialMatrix electric, double u, double v, Complex across, Complex along)
    {
        double squaredSine = (u * u) + (v * v);
        double squaredCosine = Math.Max(1.0 - squaredSine, SmallestCosine * SmallestCosine);
        double sine = Math.Sqrt(squaredSine);
        (double c, double s) = sine > 1e-9 ? (u / sine, v / sine) : (1.0, 0.0);
        TangentialMatrix m = electric.Turned(c, s);

        // Back by a quarter turn, through the sheet, forward by a quarter turn.
        Complex within = (along * c) - (across * s), beside = -((across * c) + (along * s));
        Complex magneticBeside = (m.AcrossAcross * within) + (m.AcrossAlong * beside / squaredCosine);
        Complex magneticWithin = -((m.AlongAcross * within * squaredCosine) + (m.AlongAlong * beside));
        return ((magneticWithin * c) - (magneticBeside * s), (magneticWithin * s) + (magneticBeside * c));
    }
}
