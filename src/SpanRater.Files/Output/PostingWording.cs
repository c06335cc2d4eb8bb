using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what a posting comes to.</summary>
public static class PostingWording
{
    private const string NothingRated = "nothing that it loads has a rating factor";

    /// <summary>The mode that governs the capacity of a type's lowest factor; null where that is given, or missing.</summary>
    /// <param name="row">The type.</param>
    public static string? Mode(PostingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Lowest is { } lowest ? RatingWording.Mode(lowest) : null;
    }

    /// <summary>The rules that safe loads follow, with their sources.</summary>
    public static string Rules { get; } =
        "Safe loads: LRFR legal types (W / 0.7)(RF − 0.3) from a rating factor of 0.3 up to 1, and not allowed below 0.3; LFR and ASR RF × W at the level named. "
        + "Emergency vehicles, apart from the legal types: RF × 33.5 kip for a single rear axle, RF × 62 kip for a tandem, RF × gross. A factor of 1 or more asks for no posting. "
        + "Posted tons are whole US tons of 2,000 lb, rounded down; the line of 3 US tons looks at the smallest safe load of all legal types before rounding, and a type that is not allowed counts as 0. "
        + $"They are from {Clauses.Sources([PostingClauses.Lrfr, PostingClauses.LfrAsr, PostingClauses.Emergency, PostingClauses.Closure])}";

    /// <summary>That no posting rule belongs to a method.</summary>
    /// <param name="method">The method.</param>
    public static string NoRule(RatingMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return $"No posting load is given, and no vehicle can be called safe here: no posting rule belongs to the method {method.Name}. "
            + "What its rating factors lead to is laid down by the authority whose factors they are. rate gives the factors.";
    }

    /// <summary>That types were not asked for, and where to ask for them; without a full stop.</summary>
    /// <param name="notAsked">Their names, at least one.</param>
    public static string NotCovered(IReadOnlyList<string> notAsked) =>
        $"Not asked for, so that no limit here covers them: {string.Join(", ", notAsked)}. Name them under vehicles in bridge.toml [rating]";

    /// <summary>The word for a silhouette.</summary>
    /// <param name="silhouette">The silhouette; null for a type of its own.</param>
    public static string Of(Silhouette? silhouette) => silhouette switch
    {
        Silhouette.SingleUnit => "single unit",
        Silhouette.TractorSemitrailer => "tractor and semitrailer",
        Silhouette.TruckAndTrailer => "truck and full trailer",
        _ => "",
    };

    /// <summary>The verdict as the JSON has it.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(PostingVerdict verdict) => verdict switch
    {
        PostingVerdict.NotNeeded => "notNeeded",
        PostingVerdict.Posted => "posted",
        PostingVerdict.Barred => "barred",
        PostingVerdict.NotGiven => "notGiven",
        _ => "notAsked",
    };

    /// <summary>The verdict of a word of the JSON; null where there is none.</summary>
    /// <param name="key">The word.</param>
    public static PostingVerdict? VerdictOf(string? key) => Enum.GetValues<PostingVerdict>().Where(v => Of(v) == key).Select(v => (PostingVerdict?)v).FirstOrDefault();

    /// <summary>The rule as the JSON has it.</summary>
    /// <param name="rule">The rule.</param>
    public static string Of(PostingRule rule) => rule == PostingRule.ReducedLegal ? "(W/0.7)(RF-0.3)" : "RF*W";

    /// <summary>The verdict as a table shows it.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="tons">Whole US tons, where it is posted.</param>
    /// <param name="isAtMost">True where it is no more than an upper bound.</param>
    public static string InTable(PostingVerdict verdict, int? tons, bool isAtMost) => verdict switch
    {
        PostingVerdict.NotNeeded => isAtMost ? "none by what is rated" : "none needed",
        PostingVerdict.Posted => string.Create(CultureInfo.InvariantCulture, $"{(isAtMost ? "at most " : "")}{tons}"),
        PostingVerdict.Barred => "not allowed",
        PostingVerdict.NotGiven => "not given",
        _ => "no type asked for",
    };

    /// <summary>US tons with two decimals, cut and not rounded: a load just under a limit must not be read as the limit.</summary>
    /// <param name="load">The load [N]; null for none.</param>
    public static string Tons(double? load) => load is { } l ? ResultTable.Cut(l / SafeLoad.UsTon, 2) : "";

    /// <summary>US tons with one decimal, cut and not rounded.</summary>
    /// <param name="load">The load [N]; null for none.</param>
    public static string TenthsOfTons(double? load) => load is { } l ? ResultTable.Cut(l / SafeLoad.UsTon, 1) : "";

    /// <summary>A rating factor with three decimals, cut and not rounded.</summary>
    /// <param name="factor">The factor; null for none.</param>
    public static string Factor(double? factor) => factor switch
    {
        null => "–",
        > 10 => ">10",
        { } f => ResultTable.Cut(f, 3),
    };

