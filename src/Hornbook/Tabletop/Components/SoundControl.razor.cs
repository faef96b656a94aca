using System.Globalization;
using Hornbook.Physics.Detection;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Hornbook.Tabletop.Components;

/// <summary>The tone in the browser. Nothing sounds before it is asked to.</summary>
public sealed partial class SoundControl : IAsyncDisposable
{
    private const int FirstVolume = 30;

    private IJSObjectReference? _tone;
    private HeardTone? _followed;
    private bool _sounding;
    private int _volume = FirstVolume;

    /// <summary>What is to be heard now.</summary>
    [Parameter, EditorRequired]
    public HeardTone Heard { get; set; }

    [Inject]
    public required IJSRuntime Browser { get; set; }

    // Not awaited by the mover: the tone glides on its own, and the next position must not wait for it.
    protected override void OnParametersSet()
    {
        if (_sounding && _followed != Heard)
        {
            _followed = Heard;
            _ = _tone!.InvokeVoidAsync("follow", Heard.Tone, Heard.JitterCents).AsTask();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Browsers.Silence(_tone);
        await Browsers.LetGo(_tone);
    }

    private async Task Toggle()
    {
        _tone ??= await Browser.InvokeAsync<IJSObjectReference>("import", "./tabletop/tone.js");
        _sounding = !_sounding;
        if (_sounding)
        {
            _followed = Heard;
            await _tone.InvokeVoidAsync("start", Heard.Tone, Heard.JitterCents, _volume / 100.0);
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
}
