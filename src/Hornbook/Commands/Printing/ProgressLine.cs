namespace Hornbook.Commands.Printing;

/// <summary>Says what is under way and how far it is, on one line of the error stream, once it has taken longer than a second.</summary>
/// <remarks>On a terminal the line is written over; elsewhere a line comes every five seconds.</remarks>
internal sealed class ProgressLine : IProgress<double>, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    private readonly Lock _lock = new();
    private readonly TextWriter _output;
    private readonly bool _overwrites;
    private readonly TimeSpan _pace;
    private readonly TimeProvider _clock;
    private readonly long _start;
    private readonly ITimer _timer;
    private string _task = "working";
    private double? _share;
    private TimeSpan _next = Patience;
    private bool _open;

    internal ProgressLine(TextWriter output, bool overwrites, TimeProvider clock)
    {
        _clock = clock;
        _start = clock.GetTimestamp();
        _output = output;
        _overwrites = overwrites;
        _pace = overwrites ? TimeSpan.FromMilliseconds(100) : TimeSpan.FromSeconds(5);
        _timer = clock.CreateTimer(_ => WriteIfDue(), null, Patience, _pace);
    }

    /// <summary>Progress on the error stream of a command.</summary>
    internal static ProgressLine On(TextWriter error) =>
        new(error, overwrites: ReferenceEquals(error, Console.Error) && !Console.IsErrorRedirected, TimeProvider.System);

    /// <summary>Names what is under way.</summary>
    internal void Begin(string task)
    {
        lock (_lock)
        {
            (_task, _share) = (task, null);
        }
    }

    /// <inheritdoc/>
    public void Report(double value)
    {
        lock (_lock)
        {
            _share = value;
        }

        WriteIfDue();
    }

    /// <summary>Wipes the line.</summary>
    public void Dispose()
    {
        _timer.Dispose();
        lock (_lock)
        {
            _next = TimeSpan.MaxValue;
            if (_open)
            {
                _output.Write("\r\e[K");
            }
        }
    }

    private void WriteIfDue()
    {
        lock (_lock)
        {
            TimeSpan elapsed = _clock.GetElapsedTime(_start);
            if (elapsed < _next)
            {
                return;
            }

            _next = elapsed + _pace;
            _open = _overwrites;
            string text = _share is { } share ? $"{_task}: {Math.Round(100.0 * share)} %" : $"{_task} …";
            _output.Write(_overwrites ? $"\r{text}\e[K" : $"{text}\n");
        }
    }
}
