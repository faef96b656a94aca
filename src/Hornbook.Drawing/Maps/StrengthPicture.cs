using Hornbook.Bench.Maps;
using ScottPlot;
using ScottPlot.Colormaps;
using SkiaSharp;

namespace Hornbook.Drawing.Maps;

/// <summary>Strength as colours: the darker, the weaker, 1 dB a hair, in a map that looks even to every eye.</summary>
/// <remarks>The colours are those of viridis, which looks even and keeps its order for colour-deficient sight and in grey [VanDerWaltSmith2015].</remarks>
public static class StrengthPicture
{
    /// <summary>From the strongest colour to the weakest [dB].</summary>
    public const double RangeDb = 40.0;

    private static readonly Viridis Colours = new Viridis();

    /// <summary>A map as a PNG picture, one pixel a place, its upper row the farthest left or the highest.</summary>
    /// <param name="map">The map.</param>
    /// <param name="brightest">The density that gets the strongest colour [W/m²]; what is more gets it too.</param>
    public static byte[] Png(StrengthMap map, double brightest)
    {
        ArgumentNullException.ThrowIfNull(map);
        using SKBitmap picture = new(map.Columns, map.Rows);
        for (int i = 0; i < map.Densities.Count; i++)
        {
            picture.SetPixel(i % map.Columns, map.Rows - 1 - (i / map.Columns), Colour(map.Densities[i], brightest));
        }

        using SKData data = picture.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>The colours from weakest to strongest as "#rrggbb", evenly in decibels, for a legend.</summary>
    /// <param name="count">How many; ≥ 2.</param>
    public static IReadOnlyList<string> Legend(int count) =>
        [.. Enumerable.Range(0, count).Select(i => Colours.GetColor((double)i / (count - 1)).ToHex())];

    /// <summary>A density that few places exceed, for the strongest colour [W/m²]: the first octave before the mouth is left to burn out.</summary>
    public static double Brightest(StrengthMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        double[] known = [.. map.Densities.Where(double.IsFinite).Order()];
        return known.Length == 0 ? 1.0 : Math.Max(known[(int)(0.99 * (known.Length - 1))], double.Epsilon);
    }

    private static SKColor Colour(double density, double brightest)
    {
        if (!double.IsFinite(density))
        {
            return SKColors.Transparent;
        }

        double levelDb = 10.0 * Math.Log10(Math.Max(density, double.Epsilon) / brightest);
        Color colour = Colours.GetColor(Math.Clamp(1.0 + (levelDb / RangeDb), 0.0, 1.0));
        return new SKColor(colour.R, colour.G, colour.B);
    }
}
