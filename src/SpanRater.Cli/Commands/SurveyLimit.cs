using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The exit status of a survey, and what is said of it on the error writer.</summary>
internal sealed class SurveyLimit
{
    private readonly TextWriter error;
    private readonly double? limit;
    private readonly string place;

    public SurveyLimit(TextWriter error, double? limit, string place)
    {
        this.place = place;
        this.error = error;
        this.limit = limit;
    }

    /// <summary>
    /// 4 where a bridge is under the line of 3 US tons, or below the limit asked for or withheld; 3 where a rating is withheld, and with a limit where any bridge is not rated or a folder could not be searched; else as the page says.
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

        SurveyedBridge[] inPart = limit is null ? [] : [.. survey.Rated.Where(b => b.IsInPart && !below.Contains(b))];
        if (inPart.Length > 0)
        {
            error.WriteLine($"survey: {Bridges(inPart.Length)} rated in part only, with no factor below {FailBelow.Shown(limit!.Value)}: {Named(inPart)}.");
        }

        bool isSearched = survey.NotSearched.All(n => n.IsLink);
        Say("could not be searched", "folder", survey.NotSearched.Where(n => !n.IsLink));
        Say("not followed", "link", survey.NotSearched.Where(n => n.IsLink));
        return ofPage == ExitStatus.LimitUndercut || below.Length > 0 ? ExitStatus.LimitUndercut
            : limit is not null && (survey.NotRated.Count > 0 || !isSearched) ? ExitStatus.NoAnswer
            : ofPage;
    }

    private void SayUrgent(string why, IReadOnlyList<SurveyedBridge> bridges)
    {
        if (bridges.Count > 0)
        {
            error.WriteLine($"survey: {Bridges(bridges.Count)} urgent, {why}: {Named(bridges)}.");
        }
    }

    private void Say(string what, string kind, IEnumerable<PassedOver> passed)
    {
        string[] names = [.. passed.Select(p => p.Shown)];
        if (names.Length > 0)
        {
            error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"survey: {names.Length} {kind}{(names.Length == 1 ? "" : "s")} {what}: {FirstOf(names)}."));
        }
    }

    private static string Bridges(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "bridge is" : "bridges are")}");

    // The folder that was surveyed has no name in the survey but ".".
    private string Named(IReadOnlyList<SurveyedBridge> bridges) => FirstOf([.. bridges.Select(b => b.Folder == "." ? b.Name ?? PrintableText.Of(place) : b.Folder)]);

    private static string FirstOf(string[] names) =>
        string.Join(", ", names.Take(5)) + (names.Length > 5 ? string.Create(CultureInfo.InvariantCulture, $" and {names.Length - 5} more") : "");
}
