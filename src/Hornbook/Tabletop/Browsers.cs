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
        catch (Exception gone) when (Left(gone))
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
        catch (Exception gone) when (Left(gone))
        {
            // The window is closed: there is nothing left to give back to.
        }
    }

    // A call that was on its way while the visitor left is cancelled instead of refused.
    private static bool Left(Exception thrown) => thrown is JSDisconnectedException or OperationCanceledException;
}
