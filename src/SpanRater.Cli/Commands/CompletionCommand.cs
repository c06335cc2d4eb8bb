using System.CommandLine;

namespace SpanRater.Cli.Commands;

/// <summary><c>completion SHELL</c>: prints the few lines that make a shell complete bridge, member, case and vehicle names.</summary>
internal static class CompletionCommand
{
    private const string Bash = """
        # Completion of spanrater for bash: add to ~/.bashrc the line
        #   eval "$(spanrater completion bash)"
        _spanrater() {
          local found
          COMPREPLY=()
          while IFS= read -r found; do COMPREPLY+=("$(printf '%q' "$found")"); done \
            < <(spanrater "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)
        }
        complete -o default -F _spanrater spanrater
        """;

    private const string Zsh = """
        # Completion of spanrater for zsh: add to ~/.zshrc the line
        #   eval "$(spanrater completion zsh)"
        _spanrater() {
          local -a found
          found=("${(@f)$(spanrater "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
          compadd -a found
        }
        compdef _spanrater spanrater
        """;

    private const string PowerShell = """
        # Completion of spanrater for PowerShell: add to $PROFILE the line
        #   spanrater completion powershell | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName spanrater -ScriptBlock {
          param($word, $ast, $position)
          spanrater "[suggest:$position]" "$ast" | Where-Object { $_ -like "$word*" } | ForEach-Object {
            $text = if ($_ -match '\s') { "'$_'" } else { $_ }
            [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $_)
          }
        }
        """;

    public static Command Make(Surroundings surroundings)
    {
        var shell = new Argument<string>("SHELL") { Description = "bash, zsh or powershell.", HelpName = "SHELL" };
        shell.AcceptOnlyFromAmong("bash", "zsh", "powershell");
        var command = new Command("completion", "Print what makes a shell complete bridge, member, case and vehicle names.") { shell };
        command.SetAction(parsed =>
        {
            string script = parsed.GetRequiredValue(shell) switch
            {
                "bash" => Bash,
                "zsh" => Zsh,
                _ => PowerShell,
            };
            surroundings.Print(System.Text.Encoding.UTF8.GetBytes(script.ReplaceLineEndings("\n") + "\n"));
            return ExitStatus.Done;
        });
        return command;
    }
}
