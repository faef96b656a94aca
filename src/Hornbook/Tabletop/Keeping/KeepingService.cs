using System.Threading.Channels;

namespace Hornbook.Tabletop.Keeping;

/// <summary>Wakes the keeper when the desk or the file has changed, and once more at the end of the program.</summary>
public sealed class KeepingService(Workplace workplace) : BackgroundService
{
    /// <summary>What follows within this belongs together: the presses of a key, the several writes of an editor.</summary>
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(300);

    private readonly Channel<bool> _woken = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
    private FileSystemWatcher? _watcher;

    /// <summary>Tries again now.</summary>
    public void Wake() => _woken.Writer.TryWrite(true);

    public override void Dispose()
    {
        _watcher?.Dispose();
        base.Dispose();
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        workplace.Desk.Changed += Touched;
        try
        {
            while (true)
            {
                Watch();
                await _woken.Reader.ReadAsync(stoppingToken);
                await Task.Delay(Rest, stoppingToken);
                workplace.Keeper.Settle();
            }
        }
        catch (OperationCanceledException)
        {
            workplace.Desk.Changed -= Touched;
            workplace.Keeper.Close();
        }
    }

    private void Touched()
    {
        workplace.Keeper.Announce();
        Wake();
    }

    // The folder of a copy may not exist before the first move. Where a watch is not to be had, the file is still looked at before it is written.
    private void Watch()
    {
        string path = workplace.Keeper.Home.KeptIn;
        if ((_watcher?.Filter == Path.GetFileName(path) && _watcher?.Path == Path.GetDirectoryName(path)) || !Directory.Exists(Path.GetDirectoryName(path)))
        {
            return;
        }

        _watcher?.Dispose();
        _watcher = new FileSystemWatcher(Path.GetDirectoryName(path)!, Path.GetFileName(path));
        _watcher.Changed += (_, _) => Wake();
        _watcher.Created += (_, _) => Wake();
        _watcher.Renamed += (_, _) => Wake();
        try
        {
            _watcher.EnableRaisingEvents = true;
        }
        catch (IOException)
        {
            // No more watches are given out on this system.
        }
    }
}
