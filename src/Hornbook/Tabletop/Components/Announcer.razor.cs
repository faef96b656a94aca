using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Components;

public sealed partial class Announcer : IDisposable
{
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(700);

    private readonly CancellationTokenSource _gone = new();
    private string _text = string.Empty;
    private int _moves;

    [Parameter, EditorRequired]
    public required BenchSession Session { get; set; }

    [Inject]
    public required TimeProvider Time { get; set; }

    protected override void OnInitialized() => Session.Changed += SpeakSoon;

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

        if (move == _moves)
        {
            _text = Words.Spoken(Session.Reading);
            await InvokeAsync(StateHasChanged);
        }
    }
}
