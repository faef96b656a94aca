using ScottPlot;
using SkiaSharp;

namespace Hornbook.Drawing.Figures;

/// <summary>A figure ready for paper or screen: plots under each other that share their left edge.</summary>
public sealed class Figure
{
    // The plotting library does not promise that two threads may draw at a time.
    private static readonly Lock Drawing = new();

    private readonly Func<IReadOnlyList<Plot>> _compose;

    // A plot remembers its last rendering and comes out differently the next time, so each rendering composes its own.
    internal Figure(string title, string description, int width, int height, Func<IReadOnlyList<Plot>> compose)
    {
        Title = title;
        Description = description;
        Width = width;
        Height = height;
        _compose = compose;
    }

    /// <summary>What it shows, in one line.</summary>
    public string Title { get; }

    /// <summary>What it shows, in words, for one who cannot see it.</summary>
    public string Description { get; }

    /// <summary>Width [px of a screen, 1/96 inch].</summary>
    public int Width { get; }

    /// <summary>Height [px of a screen, 1/96 inch].</summary>
    public int Height { get; }

    /// <summary>The figure as SVG: scales with its frame and carries its title and description.</summary>
    public string ToSvg()
    {
        using MemoryStream stream = new();
        using (SKCanvas canvas = SKSvgCanvas.Create(new SKRect(0, 0, Width, Height), stream))
        {
            Draw(canvas);
        }

        return SvgMarkup.Finish(stream.ToArray(), Title, Description, Width, Height);
    }

    /// <summary>The figure as PNG.</summary>
    /// <param name="scale">Dots for each px; finite, from 0.1 to 10.</param>
    public byte[] ToPng(double scale = 2.0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(scale, 0.1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(scale, 10.0);
        using SKSurface surface = SKSurface.Create(new SKImageInfo((int)Math.Round(Width * scale), (int)Math.Round(Height * scale)));
        surface.Canvas.Scale((float)scale);
        Draw(surface.Canvas);
        using SKImage image = surface.Snapshot();
        using SKData data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private void Draw(SKCanvas canvas)
    {
        lock (Drawing)
        {
            IReadOnlyList<Plot> panels = _compose();
            canvas.Clear(SKColors.White);
            float height = (float)Height / panels.Count;
            for (int i = 0; i < panels.Count; i++)
            {
                panels[i].RenderInMemory(Width, (int)height); // the first rendering settles the layout and would draw everything twice
                canvas.Save();
                canvas.ClipRect(new SKRect(0, i * height, Width, (i + 1) * height)); // a plot clears what it may draw on
                panels[i].Render(canvas, new PixelRect(0, Width, (i + 1) * height, i * height));
                canvas.Restore();
            }
        }
    }
}
