namespace Hornbook.Physics.Exposure;

/// <summary>Power density on a grid of square cells across the axis, in front of a mouth.</summary>
internal sealed class DensityPlane
{
    private readonly Vector[] _centres;
    private readonly double[] _densities;
    private readonly int _columns;
    private readonly int _rows;

    private DensityPlane(Vector[] centres, double[] densities, int columns, int cellsPerSide)
    {
        _centres = centres;
        _densities = densities;
        _columns = columns;
        _rows = centres.Length / columns;
        CellsPerSide = cellsPerSide;
    }

    /// <summary>How many cells make a side of the averaging square.</summary>
    internal int CellsPerSide { get; }

    /// <summary>A plane at a distance that reaches half an averaging square beyond the mouth on every side.</summary>
    /// <remarks>Computed in one quarter: a TE10 mouth is the same seen in a mirror left to right and top to bottom.</remarks>
    internal static DensityPlane Across(ExposureField field, double distance, double cell, int cellsPerSide)
    {
        int halfColumns = HalfCount(field.Antenna.Shape.MouthWidth, cell, cellsPerSide);
        int halfRows = HalfCount(field.Antenna.Shape.MouthHeight, cell, cellsPerSide);
        Vector[] quarter = new Vector[halfColumns * halfRows];
        for (int i = 0; i < quarter.Length; i++)
        {
            quarter[i] = new Vector(distance, ((i % halfColumns) + 0.5) * cell, ((i / halfColumns) + 0.5) * cell);
        }

        double[] quarterDensities = new double[quarter.Length];
        field.Densities(quarter, quarterDensities);
        int columns = 2 * halfColumns, rows = 2 * halfRows;
        Vector[] centres = new Vector[columns * rows];
        double[] densities = new double[columns * rows];
        for (int i = 0; i < centres.Length; i++)
        {
            int column = (i % columns) - halfColumns, row = (i / columns) - halfRows;
            centres[i] = new Vector(distance, (column + 0.5) * cell, (row + 0.5) * cell);
            densities[i] = quarterDensities[(Mirrored(row) * halfColumns) + Mirrored(column)];
        }

        return new DensityPlane(centres, densities, columns, cellsPerSide);
    }

    /// <summary>The largest mean over a square of so many cells a side, and the square's centre.</summary>
    internal (double Density, Vector Centre) Largest(int cells)
    {
        (double Density, Vector Centre) largest = (0.0, Vector.Zero);
        for (int row = 0; row + cells <= _rows; row++)
        {
            for (int column = 0; column + cells <= _columns; column++)
            {
                double mean = Mean(row, column, cells);
                if (mean > largest.Density)
                {
                    Vector first = _centres[(row * _columns) + column];
                    Vector last = _centres[((row + cells - 1) * _columns) + column + cells - 1];
                    largest = (mean, (first + last) * 0.5);
                }
            }
        }

        return largest;
    }

    private static int HalfCount(double size, double cell, int margin) => (int)Math.Ceiling((0.5 * size / cell) + (0.5 * margin));

    // −1 is the mirror image of 0, −2 of 1.
    private static int Mirrored(int index) => index >= 0 ? index : -1 - index;

    private double Mean(int row, int column, int cells)
    {
        double sum = 0.0;
        for (int i = 0; i < cells; i++)
        {
            for (int j = 0; j < cells; j++)
            {
                sum += _densities[((row + i) * _columns) + column + j];
            }
        }

        return sum / (cells * cells);
    }
}
