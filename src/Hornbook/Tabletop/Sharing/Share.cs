using System.Net;

namespace Hornbook.Tabletop.Sharing;

/// <summary>That others on the same network may look on, and how many.</summary>
/// <param name="addresses">Of this machine on its networks; each is listened on by name, never all there are.</param>
public sealed class Share(IReadOnlyList<IPAddress> addresses)
{
    /// <summary>Name of the key in an address.</summary>
    public const string KeyName = "key";

    /// <summary>Two classes at once.</summary>
    public const int MostGuests = 60;

    /// <summary>A browser opens up to six connections beside the one that stays.</summary>
    public const int MostConnections = 8 * MostGuests;

    public IReadOnlyList<IPAddress> Addresses { get; } = addresses;

    public ShareKey Key { get; } = new();

    public GuestSeats Seats { get; } = new(MostGuests);

    /// <summary>The addresses to give to a class, of all at which the page is served.</summary>
    public IReadOnlyList<string> Invitations(IEnumerable<string> urls) =>
        [.. urls.Select(url => new Uri(url)).Where(url => Addresses.Any(address => address.ToString() == url.Host)).Select(url => $"{url}?{KeyName}={Key.Text}")];
}
