using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Hornbook.Tabletop;

namespace Hornbook.Commands;

/// <summary>tabletop: the page.</summary>
internal static class TabletopCommand
{
    internal static Command Create()
    {
        Argument<string?> bench = new("BENCH") { Description = "The bench file; without one the example is shown.", Arity = ArgumentArity.ZeroOrOne };
        Option<int> port = new("--port")
        {
            Description = "Number of the port on this machine; 0 takes a free one.",
            HelpName = "NUMBER",
            DefaultValueFactory = _ => TabletopHost.DefaultPort,
            CustomParser = Port,
        };
        Option<bool> quiet = new("--no-browser") { Description = "Do not open a browser." };
        Option<bool> share = new("--share") { Description = "Let others on the same network look on and move copies of their own." };
        Command command = new ExampledCommand("tabletop", "Opens the tabletop page: move and turn things, and hear the tone.")
        {
            Examples =
            [
                ("hornbook tabletop my-bench.toml", "Show a bench of your own"),
                ("hornbook tabletop --share my-bench.toml", "Let a class look on: it prints the address to give them"),
                ("hornbook tabletop --port 0 --no-browser", "Only say where the page is, on any free port"),
            ],
        };
        command.Add(bench);
        command.Add(port);
        command.Add(quiet);
        command.Add(share);
        command.SetAction((parsed, cancellation) =>
            TabletopHost.RunAsync(parsed.GetValue(bench), parsed.GetValue(port), !parsed.GetValue(quiet), parsed.GetValue(share), cancellation));
        return command;
    }

    private static int Port(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (!ushort.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out ushort number))
        {
            result.AddError($"--port: \"{text}\" is no port; type a number from 0 to 65535");
        }

        return number;
    }
}