    /// <summary>What must be read first, the most urgent first: closure, types without a load, capacities that are missing.</summary>
    /// <param name="posting">The posting.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<string> Warnings(Posting posting, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(posting);
        if (posting.Closure)
        {
            yield return Closure(posting);
        }

        foreach (string warning in OfOthers(posting, units))
        {
            yield return warning;
        }

        if (posting.Legal.Count == 0)
        {
            yield return "No legal type is among the vehicles asked for: there are no posting loads of trucks, and whether the bridge is under 3 US tons is not known.";
        }

        foreach (IGrouping<string, PostingRow> rows in posting.NotGiven.GroupBy(r => InShort(r.Reason, units)))
        {
            yield return $"No posting load is given for {string.Join(", ", rows.Select(r => r.Vehicle.Name))}: {rows.Key}. {KeepOff(rows.Count(), "type")}";
        }

        if (posting.Legal.Any(r => r.LacksLaneType))
        {
            yield return "The deck is longer than 200 ft, where the lane-type legal load counts as well, and none is asked for (name \"Lane-type legal load\" under vehicles): each load of a legal type below is at most what its truck alone allows.";
        }

        string[] unrated = [.. posting.Legal.Concat(posting.Emergency).SelectMany(r => r.Unrated).Select(r => $"{RatingWording.Member(r)} in {RatingWording.ActsIn(r)}").Distinct()];
        if (unrated.Length > 0)
        {
            yield return $"Not every {(posting.Rating.PartRows.Count > 0 ? "part" : "member")} that is loaded has a capacity: {string.Join(", ", unrated)}. Each load below is at most what the {(posting.Rating.PartRows.Count > 0 ? "parts" : "members")} that are rated allow; it may be less, and \"none\" does not mean that no posting is needed.";
        }
    }

    /// <summary>The answer in a sentence or two: one limit for all legal types, and which emergency vehicles need one of their own.</summary>
    /// <param name="posting">The posting.</param>
    public static string Answer(Posting posting)
    {
        ArgumentNullException.ThrowIfNull(posting);
        string[] emergency = [.. posting.Emergency.Where(r => r.Verdict is PostingVerdict.Posted or PostingVerdict.Barred).Select(r => r.Vehicle.Name)];
        return OfLegal(posting) + RatingWording.OnlyAtCrawlSpeed(posting.Rating.Bridge) + (emergency.Length == 0 ? "" : $" Emergency vehicles that need limits of their own: {string.Join(", ", emergency)}.");
    }

    private static string OfLegal(Posting posting)
    {
        PostingLimit all = posting.Common;
        string level = posting.Legal.Count == 0 ? "" : $" (by the {posting.Legal[0].Level.Name} rating)";
        return all.Verdict switch
        {
            PostingVerdict.NotNeeded when all.IsAtMost => $"No legal type asked for needs a posting by what is rated{level}; not all of it is.",
            PostingVerdict.NotNeeded => $"No legal type asked for needs a posting by its {(posting.Rating.Bridge.Floor is null ? "truss members" : "truss members and what is rated of its floor")}{level}.",
            PostingVerdict.Posted => string.Create(
                CultureInfo.InvariantCulture,
                $"One limit for all legal types asked for{level}: {(all.IsAtMost ? "at most " : "")}{all.SetBy!.Tons} US ton{(all.SetBy.Tons == 1 ? "" : "s")}, set by {By(all.SetBy)}."),
            PostingVerdict.Barred => $"Not allowed to cross{level}: {string.Join(", ", posting.Legal.Where(r => r.Verdict == PostingVerdict.Barred).Select(By))}. There is no limit that all legal types may share.",
            PostingVerdict.NotGiven => "There is no limit that all legal types may share, since not all of them are rated.",
            _ => "There is no limit for legal types: none was asked for.",
        };
    }

    /// <summary>What a rating says of loads that no posting rule covers.</summary>
    public const string OthersRule = "No posting rule here covers these loads: what is too heavy is to stay off until an engineer has reviewed it, and a farm vehicle or a maintenance vehicle is carried alone on the bridge, with nothing beside it. Loads for design or screening stand for others, and are never themselves on the road.";

    /// <summary>The verdict on a load without a posting rule, as the JSON has it.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(OtherVerdict verdict) => verdict switch
    {
        OtherVerdict.Carried => "carried",
        OtherVerdict.CarriedByWhatIsRated => "carriedByWhatIsRated",
        OtherVerdict.TooHeavy => "tooHeavy",
        OtherVerdict.NotGiven => "notGiven",
        _ => "standsForOthers",
    };

    /// <summary>The verdict on a load without a posting rule, as a table shows it.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string InTable(OtherVerdict verdict) => verdict switch
    {
        OtherVerdict.Carried => "carried",
        OtherVerdict.CarriedByWhatIsRated => "carried by what is rated",
        OtherVerdict.TooHeavy => "too heavy",
        OtherVerdict.NotGiven => "not given",
        _ => "stands for others",
    };

    /// <summary>What an emergency vehicle would have alone on the bridge, where a vehicle beside it brings its factor down.</summary>
    /// <param name="posting">The posting.</param>
    public static IEnumerable<string> AloneOnTheBridge(Posting posting) =>
        AloneRows(posting).Select(a => $"{By(a.Vehicle, a)} where it is alone on the bridge, which has to be enforced: {TenthsOfTons(SafeLoad.EquivalentLoad(a))} US tons gross by RF × weight.");

    /// <summary>The lowest row alone on the bridge of every emergency vehicle whose posting rests on what stands beside it.</summary>
    /// <param name="posting">The posting.</param>
    public static IEnumerable<RatingRow> AloneRows(Posting posting)
    {
        ArgumentNullException.ThrowIfNull(posting);
        return posting.Emergency.Where(r => r.Lowest?.Beside is not null)
            .Select(r => posting.Rating.Rows.Where(a => a.Vehicle == r.Vehicle && a.Level == r.Lowest!.Level && a.Beside is null && a.Factor is not null).MinBy(a => Math.Round(a.Factor!.Value, 9)))
            .OfType<RatingRow>();
    }

    // A sign that lets more pass than such a load may weigh does not hold it off.
    private static string Passing(Posting posting, OtherLoad load) => SafeLoad.EquivalentLoad(load.Deciding!) is not { } passes || passes <= 0 ? ""
        : $", scaled as a whole {TenthsOfTons(passes)} US tons of it pass{(posting.Common.SetBy?.Tons * SafeLoad.UsTon > passes ? ", less than the one limit of legal types, so that a sign by that does not hold it off" : "")}";

    private static IEnumerable<string> OfOthers(Posting posting, DisplayUnits units)
    {
        OtherLoad[] heavy = [.. posting.Others.Where(o => o.Verdict == OtherVerdict.TooHeavy)];
        if (heavy.Length > 0)
        {
            yield return $"Too heavy as entered, though no posting rule covers {(heavy.Length == 1 ? "it" : "them")}: {string.Join("; ", heavy.Select(o => By(o.Vehicle, o.Deciding!) + Passing(posting, o)))}. Keep {(heavy.Length == 1 ? "it" : "them")} off until an engineer has reviewed the bridge.";
        }

        foreach (IGrouping<string, OtherLoad> loads in posting.Others.Where(o => o.Verdict == OtherVerdict.NotGiven).GroupBy(o => InShort(o.Deciding?.Reason, units)))
        {
            yield return $"No factor is given for {string.Join(", ", loads.Select(o => o.Vehicle.Name))}: {loads.Key}. {KeepOff(loads.Count(), "kind")}";
        }
    }

    /// <summary>Why no load is given.</summary>
    /// <param name="row">A row without one.</param>
    /// <param name="units">The units to show.</param>
    public static string WhyNotGiven(PostingRow row, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Reason is { } reason ? RatingWording.Of(reason, units) : NothingRated;
    }

    private static string KeepOff(int count, string what) =>
        $"No vehicle of {(count == 1 ? $"this {what}" : $"these {what}s")} can be called safe here: until {(count == 1 ? "it is" : "they are")} rated, keep {(count == 1 ? "it" : "them")} off.";

    private static string InShort(NotRatedReason? reason, DisplayUnits units) => reason switch
    {
        NotRatedReason.Uncarried r => $"every rating is withheld, since {r.Member} only pulls and goes slack before the factored vehicle is on whole",
        { } r => RatingWording.Of(r, units),
        null => NothingRated,
    };

    private static string Closure(Posting posting) =>
        "URGENT: close the bridge until an engineer has reviewed it. "
        + (posting.DeadExceeds is { } dead
            ? $"The dead load alone exceeds the capacity of {RatingWording.NameAt(dead)} in {RatingWording.ActsIn(dead)}. Check the inputs first."
            : $"The smallest safe load of the legal types is {Tons(posting.Smallest!.SafeLoad)} US tons, for {By(posting.Smallest)}: under 3 US tons.")
        + " A bridge that cannot carry 3 US tons is to be closed (23 CFR 650.313, from memory); any limit below shows the working, and is no leave to cross.";

    private static string By(PostingRow row) => By(row.Vehicle, row.Lowest!);

    private static string By(LiveLoad vehicle, RatingRow row) =>
        $"{vehicle.Name} ({RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)}, rating factor {Factor(row.Factor)}{(row.Truss is null ? "" : $", {row.Truss} truss")})";
}
