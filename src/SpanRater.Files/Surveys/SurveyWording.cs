using System.Globalization;

namespace SpanRater.Files;

/// <summary>The words of a survey.</summary>
public static class SurveyWording
{
    /// <summary>What no survey tells, said on top of each.</summary>
    public const string NeverRated =
        "Bearings, ends of floorbeams and stringers, and connections that are not given are rated on none of these bridges, and on old bridges they may govern: no line here says that a bridge is safe.";

    private static readonly (SurveyStanding Standing, string Key, string Words, string Many)[] Standings =
    [
        (SurveyStanding.Urgent, "urgent", "urgent", "urgent (withheld, dead load exceeds a capacity, or under 3 US tons)"),
        (SurveyStanding.PostingNeeded, "postingNeeded", "posting needed", "posting needed"),
        (SurveyStanding.BelowOne, "belowOne", "factor below 1", "factor below 1 that no posting rule covers"),
        (SurveyStanding.RatedInPart, "ratedInPart", "rated in part", "no factor below 1, but rated in part only"),
        (SurveyStanding.NoFactorBelowOne, "noFactorBelowOne", "no factor below 1", "no factor below 1 of what a rating here can hold"),
        (SurveyStanding.NotRated, "notRated", "not rated", "not rated"),
    ];

    /// <summary>The standing as the JSON has it.</summary>
    /// <param name="standing">The standing.</param>
    public static string Key(SurveyStanding standing) => Standings.First(s => s.Standing == standing).Key;

    /// <summary>The standing of a word of the JSON; null where there is none.</summary>
    /// <param name="key">The word.</param>
    public static SurveyStanding? StandingOf(string? key)
    {
        int at = Array.FindIndex(Standings, s => s.Key == key);
        return at < 0 ? null : Standings[at].Standing;
    }

    /// <summary>The standing as a table shows it.</summary>
    /// <param name="standing">The standing.</param>
    public static string InTable(SurveyStanding standing) => Standings.First(s => s.Standing == standing).Words;

