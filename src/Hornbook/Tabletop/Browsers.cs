using Microsoft.JSInterop;

namespace Hornbook.Tabletop;

/// <summary>What may go wrong because the visitor has already left.</summary>
public static class Browsers
{
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
