using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.Http.Features;

namespace Hornbook.Tabletop.Sharing;

/// <summary>The door of the network: lets in who knows the key, to what is for guests, as long as there are seats.</summary>
public sealed class GuestDoor(RequestDelegate next, Share share)
{
    private const string Cookie = "hornbook-key";
    private const string Circuit = "/_blazor";

    public Task InvokeAsync(HttpContext context) => Visitor.IsPresenter(context.User) ? next(context) : InviteAsync(context);

    private Task InviteAsync(HttpContext context)
    {
        context.Response.Headers.CacheControl = "no-store";
        if (context.Request.ContentLength > TabletopLimits.LargestBody)
        {
            return SayAsync(context, StatusCodes.Status413PayloadTooLarge, "That is more than is taken here.");
        }

        if (!IsAskedByItsOwnName(context))
        {
            return SayAsync(context, StatusCodes.Status400BadRequest, "This is not the address that was given to you.");
        }

        if (context.Request.Path == "/" && context.Request.Query[Share.KeyName] is [{ } tried] && share.Key.Fits(tried))
        {
            return WelcomeAsync(context);
        }

        if (!share.Key.Fits(context.Request.Cookies[Cookie]))
        {
            return SayAsync(context, StatusCodes.Status403Forbidden, "The address that was given to you ends with a key. Type it to the end, or ask for it again: each start of the program has another.");
        }

        return IsForGuests(context) ? SeatAsync(context) : SayAsync(context, StatusCodes.Status403Forbidden, "That is for the person at the bench.");
    }

    /// <summary>The name must be the very address and port at which the connection came in: those that were printed, and no name that somebody else's server gives out for them.</summary>
    private static bool IsAskedByItsOwnName(HttpContext context) =>
        context.Connection.LocalIpAddress is { } own && context.Request.Host.Host == (own.IsIPv4MappedToIPv6 ? own.MapToIPv4() : own).ToString()
        && (context.Request.Host.Port ?? 80) == context.Connection.LocalPort;

    // A page that goes on by itself, not a redirect: the browser then comes from here, sends the cookie, and the key leaves the address bar.
    private Task WelcomeAsync(HttpContext context)
    {
        context.Response.Cookies.Append(Cookie, share.Key.Text, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
        return PlainPage.WriteAsync(context, StatusCodes.Status200OK, "Come in", "The bench is opened …", goOnTo: "/");
    }

    /// <summary>Static files and the views that are marked; a view that is not marked is not a guest's, nor is anything else that is ever served.</summary>
    private static bool IsForGuests(HttpContext context) => context.GetEndpoint() is { } endpoint
        && (endpoint.Metadata.GetMetadata<ComponentTypeMetadata>() is not { } view || OpenToGuestsAttribute.Marks(view.Type));

    /// <summary>A seat is a connection that stays. It comes by web socket only; what browsers fall back to would hold no seat.</summary>
    private async Task SeatAsync(HttpContext context)
    {
        bool stays = AsksForSocket(context);
        if (!stays && context.Request.Path == Circuit)
        {
            await SayAsync(context, StatusCodes.Status400BadRequest, "Only web sockets are served to guests.");
            return;
        }

        bool isFull = stays ? !share.Seats.TryTake() : share.Seats.AreFull && context.Request.Path == "/";
        if (isFull)
        {
            await SayAsync(context, StatusCodes.Status503ServiceUnavailable, $"All {share.Seats.Most} places are taken. Try again when somebody has left.");
            return;
        }

        try
        {
            await next(context);
        }
        finally
        {
            if (stays)
            {
                share.Seats.Leave();
            }
        }
    }

    private static bool AsksForSocket(HttpContext context) => context.Features.Get<IHttpUpgradeFeature>() is { IsUpgradableRequest: true }
        && string.Equals(context.Request.Headers.Upgrade, "websocket", StringComparison.OrdinalIgnoreCase);

    private static Task SayAsync(HttpContext context, int status, string what) => PlainPage.WriteAsync(context, status, "Hornbook", what);
}
