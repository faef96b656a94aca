using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Editing;
using Hornbook.Physics.Antennas;

namespace Hornbook.Tabletop;

/// <summary>What is done with whole antennas; each is one step that can be undone.</summary>
public static class AntennaMoves
{
    /// <summary>Puts a new antenna among those of the bench, and into a hand where one is named.</summary>
    /// <param name="session">The bench.</param>
    /// <param name="shape">Its dimensions.</param>
    /// <param name="hand">The end that takes it; null for none.</param>
    /// <returns>What it is called.</returns>
    public static string Add(this BenchSession session, AntennaShape shape, BenchEnd? hand)
    {
        ArgumentNullException.ThrowIfNull(session);
        string name = Naming.Free("chosen-horn", session.Plan.Antennas.Select(antenna => antenna.Name));
        BenchChange made = BenchChange.ToNew($"antennas.{name}", [.. AntennaText.Lines(name, shape).Skip(1)]);
        if (hand is { } end)
        {
            string taker = Words.Name(end).ToLowerInvariant();
            session.Do($"making '{name}' for the {taker}", [made, BenchChange.ToText($"{taker}.antenna", name)]);
        }
        else
        {
            session.Do($"adding '{name}'", [made]);
        }

        return name;
    }
}
