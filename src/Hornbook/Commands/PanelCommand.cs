using System.CommandLine;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Commands;

/// <summary>panel: what a flat panel reflects and lets through.</summary>
internal static class PanelCommand
{
    internal static Command Create()
    {
        Argument<Layer[]> layers = LayerArgument.Create();
        Option<double?> frequency = QuantityOption.Create("--frequency", Span.Frequency, "10.525 GHz", "Frequency.");
        frequency.Required = true;
        Option<string?> figure = OutputFile.Figure("Draw both against the angle into a file");
        Command command = new ExampledCommand("panel", "Says what a flat panel of plastic, wood or glass throws back and lets through.")
        {
            Examples =
            [
                ("hornbook panel \"plywood 6 mm\" --frequency \"10.525 GHz\"", "A board"),
                ("hornbook panel \"2.6-0.02j 10 mm\" --frequency \"10.525 GHz\" \\\n      --figure panel.svg", "A plastic by its permittivity"),
                ("hornbook panel \"glass 4 mm\" \"air 12 mm\" \"glass 4 mm\" \\\n      --frequency \"24.125 GHz\"", "A window of two panes"),
            ],
        };
        command.Add(layers);
        command.Add(frequency);
        command.Add(figure);
        Reporting.Attach(command, (typed, _, _) =>
        {
            LayeredSheet sheet = new(typed.GetRequiredValue(layers));
            double f = typed.GetRequiredValue(frequency)!.Value;
            if (typed.GetValue(figure) is { } path)
            {
                OutputFile.Write(path, PanelFigure.Of(sheet, f), typed.InvocationConfiguration.Error);
            }

            return new Outcome(FlatPanelReport.Of(sheet, f), ExitCode.Fine);
        });
        return command;
    }
}
