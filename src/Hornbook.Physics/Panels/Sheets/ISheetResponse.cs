namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What a sheet does to plane waves of one frequency. Safe to share between threads; asking allocates nothing.</summary>
public interface ISheetResponse
{
    /// <summary>What becomes of a plane wave.</summary>
    /// <param name="face">The face that it meets.</param>
    /// <param name="across">Direction cosine of its travel across the strips, along the panel's own y [-].</param>
    /// <param name="along">Direction cosine of its travel along the strips, along the panel's own z [-]; across² + along² &lt; 1.</param>
    /// <remarks>The tangential electric field after over before, both referred to the middle plane of the sheet.</remarks>
    SheetMatrices Arriving(SheetFace face, double across, double along);
}
