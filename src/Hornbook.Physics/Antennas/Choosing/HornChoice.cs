using System.Diagnostics.CodeAnalysis;

namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>The answer to a wish: a horn with its figures, or the reason why there is none.</summary>
public sealed record HornChoice
{
    private HornChoice(HornFigures? figures, WishRefusal? refusal, WallLayout? layout) => (Figures, Refusal, Layout) = (figures, refusal, layout);

    /// <summary>Whether there is a horn.</summary>
    [MemberNotNullWhen(true, nameof(Figures))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool IsFound => Figures is not null;

    /// <summary>The horn and what it does; null where there is none.</summary>
    public HornFigures? Figures { get; }

    /// <summary>Why there is none; null where there is one.</summary>
    public WishRefusal? Refusal { get; }

    /// <summary>How its walls lie on the sheet; null where no sheet was given.</summary>
    public WallLayout? Layout { get; }

    internal static HornChoice Found(HornFigures figures, WallLayout? layout = null) => new(figures, null, layout);

    internal static HornChoice Refused(WishProblem problem, double wanted, double limit) => new(null, new WishRefusal(problem, wanted, limit), null);
}
