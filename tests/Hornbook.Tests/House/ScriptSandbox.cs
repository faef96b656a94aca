using System.Diagnostics;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>A checkout of its own for a script, where only the tools that it is given are on the PATH.</summary>
internal sealed class ScriptSandbox : IDisposable
{
    private static readonly string[] ToolFolders = ["/usr/bin/", "/bin/"];

    private readonly string _folder = Directory.CreateTempSubdirectory("hornbook-script-").FullName;

    /// <summary>With the tools of the system that have these names.</summary>
    public ScriptSandbox(params string[] tools)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the scripts are for bash");
        Directory.CreateDirectory(At("bin"));
        foreach (string tool in tools.Append("bash"))
        {
            File.CreateSymbolicLink(At("bin", tool), ToolFolders.Select(f => f + tool).First(File.Exists));
        }
    }

    /// <summary>A path in it.</summary>
    public string At(params string[] parts) => Path.Combine([_folder, .. parts]);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Puts a file of the checkout into it.</summary>
    public void Take(string path) => Write(path, Checkout.File(path).Text);

    /// <summary>Writes a file, making its folder.</summary>
    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text);
    }

    /// <summary>Puts a stand-in for a program on the PATH.</summary>
    public void StandIn(string program, string script)
    {
        Write(Path.Combine("bin", program), script);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(At("bin", program), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>How often a stand-in wrote a line into a file.</summary>
    public int Count(string file) => File.Exists(At(file)) ? File.ReadAllLines(At(file)).Length : 0;

    /// <summary>Runs a script from another folder, with one variable set to a value where one is named ("NAME=value").</summary>
    public (int Code, string Text) Run(string script, string? variable = null, params string[] arguments)
    {
        ProcessStartInfo start = new(At("bin", "bash"), [At(script), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["PATH"] = At("bin");
        start.Environment.Remove("CI");
        start.Environment.Remove("HORNBOOK_CHROMIUM");
        if (variable?.Split('=') is [string name, string value])
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string text = process.StandardOutput.ReadToEnd() + errors.GetAwaiter().GetResult();
        process.WaitForExit();
        return (process.ExitCode, text);
    }
}
