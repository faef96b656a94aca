namespace Hornbook.Physics;

/// <summary>A vector in three dimensions: a place [m] or a direction [-] in a right-handed frame.</summary>
/// <param name="X">Along the bench, from the source.</param>
/// <param name="Y">Across the bench, to the left of one who looks along x.</param>
/// <param name="Z">Up from the table top.</param>
public readonly record struct Vector(double X, double Y, double Z)
{
    /// <summary>The origin.</summary>
    public static Vector Zero => default;

    /// <summary>Along x: where a thing in its own frame looks.</summary>
    public static Vector UnitX => new(1.0, 0.0, 0.0);

    /// <summary>Along y: to the left of a thing in its own frame.</summary>
    public static Vector UnitY => new(0.0, 1.0, 0.0);

    /// <summary>Along z: up, the electric field of a thing in its own frame.</summary>
    public static Vector UnitZ => new(0.0, 0.0, 1.0);

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt(Dot(this, this));

    /// <summary>The vector of length one in the same direction; NaN for the zero vector.</summary>
    public Vector Unit => this * (1.0 / Length);

    /// <summary>Inner product.</summary>
    public static double Dot(Vector a, Vector b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    /// <summary>Vector product a × b.</summary>
    public static Vector Cross(Vector a, Vector b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    /// <summary>Sum.</summary>
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite.</summary>
    public static Vector operator -(Vector a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled by a number.</summary>
    public static Vector operator *(Vector a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    /// <summary>"(x, y, z)".</summary>
    /// <remarks>Said here because the text that a record makes of itself would print <see cref="Unit"/>, whose text prints its own, for ever.</remarks>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");
}
