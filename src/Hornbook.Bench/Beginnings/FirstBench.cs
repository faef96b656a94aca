using System.Diagnostics.CodeAnalysis;
using Hornbook.Bench.Files;
using Hornbook.Bench.Findings;

namespace Hornbook.Bench.Beginnings;

/// <summary>A first bench made from five answers, or what stands in its way.</summary>
/// <remarks>
/// The file is an ordinary bench file with comments that explain it. Nothing in it spoils a show: what <see cref="BenchFindings"/> would call so is either
/// set right (the gain, the bandwidth), left out (a demonstration that cannot be heard on this bench) or an <see cref="Obstacle"/>.
/// </remarks>
public sealed record FirstBench
{
    /// <summary>The longest title that a bench file takes.</summary>
    private const int LongestTitle = 120;

    private FirstBench(BenchFile? file, Obstacle? obstacle) => (File, Obstacle) = (file, obstacle);

    /// <summary>Whether there is a bench.</summary>
    [MemberNotNullWhen(true, nameof(File))]
    [MemberNotNullWhen(false, nameof(Obstacle))]
    public bool IsFound => File is not null;

    /// <summary>The bench; null where something stands in its way.</summary>
    public BenchFile? File { get; }

    /// <summary>Why there is none; null where there is one.</summary>
    public Obstacle? Obstacle { get; }

    /// <summary>Makes a bench.</summary>
    /// <param name="title">What it shall be called: one line of 1 to 120 characters.</param>
    /// <param name="wish">The five answers.</param>
    /// <exception cref="ArgumentException">The title is empty, too long or more than a line.</exception>
    public static FirstBench Of(string title, BenchWish wish)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(wish);
        if (title.Length is 0 or > LongestTitle || title.Any(char.IsControl))
        {
            throw new ArgumentException($"title has {title.Length} characters; one line of 1 to {LongestTitle} fits", nameof(title));
        }

        FirstAntennas? antennas = null;
        FirstDraft? set = null;
        Obstacle? obstacle = wish.OutOfRange()
            ?? FirstAntennas.Choose(wish, out antennas)
            ?? FirstSetting.Set(FirstDraft.Of(title, wish, antennas!), out set);
        return new FirstBench(set?.File, obstacle);
    }
}
