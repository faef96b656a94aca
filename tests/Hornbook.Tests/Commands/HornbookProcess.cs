using System.Diagnostics;
using Hornbook.Testing;

namespace Hornbook.Tests.Commands;

/// <summary>The built program, run as a person runs it.</summary>
internal static class HornbookProcess
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>What a run left.</summary>
    internal sealed record Result(int ExitCode, string Output, string Error)
    {
        /// <summary>The output's lines.</summary>
        internal string[] Lines => Output.TrimEnd('\n').Split('\n');
    }

    /// <summary>Runs it to its end in the checkout's root.</summary>
    internal static Result Run(params string[] arguments) => RunIn(Repository.Root, arguments);

    /// <summary>Runs it to its end in a folder.</summary>
    internal static Result RunIn(string folder, params string[] arguments)
    {
        using Process process = Start(folder, arguments);
        Task<string> error = process.StandardError.ReadToEndAsync();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill();
            throw new TimeoutException($"hornbook {string.Join(' ', arguments)} has not ended after {Patience.TotalSeconds} s");
        }

        return new Result(process.ExitCode, output.Result.ReplaceLineEndings("\n"), error.Result.ReplaceLineEndings("\n"));
    }

    /// <summary>Starts it.</summary>
    internal static Process Start(string folder, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "hornbook.dll"), .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        return Process.Start(start) ?? throw new InvalidOperationException("the program did not start");
    }
}
