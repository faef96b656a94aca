using System.Globalization;
using MathNet.Numerics.Statistics;

namespace Hornbook.Benchmarks.Classroom;

/// <summary>A class of guests in a process of its own, so that the program's memory is its own.</summary>
internal static class GuestClass
{
    internal const string Command = "classroom-guests";

    // From a move to its tone [ms].
    private const double Target = 200.0;

    // Fifteen moves a second is what a hand on a telephone makes.
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(67);

    /// <summary>Lets all drag at once, and prints how long they waited.</summary>
    internal static async Task RunAsync(Uri invitation, int count, TimeSpan lasting)
    {
        List<Guest> guests = [];
        for (int i = 0; i < count; i++)
        {
            guests.Add(await Guest.EnterAsync(invitation, takesCopy: true));
        }

        await Task.WhenAll(guests.Select((guest, i) => guest.DragAsync(lasting, Pace, new Random(i))));
        Print(guests);
        foreach (Guest guest in guests)
        {
            await guest.DisposeAsync();
        }
    }

    /// <summary>Prints how long a class waited.</summary>
    internal static void Print(IReadOnlyList<Guest> guests)
    {
        double[] waits = [.. guests.SelectMany(guest => guest.Waits)];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{guests.Count,3} guests, {waits.Length,6} moves: median {waits.Median(),6:0.0} ms, 95 % {waits.Quantile(0.95),6:0.0} ms, 99 % {waits.Quantile(0.99),6:0.0} ms, most {waits.Max(),6:0.0} ms, {waits.Count(wait => wait > Target)} above {Target} ms"));
    }
}
