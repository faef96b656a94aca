using System.Numerics;
using Hornbook.Physics.Panels.Sheets.Tables;
using Hornbook.Physics.Panels.Sheets.Wires;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A grid of round wires as a panel.</summary>
internal sealed class WireResponse : ISheetResponse
{
    // Thick wires far apart resonate with the waves left out, and what is left is not smooth; found by trying sizes.
    private const double LargestTabulated = 0.65;
    private const double LargestTabulatedThin = 1.2;
    private const double ThinShare = 0.2;
    private const int Nodes = 25;

    // A wave that follows the wires has no wave across them; the last millionth is extrapolated.
    private const double LargestSquare = 1.0 - 1e-6;

    private readonly WireEquations _equations;
    private readonly WireRow _packed;
    private readonly SurfaceTable? _table;

    private WireResponse(WireEquations equations, bool isTabulated)
    {
        _equations = equations;
        _packed = new WireRow(equations.Waves);
        _table = isTabulated ? new SurfaceTable(Nodes, _packed.Length, (x, y, row) => Solve(x, y * LargestSquare, row)) : null;
    }

    /// <summary>Tabulated where what is left is smooth.</summary>
    internal static WireResponse Of(WireEquations equations) =>
        new(equations, equations.Period <= LargestTabulated || (equations.Share <= ThinShare && equations.Period <= LargestTabulatedThin));

    /// <summary>Solved for each direction.</summary>
    internal static WireResponse Direct(WireEquations equations) => new(equations, isTabulated: false);

    /// <inheritdoc/>
    public SheetMatrices Arriving(SheetFace face, double across, double along)
    {
        Span<double> row = stackalloc double[_packed.Length];
        double squaredAlong = Math.Min(along * along, LargestSquare);
        Read(Math.Min(Math.Abs(across), 1.0), squaredAlong, row);
        Span<Complex> normals = stackalloc Complex[_equations.Waves];
        Span<double> quiet = stackalloc double[_equations.Waves];
        RowWaves waves = new(_equations.Period, Math.Abs(across), along, normals, quiet);

        // Eq. wire-grids (12) and (13).
        (Complex even, Complex odd) = (_packed.Left(WireField.ElectricEven, row, waves), _packed.Left(WireField.ElectricOdd, row, waves));
        (Complex thrown, Complex passed) = (even - odd, even + odd - 1.0);
        (even, odd) = (_packed.Left(WireField.MagneticEven, row, waves), _packed.Left(WireField.MagneticOdd, row, waves));
        (Complex magneticThrown, Complex magneticPassed) = (even - odd, even + odd - 1.0);
        double skew = -across * along / (1.0 - squaredAlong);
        return new SheetMatrices(
            new TangentialMatrix(-magneticThrown, skew * (thrown + magneticThrown), Complex.Zero, thrown),
            new TangentialMatrix(magneticPassed, skew * (passed - magneticPassed), Complex.Zero, passed));
    }

    private void Read(double across, double squaredAlong, Span<double> row)
    {
        if (_table is null)
        {
            Solve(across, squaredAlong, row);
        }
        else
        {
            _table.Read(across, squaredAlong / LargestSquare, row);
        }
    }

    private void Solve(double across, double squaredAlong, Span<double> row) => _packed.Pack(_equations.Exchange(across, squaredAlong), row);
}
