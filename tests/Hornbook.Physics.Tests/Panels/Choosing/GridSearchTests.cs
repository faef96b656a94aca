using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Choosing;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Panels.Choosing;

[Trait("Cost", "Slow")]
public sealed class GridSearchTests
{
    private const double Frequency = 10.525e9;

    // A usual wish: 25 dB along, 0.2 dB across, half a millimetre (common practice, no source).
    private static readonly GridWish Usual = new(Frequency, Decibels.ToRatio(-25.0), Decibels.ToRatio(-0.2), 0.5e-3, 0.5e-3);

    public static TheoryData<GridMake> Makes =>
        [new StripMake(), new StripMake(new LayeredSheet(new Layer(Dielectrics.Find("FR-4")!, 0.8e-3))), new WireMake()];

    [Theory]
    [MemberData(nameof(Makes))]
    public void What_is_found_grants_the_wish_and_can_be_made(GridMake make)
    {
        // Fine enough for strips on a board, which lose more: our own choice.
        GridWish wish = Usual with { OneWaveUpTo = 0.25 * Math.PI };
        wish = make is StripMake { Board: not null } ? new GridWish(Frequency, wish.Leak, Decibels.ToRatio(-2.0), 0.5e-3, 0.5e-3) : wish;
        GridChoices choices = GridSearch.For(wish, make, null, TestContext.Current.CancellationToken);
        Assert.NotEmpty(choices.Found);
        Assert.All(choices.Found, choice =>
        {
            // Solved again by the table that panels use, within its own 1e-6 of the amplitude.
            SheetMatrices response = make.Made(choice.Figures.Period, choice.Figures.Metal).At(Frequency).Arriving(SheetFace.Front, 0.0, 0.0);
            Assert.True(Math.Pow(response.Transmission.AlongAlong.Magnitude, 2.0) <= wish.Leak * 1.0001);
            Assert.True(Math.Pow(response.Transmission.AcrossAcross.Magnitude, 2.0) >= wish.Passed * 0.9999);
            Assert.True(choice.Figures.Metal >= wish.LeastMetal - 1e-9 && choice.Figures.Gap >= wish.LeastGap - 1e-9);
            Assert.InRange(choice.Figures.Metal, choice.NarrowestMetal, choice.WidestMetal);
            Assert.True(choice.Figures.OneWaveUpTo >= wish.OneWaveUpTo - 1e-9);
        });
    }

    [Fact]
    public void At_the_ends_of_the_room_the_wish_is_just_granted()
    {
        foreach (GridChoice choice in GridSearch.For(Usual, new StripMake(), null, TestContext.Current.CancellationToken).Found)
        {
            GridFigures At(double metal) => GridFigures.Of(choice.Figures.Make, choice.Figures.Period, metal, Frequency);
            Assert.True(Usual.Shortfall(At(choice.NarrowestMetal)) <= 1.0);
            Assert.True(Usual.Shortfall(At(choice.WidestMetal)) <= 1.0);
            // derived: leak falls and loss grows with the metal, so a step beyond either end fails, or cannot be made.
            Assert.True(choice.NarrowestMetal - Usual.Step < Usual.LeastMetal - 1e-9 || Usual.Shortfall(At(choice.NarrowestMetal - Usual.Step)) > 1.0);
            Assert.True(choice.WidestMetal + Usual.Step > choice.Figures.Period - Usual.LeastGap + 1e-9 || Usual.Shortfall(At(choice.WidestMetal + Usual.Step)) > 1.0);
        }
    }

    [Fact]
    public void For_fine_strips_the_ends_are_those_of_Lamb()
    {
        // Lamb 1898, from memory: along, X/Z0 = (p/λ) ln csc(πw/2p) and |T|² = 4X²/(1 + 4X²); across, by Babinet, 1/(1 + 4Y²) with
        // Y = (p/λ) ln sec(πw/2p). p ≪ λ; here p = λ/28, and the next term is of the order of (p/λ)² of it.
        double wavelength = Constants.SpeedOfLight / Frequency;
        // Our own choice of a wish.
        GridWish wish = new(Frequency, Decibels.ToRatio(-30.0), Decibels.ToRatio(-0.01), 0.05e-3, 0.05e-3) { Step = 0.01e-3 };
        GridChoice[] choices = [.. GridSearch.For(wish, new StripMake(), null, TestContext.Current.CancellationToken).Found.Where(choice => choice.Figures.Period < wavelength / 20.0)];
        Assert.NotEmpty(choices);
        Assert.All(choices, choice =>
        {
            double p = choice.Figures.Period / wavelength;
            double x = 2.0 * p * Math.Log(1.0 / Math.Sin(0.5 * Math.PI * choice.Figures.Metal / choice.Figures.Period));
            double y = 2.0 * p * Math.Log(1.0 / Math.Cos(0.5 * Math.PI * choice.Figures.Metal / choice.Figures.Period));
            // derived: the first term left out is (p/λ)², at most 0.0025, of the level's slope; 0.03 dB and 1e-4 with room.
            Close.Absolute(Decibels.FromRatio(x * x / (1.0 + (x * x))), Decibels.FromRatio(choice.Figures.PassedAlong), 0.03);
            Close.Absolute(1.0 / (1.0 + (y * y)), choice.Figures.PassedAcross, 1e-4);
        });
    }

    [Fact]
    public void Where_nothing_grants_the_wish_the_nearest_is_told()
    {
        // Nobody gets 60 dB and a loss of nothing with gaps of 2 mm.
        GridWish wish = new(Frequency, Decibels.ToRatio(-60.0), Decibels.ToRatio(-0.001), 2e-3, 2e-3);
        GridChoices choices = GridSearch.For(wish, new StripMake(), null, TestContext.Current.CancellationToken);
        Assert.Empty(choices.Found);
        Assert.True(wish.Shortfall(choices.Nearest!) > 1.0);
    }

    [Fact]
    public void Where_nothing_can_be_made_there_is_nothing()
    {
        // derived: strips and gaps of 2 cm make a period of more than the wavelength.
        GridChoices choices = GridSearch.For(new GridWish(Frequency, 0.01, 0.9, 0.02, 0.02), new StripMake(), null, TestContext.Current.CancellationToken);
        Assert.Empty(choices.Found);
        Assert.Null(choices.Nearest);
    }

    [Fact]
    public void It_can_be_ended()
    {
        using CancellationTokenSource end = new();
        end.Cancel();
        Assert.Throws<OperationCanceledException>(() => GridSearch.For(Usual, new StripMake(), null, end.Token));
    }

    [Fact]
    public void It_tells_how_far_it_is()
    {
        List<double> told = [];
        GridSearch.For(Usual, new StripMake(), new Told(told), TestContext.Current.CancellationToken);
        Assert.Equal(told.Order(), told);
        Assert.Equal(1.0, told[^1]);
    }

    private sealed class Told(List<double> shares) : IProgress<double>
    {
        public void Report(double value) => shares.Add(value);
    }
}
