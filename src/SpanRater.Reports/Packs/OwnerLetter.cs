using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>
/// A draft of the letter to the owner, in plain words and about one page long. It tells what was found and what is proposed; it orders no limit and calls no bridge safe,
/// and what only people know is left as blanks in square brackets.
/// </summary>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What it says.</param>
/// <param name="Units">Units shown.</param>
public sealed record OwnerLetter(string Title, IReadOnlyList<ResultBlock> Blocks, DisplayUnits Units)
{
    /// <summary>What the letter tells where vehicles are to stay off.</summary>
    public const string KeepOff = "Keep vehicles off the bridge until the responsible engineer has decided.";

    private const int MostReasons = 5;

    /// <summary>The letter on a reviewed bridge.</summary>
    /// <param name="reviewed">The bridge.</param>
    public static OwnerLetter Of(ReviewedBridge reviewed)
    {
        ArgumentNullException.ThrowIfNull(reviewed);
        return new($"Draft letter: {reviewed.Name}", [.. Head(reviewed), .. Found(reviewed), .. ProposalWording.Blocks(reviewed), .. NotRated(reviewed), .. Measure(reviewed), .. Close()], reviewed.Units);
    }

    /// <summary>The letter as one HTML file that fetches nothing.</summary>
    public byte[] Html() => HtmlFile.Page<LetterDocument>((nameof(LetterDocument.Letter), this));

    /// <summary>The letter as Markdown.</summary>
    public byte[] Markdown() => MarkdownFormat.Document(Blocks.Prepend(new ResultBlock.Heading(Title, 1)), Units);

    private static IEnumerable<ResultBlock> Head(ReviewedBridge reviewed)
    {
        yield return new ResultBlock.Paragraph("DRAFT, for the responsible engineer to check, to change and to sign. It orders nothing.", Strong: true);
        yield return new ResultBlock.Paragraph($"To: [name and address of the owner]. From: [name and address of the engineer]. Authority: [authority in charge of the road]. Date: {reviewed.Date ?? "[date]"}.");
        yield return new ResultBlock.Paragraph("Dear [name of the owner],");
        yield return new ResultBlock.Paragraph($"this is about the load rating of {reviewed.Name}, made by the method {reviewed.Rating.Method.FullName} ({reviewed.Rating.Method.Name}). It rests on the input files that the calculation pack lists.");
    }

    private static IEnumerable<ResultBlock> Found(ReviewedBridge reviewed)
    {
        BridgeRating rating = reviewed.Rating;
        yield return new ResultBlock.Heading("What was found");
        if (rating.Governing is not { } row)
        {
            string[] slack = [.. rating.Withheld.GroupBy(w => w.Reason.Member, w => w.Vehicle.Name).Select(g => $"{g.Key} goes slack before the factored vehicle is on whole, and nothing takes over from it ({string.Join(", ", g)})")];
            yield return new ResultBlock.Paragraph(
                slack.Length > 0 ? $"Ratings are withheld: {string.Join("; ", slack)}. No such vehicle can be called safe here." : "Nothing could be rated, and no vehicle can be called safe here.", Strong: true);
            yield break;
        }

        yield return new ResultBlock.Paragraph($"What governs: {Governs(row)}, {Factor(row)}. {Means(row)}{RatingWording.OnlyAtCrawlSpeed(rating.Bridge)}", Strong: row is not { Factor: >= 1 });
        if (rating is { Governing: PartRow, GoverningMember: { } member })
        {
            yield return new ResultBlock.Paragraph($"The lowest of the truss members: {Governs(member)}, {Factor(member)}.");
        }

        yield return new ResultBlock.Paragraph("A rating factor says how many times the vehicle's load, with the margin that the method asks for, fits into what the part carries beside the weight of the bridge.");
    }

    private static string Governs(RatingRow row) => $"{RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)}{(row.Truss is null ? "" : $" ({row.Truss} truss)")}";

    private static string Factor(RatingRow row)
    {
        string weight = SafeLoad.WeightOf(row.Vehicle) is { } w ? $", {PostingWording.TenthsOfTons(w)} US tons" : "";
        string beside = row.Beside is { } neighbour ? $" with {neighbour.Vehicle.Name} in the next lane" : "";
        return $"rating factor {Words.Factor(row.Factor)} under {row.Vehicle.Name} ({VehicleClassNames.Name(row.Vehicle.Class)}{weight}){beside}, {row.Level.Name} level";
    }

    private static string Means(RatingRow row) => row switch
    {
        { Status: RatingStatus.DeadExceeds } => "The weight of the bridge alone exceeds what it carries, as entered.",
        { Factor: < 1 } => "Below 1 the vehicle is too heavy for this part as entered.",
        _ => "From 1 up the vehicle is not too heavy for what is rated, as entered.",
    };

    private static IEnumerable<ResultBlock> NotRated(ReviewedBridge reviewed)
    {
        yield return new ResultBlock.Heading("What was not rated");
        yield return new ResultBlock.Paragraph(ScopeWording.Of(reviewed.Rating));
        IReadOnlyList<string> reasons = NotRatedList.Lines(reviewed.Rating.NotRated.Where(r => r.Status != RatingStatus.Withheld), [], reviewed.Units);
        string[] notAsked = [.. reviewed.Reading.OwnVehiclesNotAsked.Union(reviewed.Reading.PostedKindsNotAsked)];
        string[] lines =
        [
            .. reasons.Take(MostReasons),
            .. reasons.Count > MostReasons ? [string.Create(CultureInfo.InvariantCulture, $"and {reasons.Count - MostReasons} more, in the calculation pack")] : Array.Empty<string>(),
            .. notAsked.Length > 0 ? [$"vehicles that nobody asked for, which no limit here covers: {string.Join(", ", notAsked)}"] : Array.Empty<string>(),
        ];
        if (lines.Length > 0)
        {
            yield return new ResultBlock.Items(NotRatedList.Lead, lines);
        }
    }

    private static IEnumerable<ResultBlock> Measure(ReviewedBridge reviewed)
    {
        yield return new ResultBlock.Heading("What to measure next");
        if (reviewed.Rating.Withheld.Select(w => w.Reason.Member).Distinct().ToArray() is { Length: > 0 } slack)
        {
            yield return new ResultBlock.Paragraph($"While ratings are withheld no factor is there that a reading could lower. Look first at {string.Join(", ", slack)}: what it is made of, and what may take over from it. [what the engineer asks to be measured]");
            yield break;
        }

        string first = reviewed.Rating.Governing is PartRow row ? $"Look first at what governs: {RatingWording.NameAt(row)}. " : "";
        bool isKnown = reviewed.Measure.Readings.Count + reviewed.Measure.NotMeasured.Count > 0;
        yield return new ResultBlock.Paragraph(first + (isKnown ? MeasurePage.InShort(reviewed.Measure, reviewed.Units) : "No truss member is rated from its section, so that no reading can be named first. [what the engineer asks to be measured]"));
    }

    private static IEnumerable<ResultBlock> Close()
    {
        yield return new ResultBlock.Heading("Decision of the responsible engineer");
        yield return new ResultBlock.Paragraph("[decision and its date]");
        yield return new ResultBlock.Paragraph("[name, licence, signature and seal]");
        yield return new ResultBlock.Paragraph(Words.Caution, Strong: true);
    }
}
