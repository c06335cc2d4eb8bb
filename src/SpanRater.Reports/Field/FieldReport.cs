using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>A chapter of the field report.</summary>
/// <param name="Id">Its anchor.</param>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What it says.</param>
/// <param name="Drawing">What it shows; null for nothing.</param>
/// <param name="InWords">The drawing in words, for who cannot see it.</param>
public sealed record ReportChapter(string Id, string Title, IReadOnlyList<ResultBlock> Blocks, Drawing? Drawing = null, string InWords = "")
{
    /// <summary>What follows the blocks: drawings, and what opens.</summary>
    public IReadOnlyList<ReportPart> Parts { get; init; } = [];

    /// <summary>Where cells of the tables among its blocks lead, a table each; a table that is not there leads nowhere.</summary>
    public IReadOnlyList<ReportPart.Opening> Leads { get; init; } = [];

    /// <summary>Where the cells of a block lead; null where it is no table, or one that leads nowhere.</summary>
    /// <param name="block">The block.</param>
    internal ReportPart.Opening? LeadsOf(ResultBlock block) => block is ResultBlock.Grid { Content: var table } ? Leads.FirstOrDefault(l => ReferenceEquals(l.Table, table)) : null;

    /// <summary>Whether its drawing is black on white on every screen, as it is on paper.</summary>
    public bool IsOnPaper { get; init; }

    /// <summary>Name of the file that holds the drawing beside the page; null where there is none.</summary>
    public string? DrawingFile { get; init; }
}

