namespace Hornbook.Physics.Panels.Edges;

/// <summary>A cell and the foot on a rim whose fringe current it carries.</summary>
/// <param name="Cell">Index of the cell.</param>
/// <param name="Foot">Index of the foot in <see cref="EdgeLinks.Feet"/>, which cells share.</param>
/// <param name="Distance">The cell's centre from the rim, x [m]; &gt; 0.</param>
/// <param name="Breadth">From cell to cell across the rim, b [m]; &gt; 0.</param>
/// <param name="Ahead">How far the cell's own foot lies ahead of the shared one, along inward × front normal [m].</param>
/// <param name="Spreading">Amplitude that a curved rim leaves at the cell of a wave which starts at the rim [-]; 1 for a straight one.</param>
internal readonly record struct EdgeLink(int Cell, int Foot, double Distance, double Breadth, double Ahead, double Spreading);
