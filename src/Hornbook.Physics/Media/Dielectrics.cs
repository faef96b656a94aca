namespace Hornbook.Physics.Media;

/// <summary>The materials that are known by name.</summary>
/// <remarks>
/// Building materials: ITU-R P.2040-3 (2023), table 3 [ItuP2040]; older editions differ by tens of per cent for concrete. Laboratory
/// dielectrics near 10 GHz: [VonHippel1954], [Pozar2012] appendix G and [Riddle2003], where values of one material differ by some per cent from batch to batch.
/// All quoted from memory or from secondary copies. Wood, card and textiles depend on their moisture more than on anything else.
/// </remarks>
public static class Dielectrics
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Dielectric> All { get; } =
    [
        new LaboratoryDielectric("air", 1.0, 0.0),
        new LaboratoryDielectric("polystyrene foam", 1.03, 1e-4),
        new LaboratoryDielectric("PTFE", 2.05, 2e-4),
        new LaboratoryDielectric("paraffin wax", 2.24, 2e-4),
        new LaboratoryDielectric("polyethylene", 2.25, 4e-4),
        new LaboratoryDielectric("polypropylene", 2.27, 1e-4),
        new LaboratoryDielectric("HDPE", 2.37, 2e-4),
        new LaboratoryDielectric("polystyrene", 2.54, 3.3e-4),
        new LaboratoryDielectric("acrylic glass", 2.59, 0.0067),
        new LaboratoryDielectric("ABS", 2.7, 0.008),
        new LaboratoryDielectric("PVC", 2.71, 0.006),
        new LaboratoryDielectric("polycarbonate", 2.76, 0.005),
        new LaboratoryDielectric("bakelite", 3.52, 0.037),
        new LaboratoryDielectric("FR-4", 4.35, 0.018),
        new LaboratoryDielectric("borosilicate glass", 4.8, 0.0054),
        new BuildingMaterial("ceiling board", 1.48, 0.0, 0.0011, 1.0750, 1.0, 100.0),
        new BuildingMaterial("wood", 1.99, 0.0, 0.0047, 1.0718, 0.001, 100.0),
        new BuildingMaterial("chipboard", 2.58, 0.0, 0.0217, 0.7800, 1.0, 100.0),
        new BuildingMaterial("plywood", 2.71, 0.0, 0.33, 0.0, 1.0, 40.0),
        new BuildingMaterial("plasterboard", 2.73, 0.0, 0.0085, 0.9395, 1.0, 100.0),
        new BuildingMaterial("floorboard", 3.66, 0.0, 0.0044, 1.3515, 50.0, 100.0),
        new BuildingMaterial("brick", 3.91, 0.0, 0.0238, 0.16, 1.0, 40.0),
        new BuildingMaterial("concrete", 5.24, 0.0, 0.0462, 0.7822, 1.0, 100.0),
        new BuildingMaterial("glass", 6.31, 0.0, 0.0036, 1.3394, 0.1, 100.0),
        new BuildingMaterial("marble", 7.074, 0.0, 0.0055, 0.9262, 1.0, 60.0),
        new Water(293.15),
    ];

    /// <summary>A material by its name, in any case; null where the name is not known.</summary>
    public static Dielectric? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(material => string.Equals(material.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
    }
}
