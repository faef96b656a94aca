namespace Hornbook.Commands.Printing;

/// <summary>What the terminal wants.</summary>
internal static class Terminal
{
    /// <summary>Whether bold is welcome: a terminal that is not dumb, and nobody set NO_COLOR.</summary>
    internal static bool TakesStyle(TextWriter output) =>
        ReferenceEquals(output, Console.Out)
        && !Console.IsOutputRedirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
        && Environment.GetEnvironmentVariable("TERM") != "dumb";
}
