namespace Hornbook.Commands;

/// <summary>What a command says by its exit code; the same for all commands, listed in docs/commands.md.</summary>
internal enum ExitCode
{
    /// <summary>Done, and nothing stands against it.</summary>
    Fine = 0,

    /// <summary>Done, but the result is bad news: a finding spoils the show, or a wish cannot be met.</summary>
    Spoiled = 1,

    /// <summary>The command line or the bench file is wrong; nothing was computed.</summary>
    BadInput = 2,

    /// <summary>A file could not be read or written, or the program has a defect.</summary>
    Failed = 3,

    /// <summary>Stopped by Ctrl-C.</summary>
    Stopped = 130,
}
