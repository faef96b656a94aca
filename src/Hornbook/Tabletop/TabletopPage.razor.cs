using Hornbook.Tabletop.Hands;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Hornbook.Tabletop;

/// <summary>The page: it puts the parts together, and gives the browser's pointer and keys to <see cref="BenchHands"/>.</summary>
public sealed partial class TabletopPage : IAsyncDisposable
{
    private DotNetObjectReference<BenchHands>? _hands;
    private IJSObjectReference? _module;
    private bool _isGone;
    private bool _ready;

    [Inject]
    public required BenchSession Session { get; set; }

    [Inject]
    public required Visitor Visitor { get; set; }

    [Inject]
    public required IJSRuntime Browser { get; set; }

    protected override void OnInitialized()
    {
        Session.OnOwnThread = tell => _ = InvokeAsync(tell);
        Session.Changed += StateHasChanged;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        _module = await Browser.InvokeAsync<IJSObjectReference>("import", "./tabletop/hands.js");
        if (_isGone)
        {
            await Browsers.LetGo(_module); // the visitor has gone on to another view meanwhile
            return;
        }

        _hands = DotNetObjectReference.Create(new BenchHands(Session));
        await _module.InvokeVoidAsync("attach", "tabletop", _hands);
        _ready = true;
        StateHasChanged();
        await Session.Advice.CompleteAsync();
    }

    public async ValueTask DisposeAsync()
    {
        _isGone = true;
        Session.Changed -= StateHasChanged;
        _hands?.Dispose();
        await Browsers.LetGo(_module);
    }
}
