using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels;

/// <summary>Currents of panels in the panels' own frames: what is known of a solved bench, to begin with where the same panels stand a little differently. Immutable.</summary>
public sealed class KnownCurrents
{
    private readonly ComplexVector[][] _electric;
    private readonly ComplexVector[][] _magnetic;

    private KnownCurrents(ComplexVector[][] electric, ComplexVector[][] magnetic, double toCome, bool toAndFro) =>
        (_electric, _magnetic, ToCome, ToAndFro) = (electric, magnetic, toCome, toAndFro);

    /// <summary>How many times the change of a sweep was still to come there, by how the changes shrank [-].</summary>
    internal double ToCome { get; }

    /// <summary>Whether the panels threw the wave to and fro.</summary>
    internal bool ToAndFro { get; }

    /// <summary>A mixture of what is known of the same panels in other poses.</summary>
    /// <param name="known">Of the same prepared panels in the same order; at least one.</param>
    /// <param name="shares">The share of each [-], as an interpolation has them; negative ones too.</param>
    /// <exception cref="ArgumentException">Other panels, or not as many shares.</exception>
    public static KnownCurrents Mixed(IReadOnlyList<KnownCurrents> known, IReadOnlyList<double> shares)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(shares);
        if (known.Count == 0 || known.Count != shares.Count)
        {
            throw new ArgumentException($"{known.Count} known and {shares.Count} shares; as many are needed, and at least one");
        }

        return new KnownCurrents(Mixed([.. known.Select(one => one._electric)], shares), Mixed([.. known.Select(one => one._magnetic)], shares), known.Max(one => one.ToCome), known.Any(one => one.ToAndFro));
    }

    /// <summary>What is known of panels that stand.</summary>
    /// <param name="panels">The panels.</param>
    /// <param name="currents">Of each, in the bench frame.</param>
    /// <param name="toCome">How many times the last change is still to come [-].</param>
    /// <param name="toAndFro">Whether they throw the wave to and fro.</param>
    internal static KnownCurrents Of(IReadOnlyList<PosedPanel> panels, IReadOnlyList<CurrentSamples> currents, double toCome, bool toAndFro)
    {
        Frame[] frames = [.. panels.Select(panel => Frame.Of(panel.Pose))];
        return new KnownCurrents(
            [.. currents.Select((own, i) => Array.ConvertAll(own.Electric.ToArray(), frames[i].Own))],
            [.. currents.Select((own, i) => Array.ConvertAll(own.FlowingMagnetic.ToArray(), frames[i].Own))],
            Math.Max(1.0, toCome),
            toAndFro);
    }

    /// <summary>J dS of each cell of a panel [A m].</summary>
    internal ComplexVector[] Electric(int panel) => _electric[panel];

    /// <summary>M dS of each cell of a panel [V m]; empty where none flow.</summary>
    internal ComplexVector[] Magnetic(int panel) => _magnetic[panel];

    private static ComplexVector[][] Mixed(ComplexVector[][][] known, IReadOnlyList<double> shares) =>
    [
        .. known[0].Select((first, panel) =>
        {
            ComplexVector[] sum = new ComplexVector[first.Length];
            for (int j = 0; j < known.Length; j++)
            {
                ReadOnlySpan<ComplexVector> part = known[j][panel];
                if (part.Length != sum.Length)
                {
                    throw new ArgumentException($"panel {panel + 1} has {sum.Length} cells in one and {part.Length} in another; they must be the same panels");
                }

                PhasorSums.Add(sum, part, shares[j]);
            }

            return sum;
        }),
    ];
}
