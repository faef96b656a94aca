using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>How the field of a part of a body comes to one face of a panel. Geometry only. Immutable.</summary>
internal abstract class Leg
{
    /// <summary>The quickest way of a part of a body to a panel.</summary>
    /// <param name="part">What sends.</param>
    /// <param name="panel">What receives.</param>
    /// <param name="wavenumber">k [1/m].</param>
    /// <param name="use">How often it will be gone, and what for.</param>
    internal static Leg Of(Body part, PanelInPlace panel, double wavenumber, WayUse use) =>
        (long)part.Points.Length * panel.Observers.Points.Length <= use.FewPairs ? new DirectLeg(part, panel.Observers, wavenumber)
        : LatticeLeg.Between(part, panel, wavenumber, use) is { } even ? even
        : new SortedLeg(part, panel, wavenumber, use);

    /// <summary>Adds the field of the part's share of currents to the fields at the panel's cells and rim.</summary>
    /// <param name="whole">Of the whole body.</param>
    /// <param name="fields">At the panel's <see cref="PanelInPlace.Observers"/>.</param>
    internal abstract void Add(CurrentSamples whole, FieldSample[] fields);
}
