namespace Hornbook.Tabletop;

/// <summary>Serves the tabletop page.</summary>
internal static class TabletopHost
{
    internal const int DefaultPort = 5210;

    internal static Task<int> RunAsync(string? benchPath, int port, bool openBrowser, CancellationToken cancellation) =>
        throw new NotImplementedException();
}
