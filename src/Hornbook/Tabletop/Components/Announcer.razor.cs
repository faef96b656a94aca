using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

public sealed partial class Announcer : IDisposable
{
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(700);

    private readonly CancellationTokenSource _gone = new();
    private string _text = string.Empty;
    private string _known = string.Empty;
    private int _moves;

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Inject]
    public required TimeProvider Time { get; set; }

    // As the page is opened, the reading is read with the page: it is spoken once it is another.
    protected override void OnInitialized()
    {
        _known = Words.Spoken(Session.Reading);
        Session.Changed += SpeakSoon;
    }

    public void Dispose()
    {
        Session.Changed -= SpeakSoon;
        _gone.Cancel();
        _gone.Dispose();
    }

    private void SpeakSoon() => _ = SpeakAtRest(++_moves);

    private async Task SpeakAtRest(int move)
    {
        try
        {
            await Task.Delay(Rest, Time, _gone.Token);
        }
        catch (OperationCanceledException)
        {
            return; // the visitor has left
        }

        string now = Words.Spoken(Session.Reading);
        if (move == _moves && now != _known)
        {
            _known = _text = now;
            await InvokeAsync(StateHasChanged);
        }
    }
}
