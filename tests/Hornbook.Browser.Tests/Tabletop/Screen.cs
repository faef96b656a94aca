using Microsoft.Playwright;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>On what the page is looked at.</summary>
public sealed record Screen(string Name, int Width, int Height, bool Touch = false, ColorScheme Scheme = ColorScheme.Light)
{
    public static Screen Wide { get; } = new("wide", 1280, 800);

    public static Screen Projector { get; } = new("projector", 1920, 1080);

    public static Screen Phone { get; } = new("phone", 390, 844, Touch: true);

    public Screen Dark => this with { Scheme = ColorScheme.Dark };
}
