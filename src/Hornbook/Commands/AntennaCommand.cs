using System.CommandLine;
using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Commands.Reports;
using Hornbook.Commands.Typing;
using Hornbook.Drawing.Figures;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Commands;

/// <summary>antenna: the numbers and the pattern of an antenna, of a bench or by its dimensions.</summary>
internal static class AntennaCommand
{
    internal static Command Create()
    {
        Typed typed = new();
        Option<double?> tolerance = ToleranceOption.Create();
        Option<string?> figure = OutputFile.Figure("Draw the pattern into a file");
        Command command = new ExampledCommand("antenna", "Says what an antenna does: gain, beam, near zone, and what a build error costs.")
        {
            Examples =
            [
                ("hornbook antenna examples/evening-bench.toml large-horn --figure pattern.svg", "An antenna of a bench, with its pattern"),
                ("hornbook antenna --guide WR-90 --frequency \"10.525 GHz\" \\\n      --mouth-width \"94 mm\" --mouth-height \"79 mm\" --length \"130 mm\"", "A horn by its dimensions"),
                ("hornbook antenna --guide WR-42 --frequency \"24.125 GHz\"", "An open guide"),
            ],
        };
        typed.AddTo(command);
        command.Add(tolerance);
        command.Add(figure);
        Reporting.Attach(command, (parsed, progress, cancellation) =>
        {
            (string name, Antenna antenna) = typed.Antenna(parsed);
            progress.Begin("trying build errors");
            if (parsed.GetValue(figure) is { } path)
            {
                OutputFile.Write(path, PatternFigure.Of(name, antenna), parsed.InvocationConfiguration.Error);
            }

            return new Outcome(AntennaReport.Of(name, antenna, ToleranceOption.Of(parsed, tolerance)));
        });
        return command;
    }

    // Everything that can be typed to say which antenna is meant.
    private sealed class Typed
    {
        private readonly Argument<string> _bench = new("BENCH") { Description = "The bench file; or give dimensions instead.", Arity = ArgumentArity.ZeroOrOne };
        private readonly Argument<string?> _name = new("NAME") { Description = "Name of the antenna in the bench file.", Arity = ArgumentArity.ZeroOrOne };
        private readonly Option<RectangularGuide?> _guide = GuideOption.Create("The guide, by name or \"22.86 mm x 10.16 mm\".");
        private readonly Option<double?> _width = QuantityOption.Create("--mouth-width", Span.Mouth, "94 mm", "Inside width of the mouth (H plane); without a mouth, an open guide.");
        private readonly Option<double?> _height = QuantityOption.Create("--mouth-height", Span.Mouth, "79 mm", "Inside height of the mouth (E plane).");
        private readonly Option<double?> _length = QuantityOption.Create("--length", Span.Length, "130 mm", "Throat to mouth along the axis.");
        private readonly Option<double?> _frequency = QuantityOption.Create("--frequency", Span.Frequency, "10.525 GHz", "Frequency.");
        private readonly Option<Conductor?> _walls = WallsOption.Create();

        internal void AddTo(Command command)
        {
            _name.CompletionSources.Add(BenchArgument.Names(_bench, plan => plan.Antennas.Select(a => a.Name)));
            command.Add(_bench);
            command.Add(_name);
            foreach (Option option in new Option[] { _guide, _width, _height, _length, _frequency, _walls })
            {
                command.Add(option);
            }
        }

        internal (string Name, Antenna Antenna) Antenna(ParseResult parsed)
        {
            if (parsed.GetValue(_bench) is not { } path)
            {
                return ByDimensions(parsed);
            }

            if (parsed.GetValue(_guide) is not null || parsed.GetValue(_frequency) is not null)
            {
                throw new BadInputException("give either a bench file or dimensions, not both");
            }

            Scene scene = BenchArgument.Scene(path);
            string name = Known(scene.Plan, parsed.GetValue(_name));
            return (name, scene.Antenna(name));
        }

        private static string Known(BenchPlan plan, string? name) => plan.Antennas.Any(a => a.Name == name)
            ? name!
            : throw new BadInputException($"{(name is null ? "which antenna?" : $"\"{name}\" is no antenna of this bench;")} type one of {string.Join(", ", plan.Antennas.Select(a => a.Name))}");

        private (string Name, Antenna Antenna) ByDimensions(ParseResult parsed)
        {
            RectangularGuide guide = parsed.GetValue(_guide) ?? throw new BadInputException("give a bench file and a name, or at least --guide and --frequency");
            double frequency = parsed.GetValue(_frequency) ?? throw new BadInputException("--frequency is missing, like --frequency \"10.525 GHz\"");
            Conductor walls = WallsOption.Of(parsed, _walls);
            AntennaShape shape = (parsed.GetValue(_width), parsed.GetValue(_height), parsed.GetValue(_length)) switch
            {
                (null, null, null) => new OpenGuide(guide, walls),
                ({ } width, { } height, { } length) => Sized.Horn(guide, width, height, length, walls),
                _ => throw new BadInputException("a horn needs all of --mouth-width, --mouth-height and --length; an open guide none of them"),
            };
            Sized.RequireWave(guide, frequency);
            Sized.RequireComputable(shape, frequency);
            return (shape is Horn ? "horn" : "open guide", Physics.Antennas.Antenna.At(shape, frequency));
        }
    }
}
