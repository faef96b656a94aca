using System.Diagnostics;
using System.Net;
using Hornbook.Bench.Demonstrations;
using Hornbook.Physics;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace Hornbook.Benchmarks.Classroom;

/// <summary>How long a class that looks on waits for the tone of what the presenter has in hand.</summary>
internal static class LookingOnCost
{
    // Longer than the pace at which guests are told, so that every guest hears every move.
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(300);

    /// <summary>Turns the receiver by half a degree each time, as often as said; prints how long it took to each guest's tone.</summary>
    internal static async Task WriteAsync(string path, int count, int moves)
    {
        Share share = new([IPAddress.Parse("127.0.0.2")]);
        await using WebApplication app = ClassroomCost.Serve(path, share);
        await app.StartAsync();
        List<Guest> guests = [];
        for (int i = 0; i < count; i++)
        {
            guests.Add(await Guest.EnterAsync(new Uri(share.Invitations(app.Urls).Single()), takesCopy: false));
        }

        BenchDesk desk = app.Services.GetRequiredService<Workplace>().Desk;
        Pose pose = desk.Now.Plan.Receiver.Pose;
        for (int i = 1; i <= moves; i++)
        {
            long now = Stopwatch.GetTimestamp();
            guests.ForEach(guest => guest.Expect(now));
            desk.Hold(new HandOverDesk(BenchEnd.Receiver, pose with { Turn = pose.Turn + (Math.PI / 360.0 * (i % 40)) }, desk));
            await Task.Delay(Pace);
        }

        Console.WriteLine($"{moves * count} tones to be told");
        GuestClass.Print(guests);
        foreach (Guest guest in guests)
        {
            await guest.DisposeAsync();
        }

        await app.StopAsync();
    }
}
