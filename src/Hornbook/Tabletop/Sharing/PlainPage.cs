using System.Net.Mime;
using System.Text.Encodings.Web;

namespace Hornbook.Tabletop.Sharing;

/// <summary>A page of one sentence that needs nothing else: no style, no script.</summary>
internal static class PlainPage
{
    /// <param name="context">What is answered.</param>
    /// <param name="status">Of HTTP.</param>
    /// <param name="title">Its heading.</param>
    /// <param name="sentence">What it says.</param>
    /// <param name="goOnTo">Where the browser goes on by itself; null where it stays.</param>
    internal static Task WriteAsync(HttpContext context, int status, string title, string sentence, string? goOnTo = null)
    {
        HtmlEncoder plain = HtmlEncoder.Default;
        string refresh = goOnTo is null ? string.Empty : $"<meta http-equiv=\"refresh\" content=\"0;url={plain.Encode(goOnTo)}\">";
        string link = goOnTo is null ? string.Empty : $"<p><a href=\"{plain.Encode(goOnTo)}\">Go on</a></p>";
        context.Response.StatusCode = status;
        context.Response.ContentType = $"{MediaTypeNames.Text.Html}; charset=utf-8";
        return context.Response.WriteAsync(
            $"<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
            + $"<meta name=\"color-scheme\" content=\"light dark\">{refresh}<title>{plain.Encode(title)}</title></head>"
            + $"<body><main><h1>{plain.Encode(title)}</h1><p>{plain.Encode(sentence)}</p>{link}</main></body></html>");
    }
}
