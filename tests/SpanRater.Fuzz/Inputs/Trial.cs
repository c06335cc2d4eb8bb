using System.Text;
using System.Text.RegularExpressions;
using SpanRater.Cli;
using SpanRater.Files;

namespace SpanRater.Fuzz;

/// <summary>What a trial came to.</summary>
/// <param name="WasAccepted">True where the reader took the input as it stands.</param>
/// <param name="Command">The command line that was run on it; null where the readers alone were.</param>
/// <param name="Status">Its exit status; null where none was run.</param>
/// <param name="Fault">What must not be; null where all is well.</param>
public sealed record TrialOutcome(bool WasAccepted, IReadOnlyList<string>? Command, int? Status, string? Fault);

/// <summary>
/// Tries inputs: the readers give findings or a result, and a command on it ends with 0, 1, 3 or 4, says why where it refuses, and prints no NaN and no
/// infinity. Anything else is a fault of the program.
/// </summary>
public sealed partial class Trial : IDisposable
{
    private static readonly string[] Usual = ["check", "forces", "rate", "rate", "rate"];

    private static readonly string[] Others =
        ["dead", "joints", "section", "influence", "roll", "share", "post", "methods", "capacity", "measure", "limits", "deflect", "frequency", "explain", "report", "pack", "fatigue"];

    private static readonly string[] Formats = ["json", "csv", "text", "markdown"];

    private readonly Dictionary<string, StartingPoint> written = [];

