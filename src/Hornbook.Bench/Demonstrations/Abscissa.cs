namespace Hornbook.Bench.Demonstrations;

/// <summary>What is changed along a curve, and the unit in which people are shown it.</summary>
/// <param name="Name">What is changed, one word: "turn", "roll", "distance", "antenna", "held".</param>
/// <param name="Unit">Symbol of the unit shown: "deg", "cm"; empty for a count.</param>
/// <param name="PerSi">Shown units in one SI unit [-]; &gt; 0.</param>
public sealed record Abscissa(string Name, string Unit, double PerSi)
{
    /// <summary>A turn off the present direction, in degrees.</summary>
    public static Abscissa Turn { get; } = new("turn", "deg", 180.0 / Math.PI);

    /// <summary>A roll off the present one, in degrees.</summary>
    public static Abscissa Roll { get; } = new("roll", "deg", 180.0 / Math.PI);

    /// <summary>A distance from mouth to mouth, in centimetres.</summary>
    public static Abscissa Distance { get; } = new("distance", "cm", 100.0);

    /// <summary>The place of an antenna in the order shown, from 1.</summary>
    public static Abscissa Antenna { get; } = new("antenna", string.Empty, 1.0);

    /// <summary>The place of a panel in the order shown, from 0 for none.</summary>
    public static Abscissa Panel { get; } = new("panel", string.Empty, 1.0);

    /// <summary>One way of holding things after another, from 0.</summary>
    public static Abscissa Held { get; } = new("held", string.Empty, 1.0);

    /// <summary>The angle between a wave and the normal of the panel that it meets, in degrees.</summary>
    public static Abscissa Incidence { get; } = new("incidence", "deg", 180.0 / Math.PI);

    /// <summary>How far a thing is moved off its present place, in millimetres.</summary>
    public static Abscissa Shift { get; } = new("shift", "mm", 1000.0);

    /// <summary>From one panel to the next, in millimetres.</summary>
    public static Abscissa Gap { get; } = new("gap", "mm", 1000.0);

    /// <summary>How far a thing is swung about another off its present place, in degrees.</summary>
    public static Abscissa Swing { get; } = new("swing", "deg", 180.0 / Math.PI);

    /// <summary>From the middle of a panel to the mouth of the receiver, in centimetres.</summary>
    public static Abscissa FromPanel { get; } = new("from panel", "cm", 100.0);

    /// <summary>A number in SI units as it is shown.</summary>
    public double Shown(double si) => si * PerSi;
}
