using System.Net;
using Hornbook.Tabletop.Sharing;

namespace Hornbook.Tabletop;

/// <summary>The door of this machine: whoever comes in by it is the person at the bench. Nobody else gets past it, unless there is a door for guests behind.</summary>
public sealed class LoopbackOnly(RequestDelegate next, Share? share = null)
{
    /// <summary>Names under which the page may be asked for.</summary>
    public static IReadOnlyList<string> Hosts { get; } = ["127.0.0.1", "localhost"];

    public Task InvokeAsync(HttpContext context)
    {
        if (IsFromThisMachine(context.Connection))
        {
            if (!Hosts.Contains(context.Request.Host.Host))
            {
                context.Response.StatusCode = StatusCodes.Status400BadRequest;
                return Task.CompletedTask;
            }

            context.User = Visitor.AtThisMachine;
        }
        else if (share is null)
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            return Task.CompletedTask;
        }

        return next(context);
    }

    /// <summary>By the ends of the connection, which no header can claim: both on 127.0.0.1, where the page is served to this machine alone.</summary>
    private static bool IsFromThisMachine(ConnectionInfo connection) =>
        connection.LocalIpAddress is { } local && IPAddress.Loopback.Equals(local.IsIPv4MappedToIPv6 ? local.MapToIPv4() : local)
        && connection.RemoteIpAddress is { } remote && IPAddress.IsLoopback(remote);
}
