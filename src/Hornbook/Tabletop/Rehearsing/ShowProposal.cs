using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Programmes;
using Hornbook.Tabletop.Desk;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>A proposal of where everything stands for each demonstration of the show, made beside the page. Safe from any thread.</summary>
public sealed class ShowProposal : IDisposable
{
    private readonly BenchDesk _desk;
    private readonly Latest<Asked, Made> _proposal = new(Propose);

    public ShowProposal(BenchDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        _desk = desk;
        _proposal.Changed += () => Changed?.Invoke();
    }

    /// <summary>Raised when there is something new to show; on any thread.</summary>
    public event Action? Changed;

    /// <summary>Whether one is being made.</summary>
    public bool IsBusy => _proposal.IsBusy;

    /// <summary>Share of it that is done [-].</summary>
    public double Done => _proposal.Done;

    /// <summary>The proposal; null before one was made, and where the show or the things of the bench are others now. Where they stand may have changed: the proposal says where to.</summary>
    public Programme? Now => !IsBusy && Present is { } made ? made.Programme : null;

    /// <summary>Why none could be made; null where one was, or none was asked for.</summary>
    public string? Refusal => !IsBusy && Present is { } made ? made.Refusal : null;

    private Made? Present => _proposal.Answer is { } made && made.For.IsFor(_desk.Now.File) ? made : null;

    /// <summary>Makes one for the show as it is now.</summary>
    /// <returns>Ends when it is there, or was stopped.</returns>
    public Task MakeAsync() => _proposal.Ask(new Asked(_desk.Now.File, Show.Of(_desk.Now.Plan)));

    /// <summary>Gives up the one that is being made.</summary>
    public void Stop() => _proposal.Stop();

    public void Dispose() => _proposal.Dispose();

    private static Made Propose(Asked asked, IProgress<double> progress, CancellationToken cancellation)
    {
        try
        {
            return new Made(asked, Programme.Propose(asked.Plan, asked.Wanted, progress, cancellation), null);
        }
        catch (ArgumentException refusal)
        {
            return new Made(asked, null, refusal.Message);
        }
    }

    private sealed record Asked(BenchFile File, IReadOnlyList<Demonstration> Wanted)
    {
        internal BenchPlan Plan => File.Plan!;

        // What is to be set follows from what was shown before, so another order is another show.
        internal bool IsFor(BenchFile now) => now.HasThingsOf(File) && Show.Of(now.Plan!).Select(shown => shown.Name).SequenceEqual(Wanted.Select(shown => shown.Name));
    }

    private sealed record Made(Asked For, Programme? Programme, string? Refusal);
}
