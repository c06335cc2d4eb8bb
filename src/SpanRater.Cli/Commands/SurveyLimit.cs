using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The exit status of a survey, and what is said of it on the error writer.</summary>
internal sealed class SurveyLimit
{
    private readonly TextWriter error;
    private readonly double? limit;

    public SurveyLimit(TextWriter error, double? limit)
    {
        this.error = error;
        this.limit = limit;
    }

    /// <summary>
    /// 4 where a bridge is under the line of 3 US tons, or below the limit asked for or withheld; 3 where a rating is withheld, and with a limit where any bridge is not rated; else as the page says.
    /// </summary>
    public int Status(Survey survey, int ofPage)
    {
        SayUrgent("under 3 US tons, or the dead load alone exceeds a capacity", [.. survey.Rated.Where(b => b.IsUnderLine)]);
        SayUrgent("a rating is withheld", [.. survey.Rated.Where(b => b.IsWithheld && !b.IsUnderLine)]);
        SurveyedBridge[] below = limit is not { } least ? []
            : [.. survey.Rated.Where(b => b.IsWithheld || (b.Governing?.Factor is { } factor && SafeLoad.IsBelow(factor, least)))];
        if (below.Length > 0)
        {
            error.WriteLine($"survey: {Bridges(below.Length)} below {FailBelow.Shown(limit!.Value)} or withheld (--fail-below): {Named(below)}.");
        }

        if (survey.NotRated.Count > 0)
        {
            error.WriteLine($"survey: {Bridges(survey.NotRated.Count)} not rated: {Named(survey.NotRated)}.");
        }

        int inPart = survey.Rated.Count(b => b.Standing == SurveyStanding.RatedInPart);
        if (limit is not null && inPart > 0)
        {
            error.WriteLine($"survey: {Bridges(inPart)} rated in part only: no factor is below 1 there, but not everything is rated.");
        }

        return ofPage == ExitStatus.LimitUndercut || below.Length > 0 ? ExitStatus.LimitUndercut
            : limit is not null && survey.NotRated.Count > 0 ? ExitStatus.NoAnswer
            : ofPage;
    }

    private void SayUrgent(string why, IReadOnlyList<SurveyedBridge> bridges)
    {
        if (bridges.Count > 0)
        {
            error.WriteLine($"survey: {Bridges(bridges.Count)} urgent, {why}: {Named(bridges)}.");
        }
    }

    private static string Bridges(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "bridge is" : "bridges are")}");

    private static string Named(IReadOnlyList<SurveyedBridge> bridges) =>
        string.Join(", ", bridges.Take(5).Select(b => b.Folder)) + (bridges.Count > 5 ? string.Create(CultureInfo.InvariantCulture, $" and {bridges.Count - 5} more") : "");
}
