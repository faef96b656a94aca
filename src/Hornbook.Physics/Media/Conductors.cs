namespace Hornbook.Physics.Media;

/// <summary>The metals that are known by name.</summary>
/// <remarks>
/// Conductivities at 20 °C: [Pozar2012] appendix F. Alloys differ by a factor of two with their make-up; platings count only where they are
/// several skin depths thick (0.65 µm for copper at 10 GHz).
/// </remarks>
public static class Conductors
{
    /// <summary>All of them, best conductor first.</summary>
    public static IReadOnlyList<Conductor> All { get; } =
    [
        new("silver", 6.173e7),
        new("copper", 5.813e7),
        new("gold", 4.098e7),
        new("aluminium", 3.816e7),
        Conductor.Brass,
        new("zinc", 1.67e7),
        new("bronze", 1.00e7),
        new("solder", 7.0e6),
        new("stainless steel", 1.1e6),
    ];

    /// <summary>A metal by its name, in any case; null where the name is not known.</summary>
    public static Conductor? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(metal => string.Equals(metal.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
    }
}
