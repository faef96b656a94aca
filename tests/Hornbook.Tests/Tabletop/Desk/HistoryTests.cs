using CsCheck;
using Hornbook.Tabletop.Desk;
using Xunit;

namespace Hornbook.Tests.Tabletop.Desk;

public sealed class HistoryTests
{
    [Fact]
    public void At_the_beginning_there_is_nothing_to_undo_or_redo()
    {
        History<string> history = new("first");
        Assert.False(history.CanUndo || history.CanRedo);
        Assert.Same(history, history.Undo());
        Assert.Same(history, history.Redo());
    }

    [Fact]
    public void Any_walk_ends_where_a_list_with_a_finger_on_it_ends() => Gen.Int[-2, 9].Array[0, 60].Sample(walk =>
    {
        History<int> history = new(0);
        List<int> list = [0];
        int at = 0;
        foreach (int step in walk)
        {
            if (step == -2)
            {
                (history, at) = (history.Undo(), Math.Max(0, at - 1));
            }
            else if (step == -1)
            {
                (history, at) = (history.Redo(), Math.Min(list.Count - 1, at + 1));
            }
            else
            {
                list.RemoveRange(at + 1, list.Count - at - 1);
                list.Add(step);
                (history, at) = (history.Then(step), at + 1);
            }

            Assert.Equal(list[at], history.Present);
            Assert.Equal(at > 0, history.CanUndo);
            Assert.Equal(at < list.Count - 1, history.CanRedo);
        }
    });

    [Fact]
    public void A_step_done_differently_leaves_what_went_before()
    {
        History<string> history = new History<string>("a").Then("b").Then("c").Undo().Instead("d");
        Assert.Equal("d", history.Present);
        Assert.False(history.CanRedo);
        Assert.Equal("a", history.Undo().Present);
    }

    [Fact]
    public void The_oldest_are_forgotten_where_that_is_asked_for_and_the_latest_stay_in_order()
    {
        History<int> history = new(0);
        for (int i = 1; i <= 7; i++)
        {
            history = history.Then(i).Forgetting(2);
        }

        // derived: at the fourth and sixth step all but two are forgotten, then one more is done
        List<int> back = [];
        for (; history.CanUndo; history = history.Undo())
        {
            back.Add(history.Present);
        }

        Assert.Equal([7, 6, 5], back);
        Assert.Equal(4, history.Present); // derived: the step before
        Assert.Equal(5, history.Redo().Present); // derived: and the one after it
    }
}
