namespace Hornbook.Physics;

/// <summary>Where a thing stands and how it is held: conventions C2 to C4.</summary>
/// <remarks>
/// At rest a thing looks along +x with its electric field along +z. It is rolled about its own axis (right-handed),
/// then tilted (positive lifts the axis towards +z), then turned about z (positive to the left), and put at its place:
/// v_bench = position + Rz(turn) Ry(−tilt) Rx(roll) v_own.
/// </remarks>
public readonly record struct Pose
{
    /// <summary>A pose.</summary>
    /// <param name="position">Place in the bench frame [m]; finite.</param>
    /// <param name="turn">About z, positive to the left [rad]; finite.</param>
    /// <param name="tilt">Up [rad]; finite.</param>
    /// <param name="roll">About its own axis, right-handed [rad]; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    public Pose(Vector position, double turn = 0.0, double tilt = 0.0, double roll = 0.0)
    {
        Position = new Vector(Require.Finite(position.X), Require.Finite(position.Y), Require.Finite(position.Z));
        Turn = Require.Finite(turn);
        Tilt = Require.Finite(tilt);
        Roll = Require.Finite(roll);
    }

    /// <summary>Place in the bench frame [m].</summary>
    public Vector Position { get; init; }

    /// <summary>About z, positive to the left [rad].</summary>
    public double Turn { get; init; }

    /// <summary>Up [rad].</summary>
    public double Tilt { get; init; }

    /// <summary>About its own axis, right-handed [rad].</summary>
    public double Roll { get; init; }

    /// <summary>Its own x axis, where it looks, in the bench frame.</summary>
    public Vector Forward => new(Math.Cos(Tilt) * Math.Cos(Turn), Math.Cos(Tilt) * Math.Sin(Turn), Math.Sin(Tilt));

    /// <summary>Its own y axis in the bench frame.</summary>
    public Vector Left
    {
        get
        {
            (Vector y, Vector z) = Unrolled();
            return (y * Math.Cos(Roll)) + (z * Math.Sin(Roll));
        }
    }

    /// <summary>Its own z axis, the direction of its electric field, in the bench frame.</summary>
    public Vector Up
    {
        get
        {
            (Vector y, Vector z) = Unrolled();
            return (z * Math.Cos(Roll)) - (y * Math.Sin(Roll));
        }
    }

    /// <summary>A direction of its own frame, in the bench frame.</summary>
    public Vector Rotate(Vector own) => (Forward * own.X) + (Left * own.Y) + (Up * own.Z);

    /// <summary>A point of its own frame, in the bench frame.</summary>
    public Vector ToBench(Vector own) => Position + Rotate(own);

    /// <summary>A point of the bench frame, in its own frame.</summary>
    public Vector ToOwn(Vector bench)
    {
        Vector d = bench - Position;
        return new Vector(Vector.Dot(d, Forward), Vector.Dot(d, Left), Vector.Dot(d, Up));
    }

    private (Vector Y, Vector Z) Unrolled() => (
        new Vector(-Math.Sin(Turn), Math.Cos(Turn), 0.0),
        new Vector(-Math.Sin(Tilt) * Math.Cos(Turn), -Math.Sin(Tilt) * Math.Sin(Turn), Math.Cos(Tilt)));
}
