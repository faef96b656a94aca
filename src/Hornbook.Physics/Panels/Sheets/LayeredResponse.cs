using System.Numerics;
using System.Runtime.InteropServices;
using Hornbook.Physics.Panels.Sheets.Tables;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>Layers in a row as a panel, the same in every direction along it: tabulated over cos θ once, then read.</summary>
/// <remarks>
/// Tabulated are the elements of the transfer matrices, which have neither poles nor branches, so that reflection and transmission keep their exact form
/// up to grazing and thin films need no more nodes than thick ones. Eq. sheets (5) and (6).
/// </remarks>
internal sealed class LayeredResponse : ISheetResponse
{
    // Of the largest element; ten times less than what the page promises of R and T.
    private const double Tolerance = 1e-7;

    private readonly CurveTable _table;
    private readonly double _scale;

    /// <summary>Tabulates a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="frequency">f [Hz].</param>
    internal LayeredResponse(LayeredSheet sheet, double frequency)
    {
        double phase = FreeSpace.Wavenumber(frequency) * sheet.Thickness;
        _scale = 2.0 * Math.Exp(LayeredTransfer.LogScale(sheet.Layers, frequency));
        _table = CurveTable.Of(Marshal.SizeOf<Elements>() / sizeof(double), Fill, Tolerance);

        void Fill(double cosine, Span<double> values) => MemoryMarshal.Cast<double, Elements>(values)[0] = new Elements(
            LayeredTransfer.Of(sheet.Layers, frequency, cosine, Polarisation.Across),
            LayeredTransfer.Of(sheet.Layers, frequency, cosine, Polarisation.Within),
            Complex.Exp(new Complex(0.0, phase * cosine)),
            default);
    }

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along) => Arriving(face, across, along, out _);

    /// <summary>The same, and the factor e^{jkD cos θ} from both faces to the middle plane.</summary>
    internal SheetMatrices Arriving(SheetFace face, double across, double along, out Complex toMiddle)
    {
        double cosine = IncidencePlane.Cosine(across, along);
        Elements elements = default;
        _table.Read(cosine, MemoryMarshal.Cast<Elements, double>(new Span<Elements>(ref elements)));
        toMiddle = elements.ToMiddle;
        Complex passed = _scale * cosine * toMiddle;

        (Complex beside, Complex overBeside) = Outside(elements.Across, face, cosine, 1.0, cosine * cosine);
        (Complex within, Complex overWithin) = Outside(elements.Within, face, cosine, cosine * cosine, 1.0);
        (Complex passedBeside, Complex passedWithin) = (passed * overBeside, passed * overWithin);
        (Complex thrownBeside, Complex thrownWithin) = (toMiddle * beside * overBeside, toMiddle * within * overWithin);
        return new SheetMatrices(
            IncidencePlane.Matrix(thrownBeside, thrownWithin, across, along), IncidencePlane.Matrix(passedBeside, passedWithin, across, along));
    }

    // Numerator of R times cos θ, and one over its denominator so, for an admittance of air with these weights of C and B.
    private static (Complex Difference, Complex OverSum) Outside(in LayeredTransfer m, SheetFace face, double cosine, double forC, double forB)
    {
        Complex skew = (face == SheetFace.Back ? m.A - m.D : m.D - m.A) * cosine;
        Complex whole = (m.A + m.D) * cosine;
        (Complex b, Complex c) = (m.B * forB, m.C * forC);
        Complex sum = whole + b + c;
        return (skew + b - c, Complex.Conjugate(sum) * (1.0 / ((sum.Real * sum.Real) + (sum.Imaginary * sum.Imaginary))));
    }

    // As one row of the table; filled up to a multiple of four numbers.
    [StructLayout(LayoutKind.Sequential)]
    private readonly record struct Elements(LayeredTransfer Across, LayeredTransfer Within, Complex ToMiddle, Complex Unused);
}
