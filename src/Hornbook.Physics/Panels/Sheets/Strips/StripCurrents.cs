using System.Numerics;
using System.Runtime.InteropServices;
using Hornbook.Physics.Panels.Sheets.Tables;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>The currents of a grid for every direction: the smooth part of the answer, to which the waves that travel are put back exactly. Immutable.</summary>
internal sealed class StripCurrents
{
    // Spacing over the distance to the nearest wave left in gives the error that the page on strip grids states.
    private const int Nodes = 25;

    // In air the equations have no answer for a wave that follows the strips exactly; the last millionth is extrapolated.
    private const double LargestSquare = 1.0 - 1e-6;

    private readonly StripEquations _equations;
    private readonly HybridRow _packed;
    private readonly SurfaceTable? _table;

    private StripCurrents(StripEquations equations, bool isTabulated)
    {
        _equations = equations;
        _packed = new HybridRow(equations.Waves);
        _table = isTabulated ? new SurfaceTable(Nodes, _packed.Length, (x, y, row) => Solve(x, y * LargestSquare, row)) : null;
    }

    /// <summary>Solves the equations anew for each direction.</summary>
    internal static StripCurrents Direct(StripEquations equations) => new(equations, isTabulated: false);

    /// <summary>Solves them on a square of directions once and reads between them.</summary>
    internal static StripCurrents Tabulated(StripEquations equations) => new(equations, isTabulated: true);

    /// <summary>The mean current for the tangential field that would stand in the plane of the strips without them, times the impedance of vacuum.</summary>
    /// <param name="across">k_u/k.</param>
    /// <param name="along">k_v/k.</param>
    /// <param name="impedance">Z of order 0.</param>
    internal TangentialMatrix For(double across, double along, in TangentialMatrix impedance)
    {
        // Mirrored at a plane across or along the strips, the grid is the same.
        double mirror = (across < 0.0) == (along < 0.0) ? 1.0 : -1.0;
        (double u, double v) = (Math.Abs(across), Math.Abs(along));
        TangentialMatrix current = _equations.Travelling == 0 ? OfOne(u, v, impedance.Mirrored(mirror)) : OfSeveral(u, v, impedance.Mirrored(mirror));
        return current.Mirrored(mirror);
    }

    private void Solve(double across, double squaredAlong, Span<double> row) => _packed.Pack(_equations.Admittance(across, squaredAlong), squaredAlong, row);

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

    // Eq. strip-grids (9).
    private TangentialMatrix OfOne(double u, double v, in TangentialMatrix z)
    {
        Span<Complex> row = stackalloc Complex[4];
        Read(u, v * v, MemoryMarshal.Cast<Complex, double>(row));
        (Complex across, Complex mixed, Complex along) = (row[0], row[1] * v, row[2]);
        TangentialMatrix left = new(
            1.0 + (across * z.AcrossAcross), (across * z.AcrossAlong) - mixed,
            z.AlongAcross + (mixed * z.AcrossAcross), along + z.AlongAlong + (mixed * z.AcrossAlong));
        return left.Inverse() * new TangentialMatrix(across, Complex.Zero, mixed, Complex.One);
    }

    // The same for all waves together; only the current of order 0 for a field of order 0 is asked for.
    private TangentialMatrix OfSeveral(double u, double v, in TangentialMatrix impedance)
    {
        int waves = _equations.Waves, size = 2 * waves, columns = size + 2, zero = _equations.Travelling, changed = waves + zero;
        Span<double> row = stackalloc double[_packed.Length];
        Read(u, v * v, row);
        Span<Complex> h = stackalloc Complex[size * size];
        _packed.Unpack(row, v, h);
        Span<Complex> system = stackalloc Complex[size * columns];
        system.Clear();
        Exchange(h, size, changed, system);
        for (int wave = 0; wave < waves; wave++)
        {
            TangentialMatrix z = wave == zero ? impedance : _equations.Impedance(wave - zero, u, v);
            for (int i = 0; i < size; i++)
            {
                (Complex across, Complex along) = (h[(i * size) + wave], h[(i * size) + waves + wave]);
                system[(i * columns) + wave] += (across * z.AcrossAcross) + (along * z.AlongAcross);
                system[(i * columns) + waves + wave] += (across * z.AcrossAlong) + (along * z.AlongAlong);
            }
        }

        for (int i = 0; i < size; i++)
        {
            system[(i * columns) + size] = h[(i * size) + zero];
            system[(i * columns) + size + 1] = h[(i * size) + changed];
        }

        SmallSystem.Solve(system, size, 2);
        ReadOnlySpan<Complex> first = system.Slice((zero * columns) + size, 2), second = system.Slice((changed * columns) + size, 2);
        return new TangentialMatrix(first[0], first[1], second[0], second[1]);
    }

    // What belongs to the currents goes to the left-hand side; what is left in h belongs to the fields.
    private static void Exchange(Span<Complex> h, int size, int changed, Span<Complex> system)
    {
        int columns = size + 2;
        for (int i = 0; i < size; i++)
        {
            ref Complex moved = ref h[(i * size) + changed];
            if (i == changed)
            {
                (system[(i * columns) + i], moved) = (moved, Complex.One);
            }
            else
            {
                system[(i * columns) + i] = Complex.One;
                (system[(i * columns) + changed], moved) = (-moved, Complex.Zero);
            }
        }
    }
}
