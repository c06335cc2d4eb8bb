using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Writes a survey as one HTML file that holds all it needs and fetches nothing.</summary>
public static class SurveyFile
{
    /// <summary>The bytes of the file: UTF-8, the same for the same survey in whatever culture.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="changes">What differs since an earlier one; null where none is named.</param>
    /// <param name="units">Units to show.</param>
    public static byte[] Html(Survey survey, SurveyChanges? changes, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(units);
        ReportChapter?[] chapters =
        [
            Chapter("crossings", $"Where {survey.Asked.Crosses} may cross", SurveyPage.Crossings(survey)),
            Chapter("bridges", "What needs doing, the most urgent first", SurveyPage.Rated(survey)),
            Chapter("changes", "Changes since the earlier survey", changes is null ? [] : SurveyPage.Changes(changes)),
            Chapter("not-rated", "Bridges that are not rated", [.. SurveyPage.NotRated(survey), .. SurveyPage.NotSearched(survey)]),
            survey.Rated.Count == 0 ? null : Chapter("matrix", "Lowest factor of each bridge under each vehicle", SurveyPage.Matrix(survey)),
        ];
        return HtmlFile.Page<SurveyDocument>(
            (nameof(SurveyDocument.Title), SurveyPage.Title(survey)),
            (nameof(SurveyDocument.Version), survey.Version),
            (nameof(SurveyDocument.First), SurveyPage.First(survey, changes)),
            (nameof(SurveyDocument.IsUrgent), survey.Rated.Any(b => b.Standing == SurveyStanding.Urgent)),
            (nameof(SurveyDocument.Chapters), chapters.OfType<ReportChapter>().ToArray()),
            (nameof(SurveyDocument.Units), units));
    }

    // The heading of a page is the title of its chapter.
    private static ReportChapter? Chapter(string id, string title, IReadOnlyList<ResultBlock> blocks) =>
        blocks.Count == 0 ? null : new ReportChapter(id, title, [.. blocks.Skip(blocks[0] is ResultBlock.Heading ? 1 : 0)]);
}
