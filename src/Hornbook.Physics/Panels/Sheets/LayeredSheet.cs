using System.Numerics;
using Hornbook.Physics.Panels.Sheets.Tables;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>Flat layers in a row, with air on both sides: a sheet of plastic, a window, two half mirrors. Equal to another of equal layers.</summary>
public sealed class LayeredSheet : ISheet, IEquatable<LayeredSheet>
{
    private static readonly Recent<(LayeredSheet Sheet, double Frequency), LayeredResponse> Known = new(32);

    private readonly Layer[] _layers;

    /// <summary>A sheet.</summary>
    /// <param name="layers">In the order in which the wave meets them; ≥ 1.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    public LayeredSheet(params IReadOnlyList<Layer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        _layers = layers.Count > 0 ? [.. layers] : throw new ArgumentException("layers = 0; must be at least 1", nameof(layers));
    }

    /// <summary>The layers, in the order in which the wave meets them.</summary>
    public IReadOnlyList<Layer> Layers => _layers;

    /// <summary>All layers together [m].</summary>
    public double Thickness => _layers.Sum(layer => layer.Thickness);

    /// <inheritdoc/>
    /// <remarks>The front face is that of the last layer: a wave along +x meets the first layer first. Read from a table, within 1e-6 of the sheet at each angle.</remarks>
    public ISheetResponse At(double frequency) => Tabulated(Require.Positive(frequency));

    /// <summary>What becomes of a plane wave.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="angle">Between the wave and the normal [rad]; 0 to just below 90°.</param>
    /// <param name="polarisation">How its electric field lies.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    /// <remarks>Eq. sheets (2) to (4). [BornWolf1999] § 1.6.</remarks>
    public SheetResponse At(double frequency, double angle, Polarisation polarisation)
    {
        double k = FreeSpace.Wavenumber(frequency);
        double sine = Math.Sin(Incidence.Checked(angle)), cosine = Math.Cos(angle);
        SheetResponse faceToFace = new LayerStack(_layers, frequency).FaceToFace(sine * sine, cosine, polarisation);
        Complex toMiddle = Complex.Exp(new Complex(0.0, k * cosine * Thickness));
        return new SheetResponse(faceToFace.Reflection * toMiddle, faceToFace.Transmission * toMiddle);
    }

    /// <inheritdoc/>
    public bool Equals(LayeredSheet? other) => other is not null && _layers.AsSpan().SequenceEqual(other._layers);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LayeredSheet);

    /// <inheritdoc/>
    public override int GetHashCode() => _layers.Aggregate(0, (hash, layer) => HashCode.Combine(hash, layer));

    /// <summary>The same as <see cref="At(double)"/>, with what only layers have.</summary>
    internal LayeredResponse Tabulated(double frequency) => Known.Of((this, frequency), key => new LayeredResponse(key.Sheet, key.Frequency));
}
