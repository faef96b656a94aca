using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Benches;

/// <summary>The benches of the folder: open, copy, begin one. For the person at the bench only.</summary>
public sealed partial class BenchesPage : IDisposable
{
    private readonly CancellationTokenSource _gone = new();
    private IReadOnlyList<BenchEntry>? _mine;
    private ElementReference _nameField;
    private ElementReference _folderTitle;
    private string? _busy;
    private string? _refusal;
    private string? _copied;
    private string? _name;
    private bool _asks;
    private bool _ready;

    [Inject]
    public required BenchOpener Opener { get; set; }

    [Inject]
    public required NavigationManager Views { get; set; }

    private static CultureInfo Invariant => CultureInfo.InvariantCulture;

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await LookAsync();
            _ready = true;
            StateHasChanged();
        }
        else if (_asks)
        {
            _asks = false;
            await _nameField.FocusAsync();
        }
    }

    // Reading two hundred files takes a moment; the page is there meanwhile.
    private async Task LookAsync()
    {
        try
        {
            _mine = await Task.Run(() => Opener.Folder.List(_gone.Token), _gone.Token);
        }
        catch (OperationCanceledException)
        {
            // The visitor has gone on.
        }
        catch (Exception cannot) when (cannot is IOException or UnauthorizedAccessException)
        {
            (_mine, _refusal) = ([], $"The folder cannot be read: {cannot.Message}");
        }
    }

    private Task OpenAsync(BenchEntry entry) => OpenAsync(entry, () => Opener.Open(entry.FileName));

    private Task OpenExampleAsync(BenchEntry entry) => OpenAsync(entry, () => Opener.OpenExample(entry.FileName));

    private async Task OpenAsync(BenchEntry entry, Func<string?> open)
    {
        _busy = $"Opening {entry.Title ?? entry.FileName}";
        _refusal = await Task.Run(open);
        _busy = null;
        if (_refusal is null)
        {
            ShowBench();
        }
    }

    private void ShowBench() => Views.NavigateTo(string.Empty);

    private void AskName(BenchEntry entry)
    {
        _copied = entry.FileName;
        _name = $"{Path.GetFileNameWithoutExtension(entry.FileName)}-copy";
        _asks = true;
    }

    private async Task CopyAsync()
    {
        _refusal = Opener.Copy(_copied!, _name);
        if (_refusal is null)
        {
            await LookAsync();
            if (!_gone.IsCancellationRequested)
            {
                await ForgetNameAsync();
            }
        }
    }

    // The form goes away with what has the keyboard: it waits at the head of the list.
    private async Task ForgetNameAsync()
    {
        _copied = null;
        await _folderTitle.FocusAsync(preventScroll: true);
    }
}
