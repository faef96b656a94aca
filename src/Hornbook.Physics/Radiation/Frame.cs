namespace Hornbook.Physics.Radiation;

/// <summary>A pose worked out into its origin and axes: the sines and cosines are taken once for many points.</summary>
internal readonly record struct Frame(Vector Origin, Vector Forward, Vector Left, Vector Up)
{
    /// <summary>The frame of a pose, in the bench frame.</summary>
    internal static Frame Of(Pose pose) => new(pose.Position, pose.Forward, pose.Left, pose.Up);

    /// <summary>This frame as another one sees it; both given in the same third frame.</summary>
    internal Frame SeenFrom(Frame other) =>
        new(other.Components(Origin - other.Origin), other.Components(Forward), other.Components(Left), other.Components(Up));

    /// <summary>A point of this frame, in the frame that this one is given in.</summary>
    internal Vector Place(Vector own) => Origin + Turn(own);

    /// <summary>A direction of this frame, in the frame that this one is given in.</summary>
    internal Vector Turn(Vector own) => (Forward * own.X) + (Left * own.Y) + (Up * own.Z);

    /// <summary>A phasor of this frame, in the frame that this one is given in.</summary>
    internal ComplexVector Turn(ComplexVector own) =>
        ComplexVector.Along(Forward, own.X) + ComplexVector.Along(Left, own.Y) + ComplexVector.Along(Up, own.Z);

    /// <summary>The fields of this frame, in the frame that this one is given in.</summary>
    internal FieldSample Turn(in FieldSample own) => new(Turn(own.Electric), Turn(own.Magnetic));

    /// <summary>A point of the frame that this one is given in, in this frame.</summary>
    internal Vector Own(Vector place) => Components(place - Origin);

    /// <summary>A phasor of the frame that this one is given in, in this frame.</summary>
    internal ComplexVector Own(ComplexVector phasor) => new(phasor.Component(Forward), phasor.Component(Left), phasor.Component(Up));

    private Vector Components(Vector v) => new(Vector.Dot(v, Forward), Vector.Dot(v, Left), Vector.Dot(v, Up));
}
