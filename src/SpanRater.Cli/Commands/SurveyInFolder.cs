using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary>The tables in the folder of a survey: each in every form that suits it.</summary>
internal static class SurveyTablesInFolder
{
    public static void Write(SurveyStore store, Survey survey, SurveyChanges? changes, DisplayUnits units)
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
    }
}
