using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Performing;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>The show of the bench on a desk: its curves, the proposal for it, and how far it has been performed. One for all windows of the presenter.</summary>
/// <param name="Curves">What each demonstration will do.</param>
/// <param name="Proposal">Where everything would best stand.</param>
/// <param name="Stage">Where the performance has come to.</param>
public sealed record ShowWork(ShowCurves Curves, ShowProposal Proposal, Stage Stage)
{
    public static ShowWork Of(BenchDesk desk, TimeProvider time) => new(new ShowCurves(desk), new ShowProposal(desk), new Stage(time));
}
