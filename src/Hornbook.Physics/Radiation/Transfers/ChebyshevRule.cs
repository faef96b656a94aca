namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Interpolation by a polynomial through n Chebyshev nodes of the first kind on −1…1. Immutable; one for each n.</summary>
/// <remarks>Eq. radiation (13): the Lagrange polynomial of node a is Σ_i D_ia T_i(x), D_ia = (2−δ_i0)/n T_i(x_a) [Trefethen2013].</remarks>
internal sealed class ChebyshevRule
{
    /// <summary>The most nodes that there are rules for.</summary>
    internal const int Most = 24;

    private static readonly ChebyshevRule[] Rules = [.. Enumerable.Range(1, Most).Select(n => new ChebyshevRule(n))];

    private readonly double[] _nodes;
    private readonly double[] _byNode;
    private readonly double[] _byPolynomial;

    private ChebyshevRule(int count)
    {
        _nodes = new double[count];
        _byNode = new double[count * count];
        _byPolynomial = new double[count * count];
        for (int a = 0; a < count; a++)
        {
            double angle = Math.PI * (a + 0.5) / count;
            _nodes[a] = count == 1 ? 0.0 : Math.Cos(angle);
            for (int i = 0; i < count; i++)
            {
                double value = (i == 0 ? 1.0 : 2.0) / count * Math.Cos(i * angle);
                _byNode[(a * count) + i] = value;
                _byPolynomial[(i * count) + a] = value;
            }
        }
    }

    /// <summary>How many nodes.</summary>
    internal int Count => _nodes.Length;

    /// <summary>Places, from 1 down to −1.</summary>
    internal ReadOnlySpan<double> Nodes => _nodes;

    /// <summary>D with a row for each node: from sums over polynomials to sums over nodes.</summary>
    internal ReadOnlySpan<double> ToNodes => _byNode;

    /// <summary>D with a row for each polynomial: from values at nodes to coefficients.</summary>
    internal ReadOnlySpan<double> ToPolynomials => _byPolynomial;

    /// <summary>The rule of n nodes.</summary>
    internal static ChebyshevRule Of(int count) => Rules[count - 1];
}
