namespace Hornbook.Tabletop.Sharing;

/// <summary>What the terminal says when a bench is shared.</summary>
internal static class Invitation
{
    /// <summary>The addresses, and what sharing means.</summary>
    internal static string Of(Share share, IEnumerable<string> urls) => string.Join(Environment.NewLine,
    [
        "Others on this network look on at",
        .. share.Invitations(urls).Select(address => $"  {address}"),
        $"Whoever has that address, {share.Seats.Most} at once, sees the bench and may move a copy. Your bench and your files are out of their reach.",
        "It is plain http: somebody on the same network can read along, the key too. Share on a network that you trust; each start has a new key.",
        "Ctrl-C ends it for all.",
    ]);
}
