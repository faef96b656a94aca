using System.CommandLine;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Commands;

/// <summary>guide: what a rectangular guide does.</summary>
internal static class GuideCommand
{
    internal static Command Create()
    {
        Argument<RectangularGuide?> guide = new("GUIDE") { HelpName = "GUIDE", Description = "Its name, WR-28 to WR-284, or \"22.86 mm x 10.16 mm\".", CustomParser = GuideOption.Read };
        guide.CompletionSources.Add([.. StandardGuides.All.Select(g => g.Name)]);
        Option<double?> frequency = QuantityOption.Create("--frequency", Span.Frequency, "10.525 GHz", "Also say what becomes of a wave of this frequency.");
        Option<Conductor?> walls = WallsOption.Create();
        Command command = new ExampledCommand("guide", "Says what a rectangular guide carries: cut-off, band, wavelength, loss.")
        {
            Examples =
            [
                ("hornbook guide WR-90 --frequency \"10.525 GHz\"", "A standard guide at a frequency"),
                ("hornbook guide \"20 mm x 10 mm\"", "A piece of tube from the workshop"),
            ],
        };
        command.Add(guide);
        command.Add(frequency);
        command.Add(walls);
        Reporting.Attach(command, (typed, _, _) =>
        {
            GuideReport report = GuideReport.Of(typed.GetRequiredValue(guide)!, typed.GetValue(frequency), WallsOption.Of(typed, walls));
            bool carries = report.Wave is null || report.Wave.Use is GuideUse.SingleMode or GuideUse.OutsideRecommendedBand;
            return new Outcome(report, carries ? ExitCode.Fine : ExitCode.Spoiled);
        });
        return command;
    }
}
