using System.CommandLine;
using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>
/// The option for scripts that ends a command with status 4 where a factor is below a number, or a rating is withheld. Nothing rated stays status 3; where only
/// a part is rated, that is said on the error writer.
/// </summary>
internal sealed class FailBelow
{
    private readonly Surroundings surroundings;

    public FailBelow(Surroundings surroundings) => this.surroundings = surroundings;

    public Option<string?> Option { get; } = new("--fail-below")
    {
        Description = "For scripts: exit status 4 where the governing factor is below this number, such as 1.0, or a rating is withheld.",
        HelpName = "FACTOR",
    };

    /// <summary>The number asked for; null where none is.</summary>
    public double? In(ParseResult parsed)
    {
        if (parsed.GetValue(Option) is not { } text)
        {
            return null;
        }

        if (text.Contains(',', StringComparison.Ordinal))
        {
            throw new RefusedException($"--fail-below \"{text}\": write the number with a decimal point, such as 1.0.");
        }

        return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double limit) && double.IsFinite(limit) && limit > 0
            ? limit
            : throw new RefusedException($"--fail-below \"{text}\": write a rating factor above 0, in figures and with a decimal point, such as 1.0.");
    }

    /// <summary>The page of a rating, held against the limit.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="page">The page.</param>
    /// <param name="rating">The rating.</param>
    /// <param name="counting">Further rows that count, such as those of the level that is posted.</param>
    public ResultPage On(ParseResult parsed, ResultPage page, BridgeRating rating, params IEnumerable<RatingRow> counting)
    {
        if (In(parsed) is not { } limit)
        {
            return page;
        }

        string command = parsed.CommandResult.Command.Name;
        if (rating.Withheld.Any())
        {
            surroundings.Error.WriteLine($"{command}: a rating is withheld, and counts as below {Shown(limit)} (--fail-below).");
            return page with { UndercutsLimit = true };
        }

        RatingRow? lowest = counting.Where(r => r.Factor is not null).Append(rating.Governing).OfType<RatingRow>().MinBy(r => r.Factor);
        if (lowest is not { Factor: { } factor })
        {
            return page;
        }

        if (SafeLoad.IsBelow(factor, limit))
        {
            surroundings.Error.WriteLine($"{command}: rating factor {ResultTable.Cut(factor, 3)} of {RatingWording.Member(lowest)} in {RatingWording.ActsIn(lowest)} under {RatingWording.Under(lowest)} is below {Shown(limit)} (--fail-below).");
            return page with { UndercutsLimit = true };
        }

        string[] missing = [.. Passage.GapsForAll(rating).Select(SurveyWording.Of), .. NotRatedList.Lines(rating.NotRated, [], DisplayUnits.Si)];
        if (missing.Length > 0)
        {
            surroundings.Error.WriteLine($"{command}: no factor is below {Shown(limit)}, but not everything is rated: {string.Join("; ", missing)}.");
        }

        return page;
    }

    /// <summary>A limit as it was meant.</summary>
    public static string Shown(double limit) => limit.ToString("0.0##", CultureInfo.InvariantCulture);
}
