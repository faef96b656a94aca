using System.Net;
using Hornbook.Tabletop.Sharing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Sharing;

public sealed class ShareTests
{
    [Fact]
    public void A_key_is_long_new_each_time_and_fits_itself_only()
    {
        ShareKey key = new(), other = new();
        // derived: 192 bits at 6 a letter, more than the 128 that are asked for
        Assert.Equal(32, key.Text.Length);
        Assert.True(key.Fits(key.Text));
        Assert.False(key.Fits(other.Text));
        Assert.False(key.Fits(key.Text[..^1]));
        Assert.False(key.Fits(null));
    }

    [Fact]
    public void Only_network_addresses_are_given_out()
    {
        Share share = new([IPAddress.Parse("192.0.2.7")]);
        Assert.Equal([$"http://192.0.2.7:80/?key={share.Key.Text}"], share.Invitations(["http://127.0.0.1:80", "http://192.0.2.7:80"]).Select(url => url.Replace(".7/", ".7:80/", StringComparison.Ordinal)));
    }

    [Fact]
    public void There_are_so_many_seats()
    {
        GuestSeats seats = new(2);
        Assert.True(seats.TryTake() && seats.TryTake());
        Assert.False(seats.TryTake());
        seats.Leave();
        Assert.True(seats.TryTake());
        Assert.True(seats.AreFull);
    }
}