/// <summary>
/// The report that goes to the field: the decision first, what was rated and what was not, then all that led to it. Made of the pages that the commands print, so that the two
/// cannot disagree.
/// </summary>
/// <param name="Bridge">Name of the bridge.</param>
/// <param name="Decision">The lines to read first, the most urgent first.</param>
/// <param name="IsUrgent">Whether a limit is undercut, a rating is withheld, or a factor is below 1.</param>
/// <param name="Chapters">The chapters.</param>
/// <param name="Inputs">The input as it was read.</param>
/// <param name="Units">Units shown.</param>
/// <param name="Date">Date that stands on it; null for none, so that the same input gives the same bytes.</param>
/// <param name="Version">Version of the program.</param>
public sealed record FieldReport(
    string Bridge, IReadOnlyList<string> Decision, bool IsUrgent, IReadOnlyList<ReportChapter> Chapters, IReadOnlyList<InputFile> Inputs, DisplayUnits Units, string? Date, string Version)
{
    /// <summary>False where no answer can be given: nothing has a factor, or a rating is withheld.</summary>
    public bool IsAnswer { get; init; } = true;

    /// <summary>Whether the bridge is under the line below which it is to be closed.</summary>
    public bool UndercutsLimit { get; init; }

    /// <summary>Anchors of the ratings that are opened in the report, by the row itself.</summary>
    public IReadOnlyDictionary<RatingRow, string> Opens { get; init; } = new Dictionary<RatingRow, string>();

    /// <summary>What the page rolls vehicles with; null where there is no vehicle on axles.</summary>
    public LivingElevation? Living { get; init; }

    /// <summary>Blank lines to sign.</summary>
    public static IReadOnlyList<string> SignOff { get; } = ["Rated by", "Checked by", "Responsible licensed engineer", "Decision and its date", "Seal"];

    /// <summary>The report of a rated bridge.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="reading">What the folder gave.</param>
    /// <param name="inputs">The input files.</param>
    /// <param name="units">Units to show.</param>
    /// <param name="date">Date to print; null for none.</param>
    /// <param name="version">Version of the program.</param>
    public static FieldReport Of(BridgeRating rating, BridgeReading reading, IReadOnlyList<InputFile> inputs, DisplayUnits units, string? date, string version)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(reading);
        Bridge bridge = rating.Bridge;
        ResultPage rate = RatingPage.Of(rating, reading.OwnVehiclesNotAsked, units, everyRow: false);
        Posting? posting = rating.Method.HasPosting ? Posting.Of(rating) : null;
        Alternatives? alternatives = posting is null ? null : Alternatives.Of(posting, reading.VehiclesAsked);
        ResultPage post = PostingOf(rating, posting, reading, alternatives, units);
        var measure = MeasureFirst.Of(rating);
        Drawing elevation = RatingPicture.Elevation(rating, units);
        var opened = new OpenedRatings(rating, [.. Named(posting), .. MeasureChapter.Shown(measure), .. WhatIfParts.Rests(alternatives)]);
        var sets = new OrdinateSets(rating, opened.All.SelectMany(o => o.Rows).Concat(LiveEnvelope.Of(rating).SelectMany(e => (RatingRow?[])[e.Tension, e.Compression]).OfType<RatingRow>()), units);
        MemberRow? followed = Followed(rating);
        ReportChapter[] chapters =
        [
            NearTheTop.Governing(rating, opened.Anchors),
            NearTheTop.NotRated(rating, reading.OwnVehiclesNotAsked, units),
            new("elevation", "Elevation with the lowest factors", [], elevation, InWords(rating)),
            RatingChapter(rating, units),
            PostingChapter.Of(post, posting, alternatives, opened.Anchors, units),
            NearTheTop.Assumptions(rating, units),
            NearTheTop.Findings(reading),
            MeasureChapter.Of(measure, opened.Anchors, units),
            DeadChapter.Of(rating, sets.All[0].Id, units),
            VehiclesChapter.Of(rating, reading.VehiclesAsked, units),
            InfluenceChapter.Of(rating, followed?.MemberIndex, sets, opened, units),
            CapacityChapters.Sheets(rating, opened, [.. Body(CapacityPage.Of(MemberCapacities.Of(bridge, rating.Method), null, units)).Where(b => b is not ResultBlock.Paragraph { Text: Words.TrussOnly or Words.Caution })], units),
            CapacityChapters.Factors(rating, opened, sets, units),
            ChecksChapter.Of(rating, followed, units),
            LearnersChapter.Of(bridge, units),
            CheckChapter.Of(bridge, reading.Findings, units),
        ];
        return new FieldReport(bridge.Name, DecisionOf(rating, posting, rate, units), IsUrgentFor(rating, posting), chapters, inputs, units, date, version)
        {
            IsAnswer = rate.IsAnswer,
            UndercutsLimit = post.UndercutsLimit,
            Opens = opened.Anchors.Select(a => (Row: a.Key, Id: a.Value)).Concat(WhatIfParts.Anchors(alternatives)).ToDictionary(a => a.Row, a => a.Id, (IEqualityComparer<RatingRow>)ReferenceEqualityComparer.Instance),
            Living = LivingElevation.Of(rating),
        };
    }

    /// <summary>The truss member that is shown and checked: the one that governs, else the one that withholds, else the lowest or first there is; null where there is no row.</summary>
    /// <param name="rating">The rating.</param>
    internal static MemberRow? Followed(BridgeRating rating) =>
        rating.GoverningMember
        ?? rating.MemberRows.FirstOrDefault(r => rating.Withheld.Any(w => w.Reason.Member == r.Name))
        ?? (rating.MemberRows is [var first, ..] ? first : null);

    /// <summary>What <c>post</c> says of a rating.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="posting">The posting; null where no posting rule belongs to the method.</param>
    /// <param name="reading">What the folder gave.</param>
    /// <param name="alternatives">What would help; null where nothing is offered.</param>
    /// <param name="units">Units to show.</param>
    internal static ResultPage PostingOf(BridgeRating rating, Posting? posting, BridgeReading reading, Alternatives? alternatives, DisplayUnits units) => posting is null
        ? PostingPage.WithoutRule(rating.Bridge, rating.Method)
        : PostingPage.Of(posting, reading.PostedKindsNotAsked, units, alternatives);

    // What of a vehicle one truss carries is worked with the vehicles.
    private static ReportChapter RatingChapter(BridgeRating rating, DisplayUnits units)
    {
        ResultBlock[] blocks = [.. RatingPage.Tables(rating, units, everyRow: false), .. RatingPage.CapsAndDeadLoad(rating, units, everyRow: false), .. RatingPage.Factors(rating)];
        return new ReportChapter("rating", "Rating", blocks)
        {
            Leads =
            [
                .. blocks.OfType<ResultBlock.Grid>().Select(g => (Table: g.Content, Column: g.Content.Columns.ToList().FindIndex(c => c.Heading == "share with presence"))).Where(t => t.Column >= 0)
                    .Select(t => new ReportPart.Opening(t.Table, null, Enumerable.Range(0, t.Table.Rows.Count).Where(r => t.Table.Rows[r][t.Column] is double || t.Table.Rows[r][t.Column] is string { Length: > 0 }).ToDictionary(r => (r, t.Column), _ => VehiclesChapter.ShareWorked))),
            ],
        };
    }

    // The rows that posting rests on: its tables lead to them.
    private static IEnumerable<RatingRow> Named(Posting? posting) =>
        posting is null ? [] : posting.Legal.Concat(posting.Emergency).Select(r => r.Lowest).Concat(posting.Others.Select(o => o.Deciding)).Concat(PostingWording.AloneRows(posting)).OfType<RatingRow>().Where(r => r.Factor is not null);

    /// <summary>What <c>explain</c> says of a row's member or part under its vehicle.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="row">The row.</param>
    /// <param name="units">Units to show.</param>
    internal static ResultPage Opened(BridgeRating rating, RatingRow row, DisplayUnits units) => row is MemberRow member
        ? RatingExplanation.Of(rating, member.MemberIndex, row.Vehicle, null, units)
        : PartExplanation.Of(rating, row.Name, row.Vehicle, units);

    /// <summary>The lines to read first, the most urgent first.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="posting">The posting; null where no posting rule belongs to the method.</param>
    /// <param name="rate">What <c>rate</c> says of it.</param>
    /// <param name="units">Units to show.</param>
    internal static IReadOnlyList<string> DecisionOf(BridgeRating rating, Posting? posting, ResultPage rate, DisplayUnits units) =>
        [.. posting is null ? [] : PostingWording.Warnings(posting, units), rate.Notes[0], .. posting is null ? [] : (string[])[PostingWording.Answer(posting)], ScopeWording.Of(rating)];

    /// <summary>Whether a limit is undercut, a rating is withheld, or a factor is below 1.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="posting">The posting; null where no posting rule belongs to the method.</param>
    internal static bool IsUrgentFor(BridgeRating rating, Posting? posting) => posting is { Closure: true } || rating.Governing is not { Factor: >= 1 };

    // The title of a page is that of its chapter.
    internal static IReadOnlyList<ResultBlock> Body(ResultPage page) => [.. page.Blocks.Skip(page.Blocks[0] is ResultBlock.Heading ? 1 : 0)];

    /// <summary>The elevation in words.</summary>
    /// <param name="rating">The rating.</param>
    internal static string InWords(BridgeRating rating) =>
        $"Side view of {rating.Bridge.Truss.Members.Count} members and {rating.Bridge.Truss.Joints.Count} joints, each truss member with its lowest rating factor; the table under Rating holds the same numbers. {RatingPicture.LegendInWords}";
}

