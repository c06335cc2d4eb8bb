namespace SpanRater.Files;

/// <summary>Rates a bridge for a survey, and keeps what its tables need. Whatever is wrong with the bridge is told in what is kept.</summary>
public static class BridgeSurveyor
{
    /// <summary>Rates a bridge folder.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="shown">The folder as the survey shows it.</param>
    /// <param name="asked">What the survey was asked for.</param>
    /// <param name="stop">Ends the work between two vehicles.</param>
    /// <exception cref="OperationCanceledException">It was told to stop.</exception>
    public static SurveyedBridge Rate(string path, string shown, SurveyAsked asked, CancellationToken stop = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        ArgumentNullException.ThrowIfNull(asked);
        BridgeReading reading = BridgeFolder.Read(path, asked.Catalogues);
        string[] Told(FindingSeverity severity) => [.. reading.Findings.All.Where(f => f.Severity == severity).Select(f => WithoutPlace(f.ToString(), path))];
        SurveyedBridge read = new() { Folder = shown, Name = reading.Bridge?.Name, Standing = SurveyStanding.NotRated, Why = "", Errors = Told(FindingSeverity.Error), Warnings = Told(FindingSeverity.Warning) };
        if (reading.Bridge is null)
        {
            return read with { Why = "the input is refused" };
        }

        if (RatingNeeds.Missing(reading) is { Count: > 0 } missing)
        {
            return read with { Why = "the input is refused", Errors = [.. read.Errors, .. missing] };
        }

        RatingMethod method = reading.Bridge.Rating.Method!;
        read = read with { Method = method.Name };
        IReadOnlyList<LiveLoad> own = asked.Of(reading);
        LiveLoad? guest = asked.GuestOn(reading);

        // A legal type would stand beside the bridge's own emergency vehicles, and is rated apart; any other is rated in the same go, which costs half.
        bool isApart = guest is { Class: VehicleClass.Legal };
        if (!BridgeRater.Rate(reading.Bridge, method, guest is null || isApart ? own : [.. own, guest], stop).TryGet(out BridgeRating? all, out Refusal? refusal))
        {
            return read with { Why = RefusalWording.Sentence(refusal, reading.Bridge.Truss) };
        }

        if (guest is null)
        {
            return Of(read, all, own, asked.Vehicles is null ? reading.OwnVehiclesNotAsked : []);
        }

        SurveyedBridge bridge = Of(read, isApart ? all : all.Without(guest), own, asked.Vehicles is null ? reading.OwnVehiclesNotAsked : []);
        return isApart
            ? BridgeRater.Rate(reading.Bridge, method, [guest], stop).TryGet(out BridgeRating? alone, out refusal) ? WithGuest(bridge, alone, guest) : read with { Why = RefusalWording.Sentence(refusal, reading.Bridge.Truss) }
            : WithGuest(bridge, all, guest);
    }

    private static SurveyedBridge WithGuest(SurveyedBridge bridge, BridgeRating rating, LiveLoad guest) =>
        bridge with { Vehicles = [.. bridge.Vehicles, VehicleOf(Passage.Of(rating, [guest])[0], rating) with { IsGuest = true }] };

    // What stands in a file, or in its findings, must not tell where on this machine the folder is.
    private static string WithoutPlace(string text, string path) => text.Replace($" {path}.", ".", StringComparison.Ordinal).Replace($"{path}: ", "", StringComparison.Ordinal);

    private static SurveyedBridge Of(SurveyedBridge read, BridgeRating rating, IReadOnlyList<LiveLoad> vehicles, IReadOnlyList<string> notAsked)
    {
        Posting? posting = rating.Method.HasPosting ? Posting.Of(rating) : null;
        IReadOnlyList<Passage> passages = Passage.Of(rating, vehicles);
        IReadOnlyList<PassageGap> gaps = Passage.GapsForAll(rating);
        bool inPart = gaps.Count > 0 || passages.Any(p => p.IsAtMost);
        (SurveyStanding standing, string why) = Standing(rating, posting, inPart);
        RatingRow[] unrated = [.. rating.NotRated];
        return read with
        {
            Standing = standing,
            Why = why,
            Governing = rating.Governing is { } governing ? SurveyedRow.Of(governing) : null,
            GoverningVehicle = rating.Governing?.Vehicle.Name,
            Posting = posting is null ? null : PostingOf(posting),
            Vehicles = [.. passages.Select(p => VehicleOf(p, rating))],
            Gaps = [.. gaps.Select(g => Kept(SurveyWording.Of(g)))],
            Scope = Kept(ScopeWording.Of(rating)),
            NotRated = [.. NotRatedList.Lines(unrated, notAsked, DisplayUnits.Si).Select(Kept)],
            PartsNotRated = unrated.Where(r => !r.IsAboutItsVehicle).Select(r => (r.Part, r.Name)).Distinct().Count(),
            VehiclesNotRated = unrated.Where(r => r.IsAboutItsVehicle).Select(r => r.Vehicle).Distinct(ReferenceEqualityComparer.Instance).Count(),
            Assumed = [.. RatingJson.Assumptions(rating).Select(Kept)],
        };
    }

