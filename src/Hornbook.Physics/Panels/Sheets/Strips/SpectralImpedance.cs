using System.Numerics;

namespace Hornbook.Physics.Panels.Sheets.Strips;

/// <summary>What a current sheet of one wave vector in the sheet makes of tangential field, −Z J, over the impedance of vacuum: Z = Te 1 + Charge κκᵀ.</summary>
/// <param name="Te">Of a current across its wave vector [-].</param>
/// <param name="Charge">What a current along its wave vector κ (in units of k) adds through the charge it heaps up [-].</param>
internal readonly record struct SpectralImpedance(Complex Te, Complex Charge);
