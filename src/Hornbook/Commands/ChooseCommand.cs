using System.CommandLine;
using Hornbook.Commands.Printing;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Drawing.Figures;
using Hornbook.Physics;
using Hornbook.Physics.Antennas.Choosing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Commands;

/// <summary>choose: a horn from a wish.</summary>
internal static class ChooseCommand
{
    private const int TradePoints = 9;

    // Half a millimetre can be read off a steel rule (common practice, no source).
    private const double DefaultStep = 0.5e-3;

    internal static Command Create()
    {
        Wishes wishes = new();
        Option<RectangularGuide?> guide = GuideOption.Create("The guide that the horn joins, by name or \"22.86 mm x 10.16 mm\".");
        guide.Required = true;
        Option<double?> frequency = QuantityOption.Create("--frequency", Span.Frequency, "10.525 GHz", "Frequency.");
        frequency.Required = true;
        Option<Conductor?> walls = WallsOption.Create();
        Option<double?> tolerance = ToleranceOption.Create();
        Option<double?> step = QuantityOption.Create(
            "--step", Span.Step, "1 mm", "The horn is also given in whole steps of this; 0.5 mm unless given.");
        Option<string?> figure = OutputFile.Figure("Draw what length buys into a file");
        Command command = new ExampledCommand("choose", "Designs a horn from what is wished of it, ready to be built.")
        {
            Examples =
            [
                ("hornbook choose --guide WR-90 --frequency \"10.525 GHz\" --gain \"17 dB\"", "The shortest horn for a gain"),
                ("hornbook choose --guide WR-90 --frequency \"10.525 GHz\" \\\n      --beam-e \"20 deg\" --beam-h \"22 deg\"", "A horn for two half-power widths"),
                ("hornbook choose --guide WR-42 --frequency \"24.125 GHz\" \\\n      --sheet \"20 cm x 30 cm\" --seam \"6 mm\" --figure trade.svg", "The best horn that a sheet of metal yields"),
            ],
        };
        wishes.AddTo(command);
        foreach (Option option in new Option[] { guide, frequency, walls, tolerance, step, figure })
        {
            command.Add(option);
        }

        Reporting.Attach(command, (typed, progress, cancellation) =>
        {
            RectangularGuide chosenGuide = typed.GetRequiredValue(guide)!;
            double f = typed.GetRequiredValue(frequency)!.Value;
            Sized.RequireWave(chosenGuide, f);
            Feed feed = new(chosenGuide, f, WallsOption.Of(typed, walls));
            progress.Begin("looking for a horn");
            (string wish, HornChoice choice) = wishes.Grant(typed, feed);
            IReadOnlyList<HornFigures> trade = choice.IsFound ? Trade(feed, choice.Figures) : [];
            if (typed.GetValue(figure) is { } path && choice.IsFound)
            {
                OutputFile.Write(path, TradeFigure.Of(wish, trade, choice.Figures), typed.InvocationConfiguration.Error);
            }

            HornFigures? cut = Cut(choice, typed.GetValue(step) ?? DefaultStep);
            ChoiceReport report = ChoiceReport.Of(wish, choice, cut, ToleranceOption.Of(typed, tolerance), trade);
            return new Outcome(report, choice.IsFound ? ExitCode.Fine : ExitCode.Spoiled);
        });
        return command;
    }

    // A horn that fills a sheet may not grow.
    private static HornFigures? Cut(HornChoice choice, double step) =>
        choice.Figures?.Rounded(step, choice.Layout is null ? MidpointRounding.ToEven : MidpointRounding.ToZero);

    // From half the chosen length to twice.
    private static IReadOnlyList<HornFigures> Trade(Feed feed, HornFigures chosen)
    {
        double longest = HornWish.LongestInWaves * feed.Wavelength;
        return TradeCurve.Of(feed, 0.5 * chosen.Horn.Length, Math.Min(2.0 * chosen.Horn.Length, longest), TradePoints);
    }

    // The three kinds of wish, of which exactly one is uttered.
    private sealed class Wishes
    {
        private readonly Option<double?> _gain = QuantityOption.Create("--gain", Span.Gain, "17 dB", "Wished gain over an isotropic radiator.");
        private readonly Option<double?> _beamE = QuantityOption.Create("--beam-e", Span.Beam, "20 deg", "Wished half-power width in the E plane, full angle.");
        private readonly Option<double?> _beamH = QuantityOption.Create("--beam-h", Span.Beam, "22 deg", "Wished half-power width in the H plane, full angle.");
        private readonly Option<string?> _sheet = new("--sheet") { Description = "The best that can be cut from a sheet of this size.", HelpName = "\"20 cm x 30 cm\"" };
        private readonly Option<double?> _seam = QuantityOption.Create("--seam", Span.Seam, "6 mm", "Strip left for joining, on two of the four panels; none without it.");

        internal void AddTo(Command command)
        {
            foreach (Option option in new Option[] { _gain, _beamE, _beamH, _sheet, _seam })
            {
                command.Add(option);
            }
        }

        internal (string Wish, HornChoice Choice) Grant(ParseResult typed, Feed feed) =>
            (typed.GetValue(_gain), typed.GetValue(_beamE), typed.GetValue(_beamH), typed.GetValue(_sheet)) switch
            {
                ({ } gain, null, null, null) => ($"a gain of {Show.Db(Decibels.FromRatio(gain), "dBi")}", HornWish.ForGain(feed, gain)),
                (null, { } e, { } h, null) => ($"a beam of {Show.Degrees(e)} (E) by {Show.Degrees(h)} (H)", HornWish.ForBeam(feed, e, h)),
                (null, null, null, { } sheet) => ($"a horn from a sheet of {sheet}", HornWish.FromSheet(feed, Sheet(sheet, typed.GetValue(_seam) ?? 0.0))),
                _ => throw new BadInputException("wish for one thing: --gain, or --beam-e with --beam-h, or --sheet"),
            };

        private static MetalSheet Sheet(string text, double seam)
        {
            string? wrong = TwoLengths.Read(text, Span.Sheet, Span.Sheet, out (double First, double Second) size);
            return wrong is null ? new MetalSheet(size.First, size.Second, seam) : throw new BadInputException($"--sheet: {wrong}");
        }
    }
}
