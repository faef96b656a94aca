namespace Hornbook.Physics.Radiation.Lattices;

/// <summary>Places in even rows and columns of a plane, as the cells of a rectangular panel are. Immutable.</summary>
/// <param name="First">The first place [m].</param>
/// <param name="Column">From a place to the next one of its row [m].</param>
/// <param name="Row">From a row to the next one [m].</param>
/// <param name="Columns">Places in a row; at least two.</param>
/// <param name="Rows">Rows; at least two.</param>
internal sealed record Lattice(Vector First, Vector Column, Vector Row, int Columns, int Rows)
{
    // Of a step: with steps of a fraction of a wavelength, a place so far off has its phase wrong by a millionth of a radian or so.
    private const double Evenness = 1e-6;

    /// <summary>How many places.</summary>
    internal int Count => Columns * Rows;

    /// <summary>Its middle [m].</summary>
    internal Vector Middle => First + (Column * (0.5 * (Columns - 1))) + (Row * (0.5 * (Rows - 1)));

    /// <summary>Its longer side [m].</summary>
    internal double Side => Math.Max(Column.Length * Columns, Row.Length * Rows);

    /// <summary>Out of its plane, of length one.</summary>
    internal Vector Normal => Vector.Cross(Column, Row) * (1.0 / Vector.Cross(Column, Row).Length);

    /// <summary>Whether a quarter turn about its middle takes it into itself; half a turn always does.</summary>
    internal bool IsSquare => Columns == Rows && IsNear(Vector.Cross(Normal, Column) * Columns, Row * Rows, this);

    /// <summary>The lattice on which points lie, row after row; null where they lie on none.</summary>
    internal static Lattice? Of(ReadOnlySpan<Vector> points)
    {
        int columns = RowLength(points);
        if (columns < 2 || points.Length < 2 * columns || points.Length % columns != 0)
        {
            return null;
        }

        int rows = points.Length / columns;
        Lattice lattice = new(
            points[0], (points[columns - 1] - points[0]) * (1.0 / (columns - 1)), (points[^columns] - points[0]) * (1.0 / (rows - 1)), columns, rows);
        return lattice.Holds(points) ? lattice : null;
    }

    /// <summary>The place in a column of a row [m].</summary>
    internal Vector Place(int column, int row) => First + (Column * column) + (Row * row);

    /// <summary>Where a place goes when all are turned about the middle, from columns to rows.</summary>
    /// <param name="place">Its number, row after row.</param>
    /// <param name="quarters">Of a turn; 0 and 2, and 1 and 3 where it <see cref="IsSquare"/>.</param>
    internal int Turned(int place, int quarters)
    {
        (int column, int row) = (place % Columns, place / Columns);
        return quarters switch
        {
            0 => place,
            1 => (column * Columns) + Columns - 1 - row,
            2 => Count - 1 - place,
            _ => ((Columns - 1 - column) * Columns) + row,
        };
    }

    /// <summary>The same places counted so that the steps are those of another lattice: null where they are not, whichever end is counted from.</summary>
    internal Lattice? CountedAs(Lattice other)
    {
        Lattice columns = Vector.Dot(Column, other.Column) < 0.0 ? this with { First = Place(Columns - 1, 0), Column = -Column } : this;
        Lattice both = Vector.Dot(Row, other.Row) < 0.0 ? columns with { First = columns.Place(0, Rows - 1), Row = -Row } : columns;
        return IsNear(both.Column * Columns, other.Column * Columns, other) && IsNear(both.Row * Rows, other.Row * Rows, other) ? both : null;
    }

    /// <summary>The same lattice, which was found in a frame of its own, held in a pose.</summary>
    /// <param name="pose">That frame as the bench sees it.</param>
    internal Lattice Posed(Frame pose) => this with { First = pose.Place(First), Column = pose.Turn(Column), Row = pose.Turn(Row) };

    private static bool IsNear(Vector a, Vector b, Lattice lattice) => (a - b).Length <= Evenness * Math.Min(lattice.Column.Length, lattice.Row.Length);

    private static int RowLength(ReadOnlySpan<Vector> points)
    {
        int length = Math.Min(2, points.Length);
        while (length < points.Length && (points[length] - points[length - 1] - points[1] + points[0]).Length <= Evenness * (points[1] - points[0]).Length)
        {
            length++;
        }

        return length;
    }

    private bool Holds(ReadOnlySpan<Vector> points)
    {
        for (int i = 0; i < points.Length; i++)
        {
            if (!IsNear(points[i], Place(i % Columns, i / Columns), this))
            {
                return false;
            }
        }

        return true;
    }
}