    /// <summary>Makes a place for inputs, in memory where the system has a file system there.</summary>
    public Trial()
    {
        string shared = "/dev/shm";
        Folder = Path.Combine(Directory.Exists(shared) ? shared : Path.GetTempPath(), "span-fuzz-" + Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(Folder);
    }

    /// <summary>Where the inputs are written.</summary>
    public string Folder { get; }

    /// <summary>Of so many accepted bridges, one goes through a command other than the usual ones; 0 for none.</summary>
    public int OneInOthers { get; init; } = 12;

    /// <summary>Of so many larger samples that are accepted, one is rated; the small bridge always is.</summary>
    public int OneInLarge { get; init; } = 20;

    /// <summary>Tries an input.</summary>
    /// <param name="input">The input.</param>
    /// <param name="stop">Ends a command that takes too long.</param>
    public TrialOutcome Of(SpoiledInput input, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(input);
        string folder = Write(input);
        IReadOnlyList<string>? command = null;
        try
        {
            (bool isAccepted, IReadOnlyList<string> findings) = Read(input.Start.Kind, folder);
            if (findings.FirstOrDefault(f => f.Length == 0 || f.Contains('\0', StringComparison.Ordinal)) is not null)
            {
                return new TrialOutcome(isAccepted, null, null, "a finding is empty or holds a zero character");
            }

            if (!isAccepted && findings.Count == 0)
            {
                return new TrialOutcome(isAccepted, null, null, "nothing was read, and no finding says why");
            }

            command = CommandFor(input, folder, isAccepted);
            return command is null ? new TrialOutcome(isAccepted, null, null, null) : Run(command, isAccepted, stop);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return new TrialOutcome(false, command, null, e.ToString());
        }
        finally
        {
            Restore(input, folder);
        }
    }

    /// <summary>Removes the folder.</summary>
    public void Dispose() => Directory.Delete(Folder, recursive: true);

    [GeneratedRegex(@"(?<![\p{L}\d_./-])(NaN|-?∞|-?Infinity)(?![\p{L}\d_])")]
    private static partial Regex NoNumber();

    private static (bool IsAccepted, IReadOnlyList<string> Findings) Read(InputKind kind, string folder)
    {
        var findings = new FindingList();
        bool isAccepted;
        switch (kind)
        {
            case InputKind.Bridge:
                BridgeReading reading = BridgeFolder.Read(folder, []);
                return (reading.Bridge is not null, [.. reading.Findings.All.Select(f => f.ToString())]);
            case InputKind.Catalogue:
                Catalogue.Read([folder], [], findings);
                isAccepted = !findings.HasErrors;
                break;
            default:
                isAccepted = MarkedExercise.Read(Path.Combine(folder, ExerciseTables.AnswersFile), Path.Combine(folder, ExerciseTables.KeyFile), findings) is not null;
                break;
        }

        return (isAccepted, [.. findings.All.Select(f => f.ToString())]);
    }

    // Readers are tried on every input; a command on all that they took, and on a few that they refused.
    private List<string>? CommandFor(SpoiledInput input, string folder, bool isAccepted)
    {
        Random chance = input.Chance;
        switch (input.Start.Kind)
        {
            case InputKind.Catalogue:
                return chance.Next(30) == 0 ? ["vehicles", "--catalogue", folder, "--format", Formats[chance.Next(4)]] : null;
            case InputKind.Exercise:
                return isAccepted || chance.Next(10) == 0 ? ["exercise", "check", Path.Combine(folder, ExerciseTables.AnswersFile), "--format", Formats[chance.Next(4)]] : null;
        }

        bool isDue = isAccepted ? input.Start.IsSmall || chance.Next(OneInLarge) == 0 : chance.Next(30) == 0;
        if (!isDue)
        {
            return null;
        }

        bool isOther = OneInOthers > 0 && chance.Next(OneInOthers) == 0;
        string name = isOther ? Others[chance.Next(Others.Length)] : Usual[chance.Next(Usual.Length)];
        List<string> command = [name, folder];
        command.AddRange(name switch
        {
            "forces" or "joints" => ["--case", "DC"],
            "section" => ["--case", "DC", "--member", "L0L1"],
            "roll" => ["--vehicle", "Type 3"],
            "explain" => ["--member", "L0L1", "--vehicle", "Type 3"],
            "fatigue" => ["--member", "L1U1", "--vehicle", "Type 3", "--trucks-a-day", "10", "--years", "20"],
            "report" => ["--out", Path.Combine(Folder, "report.html")],
            "pack" => ["--out", Path.Combine(Folder, "pack")],
            _ => [],
        });
        if (name is not ("report" or "pack"))
        {
            command.AddRange(["--format", Formats[chance.Next(4)]]);
        }

        return command;
    }

    private TrialOutcome Run(IReadOnlyList<string> command, bool isAccepted, CancellationToken stop)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        int status = CommandLineProgram.Run(command, new Surroundings(output, error, TerminalWidth: null, Colour: false) { Stop = stop });
        string said = Encoding.UTF8.GetString(output.ToArray()), complained = error.ToString();
        foreach (string written in (string[])[Path.Combine(Folder, "report.html"), Path.Combine(Folder, "pack", "calculation.md")])
        {
            said += File.Exists(written) && !written.EndsWith(".html", StringComparison.Ordinal) ? File.ReadAllText(written) : "";
        }

        if (Directory.Exists(Path.Combine(Folder, "pack")))
        {
            Directory.Delete(Path.Combine(Folder, "pack"), recursive: true);
        }

        string? fault = status is not (0 or 1 or 3 or 4) ? $"ended with {status}: {complained}"
            : status == 1 && complained.Length == 0 ? "refused without a word"
            : status == 1 && said.Length > 0 ? "refused, and wrote all the same"
            : status != 1 && !isAccepted ? $"the reader refused, and the command ended with {status}"
            : status != 1 && said.Length == 0 ? "ended without a word"
            : NoNumber().Match(said) is { Success: true } match && !IsOfTheInput(match.Value) ? $"printed {match.Value}: …{said[Math.Max(0, match.Index - 200)..Math.Min(said.Length, match.Index + 80)]}"
            : null;
        return new TrialOutcome(isAccepted, command, status, fault);
    }

    // A joint may be called NaN; what the files hold as a text may be printed.
    private bool IsOfTheInput(string word) =>
        Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Any(f => !f.EndsWith(".html", StringComparison.Ordinal) && File.ReadAllText(f).Contains(word.TrimStart('-'), StringComparison.OrdinalIgnoreCase));

    // The starting point is written once, and of it what an input spoils; what was spoiled is put right afterwards.
    private string Write(SpoiledInput input)
    {
        string folder = Path.Combine(Folder, "input-" + input.Start.Name.Replace('/', '-'));
        if (written.TryAdd(input.Start.Name, input.Start))
        {
            Directory.CreateDirectory(folder);
            foreach ((string name, byte[] bytes) in input.Start.Files)
            {
                File.WriteAllBytes(Path.Combine(folder, name), bytes);
            }
        }

        foreach ((string name, byte[] bytes) in input.Files)
        {
            File.WriteAllBytes(Path.Combine(folder, name), bytes);
        }

        return folder;
    }

    private static void Restore(SpoiledInput input, string folder)
    {
        foreach ((string name, byte[] bytes) in input.Start.Files)
        {
            if (input.Files.ContainsKey(name))
            {
                File.WriteAllBytes(Path.Combine(folder, name), bytes);
            }
        }
    }
}
