using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Hornbook.Tabletop.Sharing;

/// <summary>Where this machine is reached from its own networks.</summary>
internal static class NetworkAddresses
{
    /// <summary>Its IPv4 addresses, those that it made up for itself last; empty where it is on no network.</summary>
    internal static IReadOnlyList<IPAddress> Own() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(net => net.OperationalStatus == OperationalStatus.Up && net.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(net => net.GetIPProperties().UnicastAddresses)
            .Select(unicast => unicast.Address)
            .Where(address => address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address))
            .OrderBy(IsMadeUp)
            .Distinct(),
    ];

    // 169.254.0.0/16 is what a machine takes where nobody gives it an address [RFC 3927].
    private static bool IsMadeUp(IPAddress address) => address.GetAddressBytes() is [169, 254, ..];
}
