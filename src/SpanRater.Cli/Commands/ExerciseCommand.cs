using System.CommandLine;
using System.Globalization;
using SpanRater.Cli.Terminal;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>exercise --form NAME --seed N</c>: writes a question sheet with its key; <c>exercise check ANSWERS</c> marks answers.</summary>
internal static class ExerciseCommand
{
    private static readonly ExerciseLevel[] Levels = Enum.GetValues<ExerciseLevel>();

    public static Command Make(Surroundings surroundings)
    {
        Option<string?> form = NewCommand.FormOption();
        var seed = new Option<string?>("--seed") { Description = "A whole number: the same number gives the same exercise, byte for byte.", HelpName = "N" };
        var level = new Option<string>("--level") { Description = "easy: reactions and two members; medium: members of inner panels; hard: influence ordinates and peaks under a train.", HelpName = "easy|medium|hard", DefaultValueFactory = _ => "easy" };
        var units = new Option<string>("--units") { Description = "us (feet and kips) or si (metres and kilonewtons).", HelpName = "us|si", DefaultValueFactory = _ => "us" };
        var output = new Option<string?>("--out") { Description = "The folder to write: one that is not there yet, or an empty one. Unset: exercise-FORM-LEVEL-N here.", HelpName = "FOLDER" };
        level.AcceptOnlyFromAmong([.. Levels.Select(ExerciseWords.Of)]);
        units.AcceptOnlyFromAmong("us", "si");
        var command = new Command("exercise", "Write an exercise for learners, with figure, key and the bridge itself; exercise check marks the answers.") { form, seed, level, units, output, Check(surroundings) };
        command.SetAction(parsed =>
        {
            (FormKind? kind, string? fault) = FormOptionsReader.FindForm(parsed.GetValue(form));
            int? number = int.TryParse(parsed.GetValue(seed), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : null;
            string folder = parsed.GetValue(output) ?? string.Create(CultureInfo.InvariantCulture, $"exercise-{kind?.Key}-{parsed.GetValue(level)}-{number}");
            string[] faults = [.. ((string?[])[fault, SeedFault(parsed.GetValue(seed), number)]).OfType<string>(), .. parsed.GetValue(output) is null && (kind is null || number is null) ? [] : NewCommand.WhyNot(folder)];
            if (faults.Length > 0)
            {
                throw new RefusedException(faults);
            }

            bool us = parsed.GetValue(units) == "us";
            DisplayUnits display = us ? DisplayUnits.Us : DisplayUnits.Si;
            if (!ExerciseMaker.Make(kind!, Levels.First(l => ExerciseWords.Of(l) == parsed.GetValue(level)), number!.Value, us ? ExerciseUnits.Us : ExerciseUnits.Si).TryGet(out Exercise? exercise, out Refusal? refusal))
            {
                surroundings.Error.WriteLine($"No exercise was written: {RefusalWording.Kind(refusal)}. Its two solutions must agree; try another seed.");
                return ExitStatus.NoAnswer;
            }

            IReadOnlyList<NewFile> files = ExerciseFolder.Files(exercise, display);
            surroundings.Stop.ThrowIfCancellationRequested();
            NewCommand.WriteFolder(folder, files);
            surroundings.Print(TextPage.Write(WrittenPage.Of(exercise, folder, files), display, surroundings.TerminalWidth, surroundings.Colour));
            return ExitStatus.Done;
        });
        return command;
    }

    private static Command Check(Surroundings surroundings)
    {
        var common = new CommonOptions(isOfBridges: false);
        var answers = new Argument<string>("ANSWERS") { Description = "The filled-in answers.csv.", HelpName = "ANSWERS.csv" };
        var key = new Option<string?>("--key") { Description = "The key. Unset: key.csv beside the answers.", HelpName = "FILE" };
        var command = new Command("check", "Mark answers, and say what the wrong ones look like.") { answers, key };
        common.AddTo(command);
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(answers);
            string keyPath = parsed.GetValue(key) ?? Path.Combine(Path.GetDirectoryName(path) ?? "", ExerciseTables.KeyFile);
            Answer answer = common.AnswerTo(parsed, surroundings);
            answer.CheckFiles([path, keyPath]);
            if (File.Exists(path) && parsed.GetValue(key) is null && !File.Exists(keyPath))
            {
                throw new RefusedException($"{path}: no {ExerciseTables.KeyFile} lies beside it: name the key with --key FILE.");
            }

            if (Directory.Exists(path))
            {
                throw new RefusedException($"{path}: is a folder: name the file of answers in it, such as {Path.Combine(path, ExerciseTables.AnswersFile)}.");
            }

            var findings = new FindingList();
            return MarkedExercise.Read(path, keyPath, findings) is { } marked
                ? answer.Deliver(MarkedPage.Of(marked), DisplayUnits.Us)
                : throw new RefusedException([.. findings.All.Select(f => f.ToString())]);
        });
        return command;
    }

    private static string? SeedFault(string? typed, int? number) =>
        typed is null ? "--seed is missing: give a whole number, such as --seed 7; the same number gives the same exercise."
        : number is null ? $"--seed \"{typed}\": write a whole number from 0 to {int.MaxValue.ToString(CultureInfo.InvariantCulture)}."
        : null;
}
