using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary>The folder that a survey writes: its tables, each in every form that suits it, and what is said where it cannot be written.</summary>
internal static class SurveyInFolder
{
    /// <summary>Opens the folder.</summary>
    /// <param name="folder">The folder, as it was named.</param>
    /// <param name="asked">What the survey was asked for.</param>
    public static SurveyStore Open(string folder, SurveyAsked asked) =>
        Written(folder, () => SurveyStore.Open(folder, ProgramVersion.Text, ProgramVersion.Build, asked), () => null);

    /// <summary>Does what writes into the folder; where that cannot be done, it is refused with what is kept there.</summary>
    /// <param name="folder">The folder, as it was named.</param>
    /// <param name="write">What writes.</param>
    /// <param name="kept">How many bridges are kept there, in words; null for none.</param>
    public static T Written<T>(string folder, Func<T> write, Func<string?> kept)
    {
        try
        {
            return write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"--out \"{folder}\": cannot be written: {(e is UnauthorizedAccessException ? "access is denied" : e.Message.TrimEnd('.'))}.{(kept() is { } words ? $" {words}" : "")}");
        }
    }

    /// <summary>Writes the tables.</summary>
    /// <param name="store">The folder.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="changes">What differs since an earlier one; null where none is named.</param>
    /// <param name="units">Units to show.</param>
    /// <returns>How many tables there are.</returns>
    public static int Write(SurveyStore store, Survey survey, SurveyChanges? changes, DisplayUnits units)
    {
        ResultPage page = SurveyPage.Of(survey, changes, SurveyTable.Bridges);
        var tables = new List<(string File, Action<Stream> Write)>
        {
            ("survey.json", stream => ResultFormats.Json(page, stream)),
            ("survey.csv", stream => stream.Write(ResultFormats.Csv(page, units))),
            ("survey.md", stream => stream.Write(MarkdownFormat.Write(page, units))),
            ("survey.html", stream => stream.Write(SurveyFile.Html(survey, changes, units))),
            ("matrix.csv", stream => stream.Write(ResultFormats.Csv(SurveyPage.Of(survey, null, SurveyTable.Matrix), units))),
        };
        if (survey.Asked.Crosses is not null)
        {
            tables.Add(("crossings.csv", stream => stream.Write(ResultFormats.Csv(SurveyPage.Of(survey, null, SurveyTable.Crossings), units))));
        }

        if (changes is not null)
        {
            tables.Add(("changes.csv", stream => stream.Write(ResultFormats.Csv(page with { Rows = SurveyPage.ChangesForFile(changes) }, units))));
        }

        store.Finish(tables, survey.All.Where(b => !b.IsFault).Select(b => b.Hash).OfType<string>());
        return tables.Count;
    }
}
