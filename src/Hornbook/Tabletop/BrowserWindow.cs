using System.ComponentModel;
using System.Diagnostics;

namespace Hornbook.Tabletop;

/// <summary>Opens a page in the browser of this machine, if it has one.</summary>
internal static class BrowserWindow
{
    /// <summary>Asks the desktop to open an address; where there is no desktop or no browser, nothing happens: the address was printed.</summary>
    internal static void TryOpen(string address)
    {
        try
        {
            using Process? opener = Opener(address) is { } how ? Process.Start(how) : null;
        }
        catch (Exception none) when (none is Win32Exception or FileNotFoundException or PlatformNotSupportedException)
        {
            // There is no opener; the visitor opens the printed address by hand.
        }
    }

    private static ProcessStartInfo? Opener(string address)
    {
        if (OperatingSystem.IsWindows())
        {
            return new ProcessStartInfo(address) { UseShellExecute = true };
        }

        if (OperatingSystem.IsMacOS())
        {
            return Quiet("open", address);
        }

        bool hasScreen = HasValue("DISPLAY") || HasValue("WAYLAND_DISPLAY");
        return hasScreen ? Quiet("xdg-open", address) : null;
    }

    // What the opener has to say belongs to it, not among our lines.
    private static ProcessStartInfo Quiet(string program, string address) => new(program, [address])
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    };

    private static bool HasValue(string variable) => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(variable));
}
