namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Chebyshev nodes in a box of samples, as many along each axis as its field, or its currents, need.</summary>
/// <param name="X">Along the rows.</param>
/// <param name="Y">Across the rows.</param>
/// <param name="Z">Along the shortest side.</param>
internal readonly record struct BoxGrid(int X, int Y, int Z)
{
    /// <summary>How many nodes.</summary>
    internal int Count => X * Y * Z;

    /// <summary>Nodes of one row.</summary>
    internal int Along(int axis) => axis switch { 0 => X, 1 => Y, _ => Z };

    /// <summary>Places of the nodes in the bench frame [m]; the one along x runs first.</summary>
    internal void Place(SampleBox box, Frame axes, Span<Vector> places)
    {
        ReadOnlySpan<double> x = ChebyshevRule.Of(X).Nodes, y = ChebyshevRule.Of(Y).Nodes, z = ChebyshevRule.Of(Z).Nodes;
        int node = 0;
        for (int c = 0; c < Z; c++)
        {
            Vector middle = box.Place + (axes.Up * (z[c] * box.Half.Z));
            for (int b = 0; b < Y; b++)
            {
                Vector row = middle + (axes.Left * (y[b] * box.Half.Y));
                for (int a = 0; a < X; a++)
                {
                    places[node++] = row + (axes.Forward * (x[a] * box.Half.X));
                }
            }
        }
    }
}
