namespace Hornbook.Tabletop;

/// <summary>No other site may speak to the page through a visitor's browser, and the page loads nothing from elsewhere.</summary>
public sealed class PageHeaders(RequestDelegate next)
{
    /// <summary>Everything from here, nothing inline, nothing from elsewhere, no frames.</summary>
    public const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        if (!IsOwnOrigin(context.Request))
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            return Task.CompletedTask;
        }

        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    }

    /// <summary>A browser names the site that a request comes from where it could do harm (web sockets, posts): it must be this one.</summary>
    private static bool IsOwnOrigin(HttpRequest request)
    {
        string? origin = request.Headers.Origin;
        return string.IsNullOrEmpty(origin) || origin == $"{request.Scheme}://{request.Host}";
    }
}
