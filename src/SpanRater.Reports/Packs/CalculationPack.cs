using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>
/// The calculation pack for the checker: what was decided, what it rests on, and every number down to what was given. Made once of the pages that the commands print, and
/// written as Markdown and as HTML.
/// </summary>
/// <param name="Bridge">Name of the bridge.</param>
/// <param name="Decision">The lines to read first.</param>
/// <param name="IsUrgent">Whether they are urgent.</param>
/// <param name="Chapters">The chapters.</param>
/// <param name="Units">Units shown.</param>
/// <param name="Date">Date that stands on it; null for none.</param>
public sealed record CalculationPack(string Bridge, IReadOnlyList<string> Decision, bool IsUrgent, IReadOnlyList<ReportChapter> Chapters, DisplayUnits Units, string? Date)
{
    /// <summary>What it is.</summary>
    public const string Kind = "Calculation pack";

    /// <summary>False where no answer can be given: nothing has a factor, or a rating is withheld.</summary>
    public bool IsAnswer { get; init; } = true;

    /// <summary>Whether the bridge is under the line below which it is to be closed.</summary>
    public bool UndercutsLimit { get; init; }

    /// <summary>The pack of a reviewed bridge.</summary>
    /// <param name="reviewed">The bridge.</param>
    public static CalculationPack Of(ReviewedBridge reviewed)
    {
        ArgumentNullException.ThrowIfNull(reviewed);
        (BridgeRating rating, Posting? posting, _, BridgeReading reading, _, DisplayUnits units, _, _) = reviewed;
        ResultPage rate = RatingPage.Of(rating, reading.OwnVehiclesNotAsked, units, everyRow: true);
        ResultPage post = FieldReport.PostingOf(rating, posting, reading, posting is null ? null : Alternatives.Of(posting, reading.VehiclesAsked), units);
        ReportChapter scope = new("scope", "What is rated and what is not", [.. Scope(reviewed)]), basis = new("basis", "Basis", [.. BasisChapter.Of(reviewed)]);
        var saidBefore = new SaidBefore([new ResultBlock.Paragraph(Words.Caution, Strong: true), new ResultBlock.Paragraph(ScopeWording.Of(rating.Bridge), Strong: true), .. scope.Blocks, .. basis.Blocks]);
        ReportChapter Chapter(string id, string title, IEnumerable<ResultBlock> blocks) => new(id, title, saidBefore.Without(blocks));
        List<ReportChapter> chapters =
        [
            scope,
            basis,
            new("input", "Input as understood", saidBefore.Without(InputChapter.Truss(reviewed)), RatingPicture.Elevation(rating, units), FieldReport.InWords(rating)),
            Chapter("dead", "Dead load", FieldReport.Body(DeadLoadPage.Of(rating.Bridge, units))),
            Chapter("vehicles", "Vehicles and lateral share", InputChapter.Vehicles(reviewed)),
            Chapter("capacity", "Capacities of the truss members", Capacities(reviewed)),
            Chapter("rating", "Rating, every row", FieldReport.Body(rate)),
            .. Opened(reviewed).Select(o => Chapter(o.Id, o.Title, o.Blocks)),
            Chapter("posting", "Posting review", FieldReport.Body(post)),
            SignChapter.Of(reviewed),
            Chapter("hand-check", "Residuals and check by hand", HandCheck.Of(reviewed)),
            Chapter("files", "Input files", Files(reviewed)),
        ];
        return new CalculationPack(reviewed.Name, FieldReport.DecisionOf(rating, posting, rate, units), FieldReport.IsUrgentFor(rating, posting), chapters, units, reviewed.Date)
        {
            IsAnswer = rate.IsAnswer,
            UndercutsLimit = post.UndercutsLimit,
        };
    }

    /// <summary>The pack as one HTML file that fetches nothing.</summary>
    public byte[] Html() => HtmlFile.Page<PackDocument>((nameof(PackDocument.Pack), this));

    /// <summary>The pack as Markdown.</summary>
    public byte[] Markdown() => MarkdownFormat.Document(Flat(), Units);

