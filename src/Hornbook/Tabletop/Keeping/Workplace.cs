using Hornbook.Bench.Files;
using Hornbook.Tabletop.Benches;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Rehearsing;

namespace Hornbook.Tabletop.Keeping;

/// <summary>All that belongs to the person at the bench: one for all windows of this machine.</summary>
public sealed class Workplace : IDisposable
{
    /// <param name="file">The bench that is opened; usable.</param>
    /// <param name="home">Where it is kept; its folder is the only one in which benches are looked for and written.</param>
    public Workplace(BenchFile file, BenchHome home)
    {
        Desk = new BenchDesk(file);
        Advice = new BenchAdvice(Desk);
        Keeper = new BenchKeeper(Desk, home);
        Opener = new BenchOpener(Desk, Keeper, BenchFolder.Of(home));
        Show = ShowWork.Of(Desk, TimeProvider.System);
    }

    public BenchDesk Desk { get; }

    public BenchAdvice Advice { get; }

    public BenchKeeper Keeper { get; }

    public BenchOpener Opener { get; }

    public ShowWork Show { get; }

    public void Dispose()
    {
        Advice.Dispose();
        Show.Curves.Dispose();
        Show.Proposal.Dispose();
    }
}
