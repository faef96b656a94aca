using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange.Legs;

/// <summary>Every sample summed at every observer.</summary>
/// <param name="part">What sends.</param>
/// <param name="observers">What receives.</param>
/// <param name="wavenumber">k [1/m].</param>
internal sealed class DirectLeg(Body part, Body observers, double wavenumber) : Leg
{
    /// <inheritdoc/>
    internal override void Add(CurrentSamples whole, FieldSample[] fields)
    {
        FieldSample[] own = new FieldSample[fields.Length];
        RadiatedField.EvaluateMap(part.Chosen(whole), wavenumber, observers.Points, own);
        for (int i = 0; i < own.Length; i++)
        {
            fields[i] = fields[i].Plus(own[i]);
        }
    }
}
