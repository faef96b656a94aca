using Hornbook.Bench.Demonstrations;
using Hornbook.Bench.Files.Editing;
using Hornbook.Physics;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tabletop.Sharing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Sharing;

public sealed class GuestBenchTests : IDisposable
{
    private readonly Workplace _presenter = new(ExampleBench.File, ExampleBench.Home);
    private readonly GuestBench _guest;
    private readonly BenchSession _window;

    public GuestBenchTests()
    {
        _guest = new GuestBench(_presenter, new GuestWork(), TimeProvider.System);
        _window = new BenchSession(_guest.Desk, _guest.Advice);
    }

    public void Dispose()
    {
        _window.Dispose();
        _guest.Dispose();
        _presenter.Dispose();
    }

    [Fact]
    public void What_the_presenter_moves_a_guest_sees()
    {
        Presenter("1.1 m");
        Assert.Equal(1.1, _window.Receiver.Pose.Position.X, 12); // derived: as moved above
        Assert.Equal(_presenter.Desk.Now.Reading, _window.Reading);
    }

    [Fact]
    public async Task What_the_presenter_has_in_hand_a_guest_sees_on_its_way_and_where_it_is_put_down()
    {
        using BenchSession presenter = new(_presenter.Desk, _presenter.Advice);
        TaskCompletionSource turned = new();
        _window.Changed += () =>
        {
            if (Math.Abs(_window.Receiver.Pose.Turn - 2.5) < 1e-12)
            {
                turned.TrySetResult();
            }
        };
        foreach (double turn in new[] { 2.9, 2.7, 2.5 }) // derived: on the way; nothing is put down
        {
            presenter.Place(BenchEnd.Receiver, presenter.Receiver.Pose with { Turn = turn });
        }

        await turned.Task.WaitAsync(TimeSpan.FromSeconds(20.0), TestContext.Current.CancellationToken);
        Assert.Equal(presenter.Reading.Link, _window.Reading.Link);
        Assert.False(_window.History.CanUndo);

        presenter.Release();
        await Eventually(() => _guest.Desk.Now == _presenter.Desk.Now && !_window.HasInHand && _window.Reading == _presenter.Desk.Now.Reading);
    }

    [Fact]
    public async Task What_is_dropped_with_its_window_is_back_where_it_was()
    {
        BenchSession presenter = new(_presenter.Desk, _presenter.Advice);
        presenter.Place(BenchEnd.Receiver, presenter.Receiver.Pose with { Turn = 2.5 });
        await Eventually(() => _window.HasInHand);
        presenter.Dispose();
        await Eventually(() => !_window.HasInHand);
        Assert.Equal(_presenter.Desk.Now.Plan.Receiver.Pose, _window.Receiver.Pose);
    }

    [Fact]
    public void Who_looks_on_moves_nothing()
    {
        Pose elsewhere = _window.Receiver.Pose with { Turn = 1.0 }; // derived: anywhere else
        Presenter("1.1 m");
        _window.Place(BenchEnd.Receiver, elsewhere);
        _window.Release();
        _window.Swap(BenchEnd.Source, "probe");
        _window.Undo();
        Assert.NotNull(_window.Refusal);
        Assert.Equal(1.1, _presenter.Desk.Now.Plan.Receiver.Pose.Position.X, 12); // derived: as the presenter moved it
        Assert.Same(_presenter.Desk.Now, _guest.Desk.Now);
    }

    [Fact]
    public void A_copy_is_the_guests_alone_and_the_presenters_bench_is_not_touched()
    {
        _guest.TakeCopy();
        _window.Swap(BenchEnd.Source, "probe");
        Presenter("1.1 m");
        Assert.Equal("probe", _window.Source.Antenna);
        Assert.Equal(1.2, _window.Receiver.Pose.Position.X, 12); // derived: as in the example
        Assert.Equal("large-horn", _presenter.Desk.Now.Plan.Source.Antenna);
        _window.Undo();
        Assert.Equal("large-horn", _window.Source.Antenna);
        Assert.False(_window.History.CanUndo);
    }

    [Fact]
    public void A_guest_can_come_back_to_look_on()
    {
        _guest.TakeCopy();
        _window.Swap(BenchEnd.Source, "probe");
        Presenter("1.1 m");
        _guest.LookOn();
        Assert.Equal("large-horn", _window.Source.Antenna);
        Assert.Equal(1.1, _window.Receiver.Pose.Position.X, 12); // derived: as the presenter moved it
        Assert.Same(_presenter.Advice, _guest.Advice);
    }

    [Fact]
    public async Task Of_many_moves_in_a_row_the_last_is_seen()
    {
        for (int centimetres = 100; centimetres <= 130; centimetres++)
        {
            Presenter($"{centimetres} cm");
        }

        for (int patience = 0; _window.Receiver.Pose.Position.X < 1.3 && patience < 500; patience++) // derived: the last of the moves above
        {
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }

        Assert.Same(_presenter.Desk.Now, _guest.Desk.Now);
    }

    [Fact]
    public async Task A_copy_with_panels_is_not_looked_over_for_each_guest()
    {
        Assert.Null(_presenter.Desk.Edit("adding", [BenchChange.ToNew("panels.plate", "kind = \"metal plate\"", "width = \"10 cm\"", "height = \"10 cm\"", "x = \"70 cm\"", "z = \"40 cm\"", "aside = true")]));
        _guest.TakeCopy();
        Assert.False(_guest.Advice.Looks);
        await _guest.Advice.CompleteAsync();
        Assert.Null(_guest.Advice.Findings);
        Assert.NotNull(_guest.Advice.KeepOut);
    }

    [Fact]
    public async Task A_fresh_copy_knows_what_was_said_of_the_presenters_bench_and_is_looked_over_when_it_is_moved()
    {
        await _presenter.Advice.CompleteAsync();
        _guest.TakeCopy();
        Assert.Same(_presenter.Advice.Findings, _guest.Advice.Findings);
        Assert.Same(_presenter.Advice.KeepOut, _guest.Advice.KeepOut);
        Assert.False(_guest.Advice.IsLooking);

        Assert.Null(_guest.Desk.Edit("moving", [BenchChange.ToText("receiver.x", "1.1 m")]));
        await _guest.Advice.CompleteAsync();
        Assert.NotSame(_presenter.Advice.Findings, _guest.Advice.Findings);
        Assert.Same(_presenter.Advice.KeepOut, _guest.Advice.KeepOut); // the source stands as it did

        Assert.Null(_guest.Desk.Edit("more", [BenchChange.ToText("source.worst_case_power", "12 mW")]));
        await _guest.Advice.CompleteAsync();
        Assert.True(_guest.Advice.KeepOut!.OnAxis > _presenter.Advice.KeepOut!.OnAxis);
    }

    [Fact]
    public void A_copy_grows_no_panels()
    {
        _guest.TakeCopy();
        _window.Add("metal plate");
        Assert.NotNull(_window.Refusal);
        Assert.Empty(_window.Panels);
    }

    [Fact]
    public void A_guest_who_has_gone_hears_no_more()
    {
        _guest.Dispose();
        Presenter("1.1 m");
        Assert.NotSame(_presenter.Desk.Now, _guest.Desk.Now);
    }

    private void Presenter(string x) => Assert.Null(_presenter.Desk.Edit("moving", [BenchChange.ToText("receiver.x", x)]));

    // What a guest sees comes at its own pace, on a thread of its own.
    private static async Task Eventually(Func<bool> holds)
    {
        for (int i = 0; i < 400 && !holds(); i++)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.True(holds());
    }
}
