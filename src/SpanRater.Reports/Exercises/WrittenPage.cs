using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>exercise</c> says: what was written, and what to type next.</summary>
public static class WrittenPage
{
    private static readonly (string File, string What)[] Files =
    [
        (ExerciseFolder.SheetFile, "the questions"),
        (ExerciseSheet.FigureFile, "the figure"),
        (ExerciseTables.AnswersFile, "for the learner to fill in, in any spreadsheet"),
        (ExerciseFolder.KeySheetFile, "the work and the answers, line by line"),
        (ExerciseTables.KeyFile, "what the answers are marked by"),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="folder">Its folder, as it was typed.</param>
    /// <param name="files">Its files.</param>
    public static ResultPage Of(Exercise exercise, string folder, IReadOnlyList<NewFile> files)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(files);
        string answers = NewBridgePage.OnCommandLine(Path.Combine(folder, ExerciseTables.AnswersFile)), bridge = NewBridgePage.OnCommandLine(Path.Combine(folder, ExerciseFolder.BridgeFolderName));
        string run = exercise.Train is null ? $"spanrater forces {bridge} --case {exercise.Loads.Name}" : $"spanrater roll {bridge} --vehicle \"{ExerciseTables.TrainName}\"";
        return new ResultPage(
            [
                new ResultBlock.Heading(ExerciseSheet.TitleOf(exercise)),
                new ResultBlock.Items(
                    $"Written to {folder}:",
                    [.. Files.Select(f => $"{f.File}: {f.What}"), string.Create(CultureInfo.InvariantCulture, $"{ExerciseFolder.BridgeFolderName}: the bridge, for every other command ({files.Count(f => f.Name.Contains('/', StringComparison.Ordinal))} files)")]),
                new ResultBlock.Paragraph("Give learners the first three; keep the rest until they have answered."),
                new ResultBlock.Items("Next:", [$"spanrater exercise check {answers}", run]),
            ],
            new ResultTable([], []),
            [],
            _ => { });
    }
}
