namespace Hornbook.Physics.Panels.Outlines.Shapes;

/// <summary>A rectangle; a slit is a long one.</summary>
public sealed class RectangleShape : CorneredShape
{
    /// <summary>A rectangle about a point.</summary>
    /// <param name="y">Centre along own y [m]; finite.</param>
    /// <param name="z">Centre along own z [m]; finite.</param>
    /// <param name="width">Along own y before the turn [m]; finite, &gt; 0.</param>
    /// <param name="height">Along own z before the turn [m]; finite, &gt; 0.</param>
    /// <param name="turn">Turned about its centre from own y towards own z [rad]; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public RectangleShape(double y, double z, double width, double height, double turn = 0.0)
        : base(Corners(
            new Vector(0.0, Require.Finite(y), Require.Finite(z)), Require.Positive(width), Require.Positive(height), Require.Finite(turn)))
    {
    }

    private static Vector[] Corners(Vector centre, double width, double height, double turn)
    {
        (double sin, double cos) = Math.SinCos(turn);
        Vector across = new Vector(0.0, cos, sin) * (0.5 * width);
        Vector along = new Vector(0.0, -sin, cos) * (0.5 * height);
        return [centre - across - along, centre + across - along, centre + across + along, centre - across + along];
    }
}
