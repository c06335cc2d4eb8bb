using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>The folder of an exercise: sheet, figure, blank answers, key, and the bridge itself. The same bytes for the same exercise.</summary>
public static class ExerciseFolder
{
    /// <summary>Name of the question sheet.</summary>
    public const string SheetFile = "questions.md";

    /// <summary>Name of the key's sheet.</summary>
    public const string KeySheetFile = "key.md";

    /// <summary>Name of the folder of the bridge.</summary>
    public const string BridgeFolderName = "bridge";

    /// <summary>The files.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="units">Its units.</param>
    public static IReadOnlyList<NewFile> Files(Exercise exercise, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(units);
        Picture figure = ElevationPicture.Of(ExerciseSheet.TitleOf(exercise), exercise.Truss, units, exercise.Loads);
        var files = new List<NewFile>
        {
            new(SheetFile, MarkdownFormat.Write(ExerciseSheet.Of(exercise, units), units)),
            new(ExerciseSheet.FigureFile, PictureFile.Bytes(figure, PictureFormat.Png)),
            new(ExerciseTables.AnswersFile, ExerciseTables.Answers(exercise, units)),
            new(KeySheetFile, MarkdownFormat.Write(ExerciseKeySheet.Of(exercise, units), units)),
            new(ExerciseTables.KeyFile, ExerciseTables.Key(exercise, units)),
        };
        files.AddRange(BridgeFolderWriter.Files(ExerciseSheet.Bridge(exercise, units).ToDraft()).Select(f => f with { Name = $"{BridgeFolderName}/{f.Name}" }));
        if (exercise.Train is { } train)
        {
            files.Add(new($"{BridgeFolderName}/{BridgeFolder.VehiclesFile}", ExerciseTables.Vehicles(train, units)));
        }

        return files;
    }
}
