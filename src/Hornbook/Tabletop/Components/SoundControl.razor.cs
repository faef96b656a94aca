using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Hornbook.Tabletop.Components;

/// <summary>The tone in the browser. Nothing sounds before it is asked to.</summary>
public sealed partial class SoundControl : IAsyncDisposable
{
    private const int FirstVolume = 30;

    private IJSObjectReference? _tone;
    private bool _sounding;
    private int _volume = FirstVolume;

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Inject]
    public required IJSRuntime Browser { get; set; }

    protected override void OnInitialized() => Session.Changed += Follow;

    public async ValueTask DisposeAsync()
    {
        Session.Changed -= Follow;
        await Browsers.LetGo(_tone);
    }

    private async Task Toggle()
    {
        _tone ??= await Browser.InvokeAsync<IJSObjectReference>("import", "./tabletop/tone.js");
        _sounding = !_sounding;
        if (_sounding)
        {
            await _tone.InvokeVoidAsync("start", Session.Reading.Heard.Tone, Session.Reading.Heard.JitterCents, _volume / 100.0);
        }
        else
        {
            await _tone.InvokeVoidAsync("stop");
        }
    }

    private async Task SetVolume(ChangeEventArgs change)
    {
        _volume = int.Parse((string)change.Value!, CultureInfo.InvariantCulture);
        if (_tone is not null)
        {
            await _tone.InvokeVoidAsync("setVolume", _volume / 100.0);
        }
    }

    // Not awaited by the mover: the tone glides on its own, and the next position must not wait for it.
    private void Follow()
    {
        if (_sounding)
        {
            _ = InvokeAsync(() => _tone!.InvokeVoidAsync("follow", Session.Reading.Heard.Tone, Session.Reading.Heard.JitterCents).AsTask());
        }
    }
}
