using System.Numerics;
using System.Runtime.InteropServices;
using Hornbook.Physics.Panels.Sheets.Strips;
using Hornbook.Physics.Panels.Sheets.Tables;
using Hornbook.Physics.Panels.Sheets.Wires;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A grid of round wires as a panel.</summary>
internal sealed class WireResponse : ISheetResponse
{
    // Beyond, a second beam is near for some direction, and nothing is smooth.
    private const double LargestTabulated = 0.4;
    private const int Nodes = 25;

    // A wave that follows the wires has no wave across them.
    private const double LargestSquare = 1.0 - 1e-6;

    private readonly double _period;
    private readonly double _radius;
    private readonly SurfaceTable? _table;

    private WireResponse(WireGrid grid, double frequency, bool isTabulated)
    {
        double waves = frequency / Constants.SpeedOfLight;
        (_period, _radius) = (grid.Period * waves, 0.5 * grid.Diameter * waves);
        _table = isTabulated ? new SurfaceTable(Nodes, 8, (x, y, row) => Solve(x, y * LargestSquare, MemoryMarshal.Cast<double, Complex>(row))) : null;
    }

    /// <summary>Tabulated where that is exact.</summary>
    internal static WireResponse Of(WireGrid grid, double frequency) =>
        new(grid, frequency, grid.Period * frequency / Constants.SpeedOfLight < LargestTabulated);

    /// <summary>Solved for each direction.</summary>
    internal static WireResponse Direct(WireGrid grid, double frequency) => new(grid, frequency, isTabulated: false);

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        double square = Math.Min(along * along, LargestSquare);
        Span<Complex> row = stackalloc Complex[4];
        if (_table is null)
        {
            Solve(Math.Abs(across), square, row);
        }
        else
        {
            _table.Read(Math.Abs(across), square / LargestSquare, MemoryMarshal.Cast<Complex, double>(row));
        }

        Complex cosine = SheetNormal.Of((across * across) + (along * along));
        (Complex electricEven, Complex electricOdd) = (-Wave(cosine, row[0]), Wave(cosine, row[1]));
        (Complex magneticEven, Complex magneticOdd) = (Wave(1.0 / cosine, row[2]), Wave(cosine, row[3]));
        double skew = -across * along / (1.0 - square);
        return new SheetMatrices(
            Tangential(0.5 * (magneticOdd - magneticEven), 0.5 * (electricEven - electricOdd), skew),
            Tangential(0.5 * (magneticEven + magneticOdd), 0.5 * (electricEven + electricOdd), skew));
    }

    // Eq. wire-grids (6): T + R and T − R from what is smooth.
    private static Complex Wave(Complex cosine, Complex smooth)
    {
        Complex q = Complex.ImaginaryOne * cosine * smooth;
        return (1.0 - q) / (1.0 + q);
    }

    // Eq. wire-grids (7): H_v makes a field across the wires alone, E_v one along them and its share across.
    private static TangentialMatrix Tangential(Complex ofMagnetic, Complex ofElectric, double skew) =>
        new(ofMagnetic, skew * (ofElectric - ofMagnetic), Complex.Zero, ofElectric);

    private void Solve(double across, double squaredAlong, Span<Complex> row)
    {
        (WireScattering electric, WireScattering magnetic) = WireScattering.Of(_period, _radius, across, squaredAlong);
        Complex turned = Complex.ImaginaryOne * SheetNormal.Of((across * across) + squaredAlong);
        row[0] = 1.0 / (Quotient(electric.Passed + electric.Reflected) * turned);
        row[1] = Quotient(electric.Passed - electric.Reflected) / turned;
        row[2] = -Quotient(magnetic.Passed + magnetic.Reflected) * turned;
        row[3] = Quotient(magnetic.Passed - magnetic.Reflected) / turned;
    }

    private static Complex Quotient(Complex wave) => (1.0 - wave) / (1.0 + wave);
}