    // A chapter's own headings stand one level below its title; a drawing is a file beside the page, or told in words.
    private IEnumerable<ResultBlock> Flat() =>
    [
        new ResultBlock.Heading($"{Bridge}: calculation pack{(Date is null ? "" : $", {Date}")}", 1),
        .. Decision.Select(d => new ResultBlock.Paragraph(d, Strong: true)),
        new ResultBlock.Paragraph(Words.Caution, Strong: true),
        .. Chapters.SelectMany(c => (IEnumerable<ResultBlock>)
        [
            new ResultBlock.Heading(c.Title),
            .. c.DrawingFile is { } file ? [new ResultBlock.Figure(c.InWords, file)] : Array.Empty<ResultBlock>(),
            .. c.Blocks.Select(b => b is ResultBlock.Heading h ? h with { Level = Math.Max(2, h.Level) + 1 } : b),
        ]),
        new ResultBlock.Heading("Sign-off"),
        new ResultBlock.Grid(new ResultTable([new("what"), new("name"), new("signature"), new("date")], [.. FieldReport.SignOff.Select(s => (IReadOnlyList<object?>)[s, "", "", ""])])),
        new ResultBlock.Paragraph(Words.Caution, Strong: true),
    ];

    private static IEnumerable<ResultBlock> Scope(ReviewedBridge reviewed)
    {
        yield return new ResultBlock.Paragraph(ScopeWording.Of(reviewed.Rating), Strong: true);
        if (reviewed.NotRated is { Count: > 0 } lines)
        {
            yield return new ResultBlock.Items(NotRatedList.Lead, lines);
        }

        if (reviewed.NotCovered is { } notCovered)
        {
            yield return new ResultBlock.Paragraph(notCovered);
        }
    }

    // The page speaks of truss members alone; where other parts are rated too, it must not be read as if they were not.
    private static IEnumerable<ResultBlock> Capacities(ReviewedBridge reviewed)
    {
        BridgeRating rating = reviewed.Rating;
        IReadOnlyList<ResultBlock> page = FieldReport.Body(CapacityPage.Of(MemberCapacities.Of(rating.Bridge, rating.Method), null, reviewed.Units));
        return rating.PartRows.Count == 0 ? page :
        [
            .. page.Where(b => b is not ResultBlock.Paragraph { Text: Words.TrussOnly }),
            new ResultBlock.Paragraph("Capacities of the floor and of connections stand in the rating table, row by row; the part that governs is opened behind it."),
        ];
    }

    private static IEnumerable<ReportChapter> Opened(ReviewedBridge reviewed)
    {
        BridgeRating rating = reviewed.Rating;
        if (rating.Governing is { } row)
        {
            yield return new("governing", $"What governs, opened: {RatingWording.NameAt(row)}", FieldReport.Body(FieldReport.Opened(rating, row, reviewed.Units)));
        }

        if (rating is { Governing: PartRow, GoverningMember: { } member })
        {
            yield return new("governing-member", $"The governing truss member, opened: {RatingWording.NameAt(member)}", FieldReport.Body(FieldReport.Opened(rating, member, reviewed.Units)));
        }

        if (rating.Withheld.FirstOrDefault() is { Vehicle: { } vehicle, Reason: { } reason } && rating.Bridge.Truss.FindMember(reason.Member) is { } slack)
        {
            yield return new("withheld", $"Why ratings are withheld: {reason.Member}", FieldReport.Body(RatingExplanation.Of(rating, slack, vehicle, null, reviewed.Units)));
        }
    }

    private static IEnumerable<ResultBlock> Files(ReviewedBridge reviewed) =>
    [
        new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"As they were read by spanrater {reviewed.Version}: {reviewed.Inputs.Count} files, each with the SHA-256 of its bytes.")),
        new ResultBlock.Grid(new ResultTable([new("file"), new("SHA-256")], [.. reviewed.Inputs.Select(f => (IReadOnlyList<object?>)[f.Name, f.Hash])])),
    ];
}
