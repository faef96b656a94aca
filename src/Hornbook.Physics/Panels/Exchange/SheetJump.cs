using System.Numerics;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>The jump that a sheet imposes on the field of a wave of one direction, as surface currents: Eq. panels (1) to (4). None where no wave arrives.</summary>
internal readonly struct SheetJump
{
    // Where a wave grazes the sheet, its tangential electric and magnetic fields differ without limit; the mixing of polarisations is kept finite.
    private const double SmallestCosine = 0.02;

    private readonly SheetMatrices _sheet;
    private readonly double _u;
    private readonly double _v;

    // Field in front less field behind: what passes less what stood there, for a wave that meets the back face; the opposite for the front.
    private readonly double _sign;

    private SheetJump(SheetMatrices sheet, double u, double v, double sign) => (_sheet, _u, _v, _sign) = (sheet, u, v, sign);

    /// <summary>For waves that travel as a field does whose power arrives on a face.</summary>
    /// <param name="response">What the sheet does.</param>
    /// <param name="face">The face.</param>
    /// <param name="normal">Out of the front face.</param>
    /// <param name="across">Along the sheet's own y; normal × across is its own z.</param>
    /// <param name="field">The field that arrives there.</param>
    internal static SheetJump Of(ISheetResponse response, SheetFace face, Vector normal, Vector across, in FieldSample field)
    {
        Vector flow = field.PowerDensity;
        double length = flow.Length;
        // Not a number where a cell of another panel stands exactly in this one: panels that cross hear nothing of each other there.
        if (!(length > 0.0))
        {
            return default;
        }

        (double u, double v) = (Vector.Dot(flow, across) / length, Vector.Dot(flow, Vector.Cross(normal, across)) / length);
        return new SheetJump(response.Arriving(face, u, v), u, v, face == SheetFace.Back ? 1.0 : -1.0);
    }

    /// <summary>J and M of such a wave.</summary>
    /// <param name="normal">Out of the front face.</param>
    /// <param name="across">Along the sheet's own y.</param>
    /// <param name="field">Its field.</param>
    /// <param name="electric">J [A/m].</param>
    /// <param name="magnetic">M [V/m].</param>
    internal void Of(Vector normal, Vector across, in FieldSample field, out ComplexVector electric, out ComplexVector magnetic)
    {
        if (_sign == 0.0)
        {
            (electric, magnetic) = (default, default);
            return;
        }

        Vector along = Vector.Cross(normal, across);
        (Complex e1, Complex e2) = (field.Electric.Component(across), field.Electric.Component(along));
        (Complex h1, Complex h2) = (field.Magnetic.Component(across), field.Magnetic.Component(along));
        (Complex re1, Complex re2) = _sheet.Reflection.Of(e1, e2);
        (Complex te1, Complex te2) = _sheet.Transmission.Of(e1, e2);
        (Complex h1Jump, Complex h2Jump) = OnMagnetic(_sheet.Reflection + _sheet.Transmission, _u, _v, h1, h2);
        (Complex eJump1, Complex eJump2) = (_sign * (te1 - e1 - re1), _sign * (te2 - e2 - re2));
        (Complex hJump1, Complex hJump2) = (_sign * (h1Jump - h1), _sign * (h2Jump - h2));

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
