using System.Net;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.SignalR;

namespace Hornbook.Tabletop;

/// <summary>Where the program listens, and how much it takes from those who speak to it.</summary>
internal static class TabletopLimits
{
    // The page sends nothing larger than a name and a few numbers [bytes].
    private const int LargestMessage = 16 * 1024;
    internal const int LargestBody = 32 * 1024;
    private const int LargestHeaders = 16 * 1024;
    private const int LongestLine = 4 * 1024;

    // A telephone that was put away for a moment comes back to where it was.
    private static readonly TimeSpan Kept = TimeSpan.FromMinutes(2);

    /// <summary>Listens on this machine, and on the addresses of its networks where it is shared: there with a limit of its own, so that guests never use up the presenter's connections.</summary>
    internal static void Listen(KestrelServerOptions server, int port, Share? share)
    {
        server.AddServerHeader = false;
        server.Limits.MaxRequestBodySize = LargestBody;
        server.Limits.MaxRequestHeadersTotalSize = LargestHeaders;
        server.Limits.MaxRequestLineSize = LongestLine;
        server.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        server.Listen(IPAddress.Loopback, port, endpoint => endpoint.Protocols = HttpProtocols.Http1);
        foreach (IPAddress address in share?.Addresses ?? [])
        {
            ConnectionCount count = new(Share.MostConnections);
            server.Listen(address, port, endpoint =>
            {
                endpoint.Protocols = HttpProtocols.Http1;
                endpoint.Use(count.Limit);
            });
        }
    }

    /// <summary>How much of those who have gone is kept, and of those who do not answer.</summary>
    internal static void OfCircuits(CircuitOptions circuits)
    {
        circuits.DisconnectedCircuitMaxRetained = Share.MostGuests;
        circuits.DisconnectedCircuitRetentionPeriod = Kept;
        circuits.JSInteropDefaultCallTimeout = TimeSpan.FromSeconds(30);
        circuits.MaxBufferedUnacknowledgedRenderBatches = 4;
    }

    /// <summary>How much is taken in one message.</summary>
    internal static void OfMessages(HubOptions messages)
    {
        messages.MaximumReceiveMessageSize = LargestMessage;
        messages.StreamBufferCapacity = 1;
        messages.EnableDetailedErrors = false;
    }
}