/// <summary>A file of the bridge folder as it was read.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">What it holds.</param>
/// <param name="Hash">SHA-256 of its bytes, in hexadecimal.</param>
public sealed record InputFile(string Name, string Text, string Hash)
{
    /// <summary>The files of a folder that are read as input, by name, then those of the catalogues added. No name tells where the files lie.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="catalogues">Catalogue files, or folders of them.</param>
    public static IReadOnlyList<InputFile> In(string folder, IReadOnlyList<string> catalogues) =>
    [
        .. Files(folder).Select(f => Of(f, Path.GetFileName(f))),
        .. catalogues.SelectMany(InCatalogue),
    ];

    /// <summary>The files of a catalogue that was added, by name.</summary>
    /// <param name="catalogue">A catalogue file, or a folder of them.</param>
    public static IEnumerable<InputFile> InCatalogue(string catalogue) => (Directory.Exists(catalogue) ? Files(catalogue) : [catalogue]).Select(f => Of(f, $"{Path.GetFileName(f)}, a catalogue"));

    private static IEnumerable<string> Files(string folder) =>
        Directory.EnumerateFiles(folder).Where(f => Path.GetExtension(f).ToUpperInvariant() is ".CSV" or ".TOML").OrderBy(Path.GetFileName, StringComparer.Ordinal);

    private static InputFile Of(string file, string name)
    {
        if (!OrdinaryFile.Is(file))
        {
            throw new IOException($"{name}: is a pipe or a device, not a file: save what it holds as a file.");
        }

        byte[] bytes = File.ReadAllBytes(file);
        return new InputFile(name, System.Text.Encoding.UTF8.GetString(bytes), Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)));
    }
}
