using System.CommandLine;
using Hornbook.Tabletop;

namespace Hornbook.Commands;

/// <summary>tabletop: the page.</summary>
internal static class TabletopCommand
{
    internal const int DefaultPort = 5280;

    internal static Command Create()
    {
        Argument<string?> bench = new("BENCH") { Description = "The bench file; without one the example is shown.", Arity = ArgumentArity.ZeroOrOne };
        Option<int> port = new("--port")
        {
            Description = "Number of the port on this machine; 0 takes a free one.",
            HelpName = "NUMBER",
            DefaultValueFactory = _ => DefaultPort,
        };
        port.Validators.Add(result =>
        {
            int number = result.GetValueOrDefault<int>();
            if (number is < 0 or > 65535)
            {
                result.AddError($"--port = {number}; from 0 to 65535");
            }
        });
        Option<bool> quiet = new("--no-browser") { Description = "Do not open a browser." };
        Command command = new ExampledCommand("tabletop", "Opens the tabletop page: move and turn things, and hear the tone.")
        {
            Examples =
            [
                ("hornbook tabletop my-bench.toml", "Show a bench of your own"),
                ("hornbook tabletop --port 0 --no-browser", "Only say where the page is, on any free port"),
            ],
        };
        command.Add(bench);
        command.Add(port);
        command.Add(quiet);
        command.SetAction((parsed, cancellation) =>
            ServeAsync(parsed.GetValue(bench), parsed.GetValue(port), !parsed.GetValue(quiet), cancellation));
        return command;
    }

    internal static async Task<int> ServeAsync(string? benchPath, int port, bool openBrowser, CancellationToken cancellation) =>
        await TabletopHost.RunAsync(benchPath, port, openBrowser, cancellation);
}
