using System.CommandLine;

namespace Hornbook.Commands;

/// <summary>completion: a script that makes a shell complete Hornbook's commands, options and names.</summary>
internal static class CompletionCommand
{
    private static readonly Dictionary<string, string> Scripts = new()
    {
        ["bash"] = """
            # Hornbook's words for bash. Put into ~/.bashrc:  source <(hornbook completion bash)
            _hornbook() {
              local IFS=$'\n'
              COMPREPLY=($(compgen -W "$("$1" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
            }
            complete -o default -F _hornbook hornbook

            """,
        ["zsh"] = """
            # Hornbook's words for zsh. Put into ~/.zshrc, after compinit:  source <(hornbook completion zsh)
            _hornbook() {
              local -a answers
              answers=("${(@f)$($words[1] "[suggest:$CURSOR]" "$BUFFER" 2>/dev/null)}")
              compadd -a answers
              _files
            }
            compdef _hornbook hornbook

            """,
        ["fish"] = """
            # Hornbook's words for fish. Put into ~/.config/fish/config.fish:  hornbook completion fish | source
            function __hornbook_answers
                set -l line (commandline -cp)
                hornbook "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
            end
            complete -c hornbook -a '(__hornbook_answers)'

            """,
    };

    internal static Command Create()
    {
        Argument<string> shell = new("SHELL") { Description = "bash, zsh or fish." };
        shell.AcceptOnlyFromAmong([.. Scripts.Keys]);
        Command command = new ExampledCommand("completion", "Prints a script with which a shell completes commands, options and names.")
        {
            Examples = [("source <(hornbook completion bash)", "Complete in this shell from now on")],
        };
        command.Add(shell);
        command.SetAction(parsed =>
        {
            parsed.InvocationConfiguration.Output.Write(Scripts[parsed.GetRequiredValue(shell)]);
            return (int)ExitCode.Fine;
        });
        return command;
    }
}
