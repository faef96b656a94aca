namespace Hornbook.Physics.Panels.Sheets;

/// <summary>What becomes of the tangential electric field of a plane wave at a sheet.</summary>
/// <param name="Reflection">R [-]: what is thrown back.</param>
/// <param name="Transmission">T [-]: what passes.</param>
public readonly record struct SheetMatrices(TangentialMatrix Reflection, TangentialMatrix Transmission);
