using Microsoft.AspNetCore.Connections;

namespace Hornbook.Tabletop.Sharing;

/// <summary>Keeps the connections at one address to so many; more are closed at once.</summary>
internal sealed class ConnectionCount(int most)
{
    private int _open;

    internal ConnectionDelegate Limit(ConnectionDelegate next) => async connection =>
    {
        if (Interlocked.Increment(ref _open) <= most)
        {
            try
            {
                await next(connection);
            }
            finally
            {
                Interlocked.Decrement(ref _open);
            }

            return;
        }

        Interlocked.Decrement(ref _open);
        connection.Abort();
    };
}