    /// <summary>How many bridges are of each standing, the most urgent first; those that are of none are left out.</summary>
    /// <param name="bridges">The bridges.</param>
    public static IReadOnlyList<string> Counts(IReadOnlyCollection<SurveyedBridge> bridges) =>
    [
        .. Standings.Select(s => (s.Many, Number: bridges.Count(b => b.Standing == s.Standing))).Where(s => s.Number > 0)
            .Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Many}: {s.Number}")),
    ];

    /// <summary>How many folders and links were not searched, a sentence each; nothing where there are none.</summary>
    /// <param name="passed">What was passed over.</param>
    public static IEnumerable<string> PassedOver(IReadOnlyList<PassedOver> passed)
    {
        ArgumentNullException.ThrowIfNull(passed);
        int links = passed.Count(p => p.IsLink), folders = passed.Count - links;
        if (folders > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{folders} folder{(folders == 1 ? "" : "s")} not searched: bridges there are missing here.");
        }

        if (links > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{links} link{(links == 1 ? "" : "s")} not followed: bridges there are missing here, where they stand nowhere else.");
        }
    }

    /// <summary>How many bridges there are of which it is not known whether they are under 3 US tons, since nothing is posted, a sentence a reason; nothing where there are none.</summary>
    /// <param name="rated">The bridges that are rated.</param>
    public static IEnumerable<string> ClosureNotKnown(IReadOnlyCollection<SurveyedBridge> rated)
    {
        ArgumentNullException.ThrowIfNull(rated);
        (int none, int withoutRule) = (rated.Count(b => b.Posting is { Verdict: PostingVerdict.NotAsked, Closure: null }), rated.Count(b => b.Posting is null));
        if (none > 0)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{none} bridge{(none == 1 ? " asks" : "s ask")} for no legal type, so that it is not known whether {(none == 1 ? "it is" : "they are")} under 3 US tons: run survey with --vehicle \"Type 3\", and again --vehicle for each further legal type.");
        }

        if (withoutRule > 0)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{withoutRule} bridge{(withoutRule == 1 ? " is" : "s are")} rated by a method without a posting rule, so that it is not known whether {(withoutRule == 1 ? "it is" : "they are")} under 3 US tons.");
        }
    }

    /// <summary>The answer as the JSON has it.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Key(PassageVerdict verdict) => verdict switch { PassageVerdict.Yes => "yes", PassageVerdict.No => "no", _ => "notKnown" };

    /// <summary>The verdict of a word of the JSON; null where there is none.</summary>
    /// <param name="key">The word.</param>
    public static PassageVerdict? VerdictOf(string? key) => key switch { "yes" => PassageVerdict.Yes, "no" => PassageVerdict.No, "notKnown" => PassageVerdict.NotKnown, _ => null };

    /// <summary>The posting of a bridge as a table shows it; empty where there is none.</summary>
    /// <param name="posting">The posting.</param>
    public static string InTable(SurveyedPosting? posting) => posting is null ? "" : PostingWording.InTable(posting.Verdict, posting.Tons, posting.IsAtMost);

    /// <summary>Whether a bridge is under the line of 3 US tons.</summary>
    /// <param name="posting">Its posting; null where there is none.</param>
    public static string UnderLine(SurveyedPosting? posting) => posting?.Closure switch { true => "yes", false => "no", null => "not known" };

    /// <summary>What is missing for an answer.</summary>
    /// <param name="gap">The gap.</param>
    public static string Of(PassageGap gap) => gap switch
    {
        PassageGap.StandsForOthers => "a load for design or screening stands for others and is never itself on the road",
        PassageGap.VehicleNotRated g => $"the vehicle is not rated: {RatingWording.Of(g.Reason, DisplayUnits.Si)}",
        PassageGap.PartsNotRated g => $"no rating: {string.Join(", ", g.Rows.Select(r => $"{RatingWording.Member(r)} in {RatingWording.ActsIn(r)}").Distinct())}",
        PassageGap.NothingRated => "nothing that it loads has a factor",
        PassageGap.NoFloor => "no floor given",
        PassageGap.FloorNotWhole g => $"not given: {string.Join(", ", g.NotGiven.Select(PartWords.Of))}",
        PassageGap.DeckWithoutRule => "no rule for this deck",
        PassageGap.NoConnections => "no connection given",
        PassageGap.LaneTypeLeftOut g => string.Create(CultureInfo.InvariantCulture, $"the deck is {g.DeckLength / 0.3048:0} ft long, where a lane-type load counts as well, and it was not asked for"),
        PassageGap.FramesNotRated => "frames that hold the chord of a pony truss not rated",
        PassageGap.TrussedPostsNotRated g => $"posts and rod ends of {g.Parts} not rated",
        PassageGap.DeadLoadsDisagree g => $"dead load of the truss and weights of the floor disagree at {g.Joint}",
        _ => throw new ArgumentOutOfRangeException(nameof(gap), gap, "Every gap has words."),
    };

    /// <summary>What the factor of a vehicle holds under, and has to be enforced.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="rating">The rating.</param>
    public static IEnumerable<string> Conditions(LiveLoad vehicle, BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(rating);
        if (RatingWording.OnlyAtCrawlSpeed(rating.Bridge).Length > 0)
        {
            yield return "at crawl speed only";
        }

        if (rating.Bridge.Deck.VehiclesHeldToMiddle)
        {
            yield return "held to the middle of the roadway";
        }

        bool isAlone = vehicle.Class is VehicleClass.Farm or VehicleClass.Permit or VehicleClass.Maintenance
            || (vehicle.Class == VehicleClass.Emergency && rating.Stamps.Any(s => s is Stamp.EmergencyAlone or Stamp.EmergencyAloneOnParts));
        if (isAlone)
        {
            yield return "alone on the bridge";
        }
    }

    /// <summary>What the factor alone does not tell of a no: why ratings are withheld, or what stands beside the vehicle, and its factor without; null for nothing.</summary>
    /// <param name="passage">The answer on the vehicle.</param>
    /// <param name="rating">The rating.</param>
    public static string? WhyNot(Passage passage, BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(passage);
        ArgumentNullException.ThrowIfNull(rating);
        return passage switch
        {
            { IsWithheld: true, Deciding: { } withheld } => $"withheld: {RatingWording.Of(withheld.Reason!, DisplayUnits.Si)}",
            { Verdict: PassageVerdict.No, Deciding: { Beside: { } beside } row } => $"beside {beside.Vehicle.Name}{(AloneOn(rating, row) is { } alone ? $"; alone {Words.Factor(alone)}" : "")}",
            _ => null,
        };
    }

    // The lowest of the vehicle alone may be in another member than the lowest beside another.
    private static double? AloneOn(BridgeRating rating, RatingRow row) =>
        rating.Rows.Where(r => ReferenceEquals(r.Vehicle, row.Vehicle) && r.Beside is null && r.Level.Governance != Governance.Inventory).Min(r => r.Factor);

    /// <summary>Whether a vehicle may cross, in words that a table shows.</summary>
    /// <param name="vehicle">The vehicle; null where the bridge is not rated for it.</param>
    public static string InTable(SurveyedVehicle? vehicle) => vehicle?.Verdict switch
    {
        PassageVerdict.Yes => $"yes, by what is rated{string.Concat(vehicle.Conditions.Select(c => $", {c}"))}",
        PassageVerdict.No => "no",
        _ => "not known",
    };

    /// <summary>What decides on a vehicle, or is missing for an answer.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="vehicle">The vehicle on it; null where the bridge is not rated for it.</param>
    public static string Reason(SurveyedBridge bridge, SurveyedVehicle? vehicle)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        return vehicle switch
        {
            null => bridge.Standing == SurveyStanding.NotRated ? $"not rated: {bridge.Why}" : "not asked for",
            { Verdict: PassageVerdict.NotKnown } => string.Join("; ", [.. vehicle.Gaps, .. bridge.Gaps]),
            _ => vehicle.WhyNot ?? "",
        };
    }

    /// <summary>The lowest factor of a vehicle as a matrix shows it: at most that, where something is not rated.</summary>
    /// <param name="vehicle">The vehicle on a bridge; null where it was not asked for.</param>
    /// <param name="figure">How a factor is written.</param>
    public static string InMatrix(SurveyedVehicle? vehicle, Func<double, string> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return vehicle switch
        {
            null => "not asked for",
            { IsWithheld: true } => "withheld",
            { Lowest.Factor: { } factor, IsAtMost: true } => $"at most {figure(factor)}",
            { Lowest.Factor: { } factor } => figure(factor),
            _ => "not rated",
        };
    }
}
