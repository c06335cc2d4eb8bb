using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using System.Text;
using SpanRater.Cli.Commands;
using SpanRater.Files;

namespace SpanRater.Cli;

/// <summary>The program <c>spanrater</c>: reads arguments, calls, prints.</summary>
public static class CommandLineProgram
{
    /// <summary>Runs one command line.</summary>
    /// <param name="args">The arguments, without the program's name.</param>
    /// <param name="surroundings">Where it reads and writes.</param>
    /// <returns>The exit status.</returns>
    public static int Run(IReadOnlyList<string> args, Surroundings surroundings)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(surroundings);
        try
        {
            RefuseBlanks(args);
            RootCommand root = Root(surroundings);
            ParseResult parsed = root.Parse(args);
            if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction)
            {
                SayWhatIsWrong(parsed, surroundings.Error);
                return ExitStatus.Refused;
            }

            using var output = new StringWriter { NewLine = "\n" };
            int status = parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = output, Error = surroundings.Error });
            surroundings.Print(Encoding.UTF8.GetBytes(output.ToString()));
            return status;
        }
        catch (RefusedException e)
        {
            surroundings.Error.WriteLine(e.Message);
            return ExitStatus.Refused;
        }
        catch (OperationCanceledException) when (surroundings.Stop.IsCancellationRequested)
        {
            surroundings.Error.WriteLine("spanrater: interrupted; no file is left half-written.");
            return ExitStatus.Interrupted;
        }
        catch (OutOfMemoryException)
        {
            surroundings.Error.WriteLine("spanrater: there is not enough memory for this. No file is left half-written. Close other programs, or ask for fewer vehicles or a part of the bridge.");
            return ExitStatus.ProgramFault;
        }
        catch (Exception e)
        {
            surroundings.Error.Write(FaultReport.Of(e));
            return ExitStatus.ProgramFault;
        }
    }

    // No path, name or number is blank; what completes words passes them as they stand so far.
    private static void RefuseBlanks(IReadOnlyList<string> args)
    {
        if (args is [var first, ..] && first.StartsWith('['))
        {
            return;
        }

        string[] blanks =
        [
            .. args.Select((a, i) => (Argument: a, Before: i == 0 ? "" : args[i - 1])).Where(a => string.IsNullOrWhiteSpace(a.Argument))
                .Select(a => $"spanrater: {(a.Before.StartsWith('-') ? a.Before : "an argument")} \"{a.Argument}\" is blank: give it a value, or leave it out. In a script, is a variable not set?"),
        ];
        if (blanks.Length > 0)
        {
            throw new RefusedException(blanks);
        }
    }

    private static RootCommand Root(Surroundings surroundings)
    {
        var root = new RootCommand(
            "Rates old truss bridges: influence lines, axle trains rolled over exactly, and the rating factor of every member. "
            + Words.Caution);
        root.Options.OfType<VersionOption>().Single().Action = new TellVersion();
        root.Add(CheckCommand.Make(surroundings));
        root.Add(DeadCommand.Make(surroundings));
        root.Add(ForcesCommand.Make(surroundings));
        root.Add(JointsCommand.Make(surroundings));
        root.Add(SectionCommand.Make(surroundings));
        root.Add(InfluenceCommand.Make(surroundings));
        root.Add(RollCommand.Make(surroundings));
        root.Add(RateCommand.Make(surroundings));
        root.Add(ExplainCommand.Make(surroundings));
        root.Add(ShareCommand.Make(surroundings));
        root.Add(PostCommand.Make(surroundings));
        root.Add(SurveyCommand.Make(surroundings));
        root.Add(ReportCommand.Make(surroundings));
        root.Add(PackCommand.Make(surroundings));
        root.Add(MethodsCommand.Make(surroundings));
        root.Add(CapacityCommand.Make(surroundings));
        root.Add(MeasureCommand.Make(surroundings));
        root.Add(LimitsCommand.Make(surroundings));
        root.Add(FatigueCommand.Make(surroundings));
        root.Add(TrafficCommand.Make(surroundings));
        root.Add(DeflectCommand.Make(surroundings));
        root.Add(FrequencyCommand.Make(surroundings));
        root.Add(VehiclesCommand.Make(surroundings));
        root.Add(NewCommand.Make(surroundings));
        root.Add(ExerciseCommand.Make(surroundings));
        root.Add(CompletionCommand.Make(surroundings));
        return root;
    }

    private static void SayWhatIsWrong(ParseResult parsed, TextWriter error)
    {
        Command command = parsed.CommandResult.Command;
        // Where a word was typed that is no command, "a command is missing" would mislead.
        bool isMistyped = command is RootCommand && parsed.UnmatchedTokens.Count > 0;
        foreach (ParseError each in parsed.Errors.Where(e => !isMistyped || e.Message.Contains('\'', StringComparison.Ordinal)))
        {
            error.WriteLine($"spanrater: {string.Join(' ', each.Message.Split((char[])[' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.')}.");
        }

        IEnumerable<string> words = command.Subcommands.Select(c => c.Name).Concat(command.Options.Select(o => o.Name));
        foreach (string token in parsed.UnmatchedTokens)
        {
            if (NearestName.Find(token, words) is { } name)
            {
                error.WriteLine($"spanrater: did you mean {name}?");
            }
        }

        string path = command is RootCommand ? "spanrater" : $"spanrater {command.Name}";
        error.WriteLine($"See: {path} --help");
    }
}
