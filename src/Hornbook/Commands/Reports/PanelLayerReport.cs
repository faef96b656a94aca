using System.Numerics;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands.Reports;

/// <summary>A layer of a panel, and whether its material is known at the frequency.</summary>
internal sealed record PanelLayerReport(string Material, double ThicknessM, double PermittivityRatio, double LossPermittivityRatio, bool IsKnownHere)
{
    internal static PanelLayerReport Of(Layer layer, double frequency)
    {
        Complex permittivity = layer.Material.RelativePermittivity(frequency);
        (double lowest, double highest) = layer.Material.KnownBand;
        return new PanelLayerReport(
            layer.Material.Name, layer.Thickness, permittivity.Real, -permittivity.Imaginary, frequency >= lowest && frequency <= highest);
    }
}
