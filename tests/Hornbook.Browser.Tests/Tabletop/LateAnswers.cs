using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>A busy machine, or a guest far from the router: each answer of the program takes longer than a step of the hand.</summary>
internal static class LateAnswers
{
    private static readonly TimeSpan Late = TimeSpan.FromMilliseconds(300.0);

    /// <summary>From now on, pages that are opened in this window are answered late.</summary>
    internal static Task BeginAsync(IPage window) => window.RouteWebSocketAsync(new Regex(".*"), Delay);

    private static void Delay(IWebSocketRoute page)
    {
        IWebSocketRoute program = page.ConnectToServer();
        Task last = Task.CompletedTask;
        program.OnMessage(message => last = LateAsync(last, message));

        async Task LateAsync(Task before, IWebSocketFrame message)
        {
            await Task.Delay(Late);
            await before;
            if (message.Binary is { } bytes)
            {
                page.Send(bytes);
            }
            else
            {
                page.Send(message.Text!);
            }
        }
    }
}