    private static (SurveyStanding Standing, string Why) Standing(BridgeRating rating, Posting? posting, bool inPart)
    {
        RatingRow? dead = posting is null ? rating.Rows.FirstOrDefault(r => r.Status == RatingStatus.DeadExceeds && r.Level.Governance != Governance.Inventory) : posting.DeadExceeds;
        if (dead is not null)
        {
            return (SurveyStanding.Urgent, $"The dead load alone exceeds the capacity of {RatingWording.Member(dead)} in {RatingWording.ActsIn(dead)}: check the input; if it is true, treat the bridge as closed until an engineer has reviewed it.");
        }

        if (posting is { Closure: true, Smallest: { } smallest })
        {
            return (SurveyStanding.Urgent, $"Under 3 US tons: the smallest safe load of the legal types is {PostingWording.Tons(smallest.SafeLoad)} US tons, for {smallest.Vehicle.Name} ({At(smallest.Lowest!)}). Treat the bridge as closed until an engineer has reviewed it.");
        }

        if (rating.Withheld.ToArray() is { Length: > 0 } withheld)
        {
            return (SurveyStanding.Urgent, $"Withheld: {string.Join("; ", withheld.GroupBy(w => w.Reason.Member).Select(g => $"{g.Key} goes slack before the factored vehicle is on whole ({string.Join(", ", g.Select(w => w.Vehicle.Name))})"))}. Keep such vehicles off until an engineer has reviewed the bridge.");
        }

        if (rating.Governing is not { } governing)
        {
            return (SurveyStanding.NotRated, "Nothing has a rating factor.");
        }

        if (posting is not null && posting.Legal.Concat(posting.Emergency).Any(r => r.Verdict is PostingVerdict.Posted or PostingVerdict.Barred))
        {
            return (SurveyStanding.PostingNeeded, PostingWording.Answer(posting));
        }

        string lowest = $"The lowest factor is {Words.Factor(governing.Factor)}: {At(governing)} under {RatingWording.Under(governing)}.{RatingWording.OnlyAtCrawlSpeed(rating.Bridge)}";
        return (SafeLoad.IsEnough(governing.Factor!.Value) ? inPart ? SurveyStanding.RatedInPart : SurveyStanding.NoFactorBelowOne : SurveyStanding.BelowOne, lowest);
    }

    private static string At(RatingRow row) => $"{RatingWording.Member(row)} in {RatingWording.ActsIn(row)}";

    private static SurveyedPosting PostingOf(Posting posting) => new(
        posting.Common.Verdict,
        posting.Common.SetBy?.Tons,
        posting.Common.IsAtMost,
        posting.Common.SetBy?.Vehicle.Name,
        posting.Smallest?.SafeLoad / 1000,
        posting.IsClosureKnown ? posting.Closure : null,
        [.. posting.Emergency.Where(r => r.Verdict is PostingVerdict.Posted or PostingVerdict.Barred).Select(r => r.Vehicle.Name)]);

    private static SurveyedVehicle VehicleOf(Passage passage, BridgeRating rating) => new(
        passage.Vehicle.Name,
        VehicleClassNames.Name(passage.Vehicle.Class),
        passage.Verdict,
        passage.IsWithheld,
        passage.IsAtMost,
        passage.Deciding is { Factor: not null } row ? SurveyedRow.Of(row) : null,
        [.. passage.Gaps.Select(g => Kept(SurveyWording.Of(g)))],
        [.. passage.Verdict == PassageVerdict.No ? [] : SurveyWording.Conditions(passage.Vehicle, rating)],
        SurveyWording.WhyNot(passage, rating) is { } why ? Kept(why) : null,
        IsGuest: false);

    // Thousands of bridges say the same of themselves: it is kept once.
    internal static string Kept(string text) => string.Intern(text);
}
