namespace Hornbook.Physics.Panels.Sheets.Tables;

/// <summary>What was worked out last, kept so that nobody works it out again. Safe to share between threads: each key is worked out once, by the thread that asks first.</summary>
/// <param name="capacity">How many are kept; the oldest goes first.</param>
internal sealed class Recent<TKey, TValue>(int capacity)
    where TKey : notnull
{
    private readonly Lock _lock = new();
    private readonly Dictionary<TKey, Lazy<TValue>> _kept = [];
    private readonly Queue<TKey> _order = new();

    /// <summary>The value of a key.</summary>
    /// <param name="key">The key.</param>
    /// <param name="work">Works it out; the same for equal keys.</param>
    internal TValue Of(TKey key, Func<TKey, TValue> work)
    {
        Lazy<TValue>? value;
        lock (_lock)
        {
            if (!_kept.TryGetValue(key, out value))
            {
                value = new Lazy<TValue>(() => work(key));
                _kept.Add(key, value);
                _order.Enqueue(key);
                if (_order.Count > capacity)
                {
                    _kept.Remove(_order.Dequeue());
                }
            }
        }

        return value.Value;
    }
}
