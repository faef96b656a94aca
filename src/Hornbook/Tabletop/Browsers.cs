using Microsoft.JSInterop;

namespace Hornbook.Tabletop;

/// <summary>What may go wrong because the visitor has already left.</summary>
public static class Browsers
{
    /// <summary>Ends the tone of a part of the page that goes away; a browser that has gone is silent already.</summary>
    public static async ValueTask Silence(IJSObjectReference? tone)
    {
        try
        {
            if (tone is not null)
            {
                await tone.InvokeVoidAsync("stop");
            }
        }
        catch (JSDisconnectedException)
        {
            // The window is closed.
        }
    }

    /// <summary>Gives a module back; a browser that has gone has given it back already.</summary>
    public static async ValueTask LetGo(IJSObjectReference? module)
    {
        if (module is null)
        {
            return;
        }

        try
        {
            await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The window is closed: there is nothing left to give back to.
        }
    }
}
