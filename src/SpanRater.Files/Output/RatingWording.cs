using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says why something is not rated, and what was assumed.</summary>
public static class RatingWording
{
    /// <summary>Why a row is not rated: the datum that is missing.</summary>
    /// <param name="reason">The reason.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(NotRatedReason reason, DisplayUnits units) => reason switch
    {
        NotRatedReason.NoCapacity { Lacking: { } lacking } => $"no capacity: {string.Join(". ", lacking.Select(MissingDatumWording.Of))}",
        NotRatedReason.PartLacks { Lacking: { } lacking } => string.Join(". ", lacking.Select(MissingDatumWording.Of)),
        NotRatedReason.NoCapacity r => $"no capacity: column \"{MembersTable.ColumnOf(r.Capacity)}\" of members.csv is blank",
        NotRatedReason.PartOfLoading r => $"its standard form has a lane load as well, and the truck alone would flatter: rate \"{r.Loading}\" instead",
        NotRatedReason.NotATrainWithRods r => $"rods go slack, and \"{r.Load}\" is more than one train: a lane load, a crowd, tracks, or several vehicles. Over rods only single trains are rated",
        NotRatedReason.Uncarried r => $"uncarried compression in {r.Member}: it only pulls, and at {ResultTable.Cut(r.Factor, 2)} of the vehicle, factored for {r.Level} level, it goes slack with nothing to take over. Every rating of a truss member for this vehicle is withheld",
        NotRatedReason.NoPeaks r => $"its peaks could not be found by two routes that agree ({RefusalWording.Kind(r.Why)}): check coordinates, and the members marked tension only",
        NotRatedReason.RelievingAxlesWithRods r => $"relieving axles of {r.Vehicle} are to be left out, which has no meaning where rods go slack",
        NotRatedReason.NoPermitFactor => "permit_factor is missing in bridge.toml [rating]: a permit vehicle is rated with the factor its permit calls for",
        NotRatedReason.NoPartialFactor r => FactorMissing(r.Class),
        NotRatedReason.NoShare r => Of(r.Share, units),
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Every reason has a sentence."),
    };

    /// <summary>What a row is rated under: the vehicle, and what stands beside it.</summary>
    /// <param name="row">The row.</param>
    public static string Under(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Beside is { } beside ? $"{row.Vehicle.Name} beside {beside.Vehicle.Name}" : row.Vehicle.Name;
    }

    /// <summary>That a rating holds at crawl speed only; empty where impact counts.</summary>
    /// <param name="bridge">The bridge.</param>
    public static string OnlyAtCrawlSpeed(Bridge bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        return bridge.Rating is { CrawlSpeed: not null, Impact: null } ? " This holds at crawl speed only, without impact." : "";
    }

    /// <summary>The mode that governs a row's capacity; null where the capacity is given, or missing.</summary>
    /// <param name="row">The row.</param>
    public static string? Mode(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row switch
        {
            MemberRow { Resistance: { } resistance } => ModeWords.Of(resistance.Governing),
            PartRow { Resistance: { } resistance } => PartWords.Mode(resistance),
            _ => null,
        };
    }

    /// <summary>What holds a row's factor down: the mode of its capacity, or a bar that goes slack before that is used up; null where the capacity is given, or missing.</summary>
    /// <param name="row">The row.</param>
    public static string? HeldBy(RatingRow row) => (row as MemberRow)?.CappedBy is { } rod ? $"{rod} goes slack" : Mode(row);

    /// <summary>The place on the part where its capacity is least; null where it is the same all along, or there is none.</summary>
    /// <param name="row">The row.</param>
    public static string? Place(RatingRow row) => row switch
    {
        MemberRow member => member.Resistance?.Governing.Place,
        PartRow part => part.Resistance?.Place,
        _ => null,
    };

    /// <summary>What the part is rated in: tension, compression, bending, shear or bearing.</summary>
    /// <param name="row">The row.</param>
    public static string ActsIn(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return SenseOf(row) ?? PartWords.InWords(row.ActsAs);
    }

    /// <summary>tension or compression; null of an effect that has no sense.</summary>
    /// <param name="row">The row.</param>
    public static string? SenseOf(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.InSense is { } sense ? Words.Of(sense) : null;
    }

    /// <summary>The name of the member or part, and of the panel point or joint where a part is that stands for several alike.</summary>
    /// <param name="row">The row.</param>
    public static string NameAt(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row is PartRow { At: { Length: > 0 } at } && !row.Name.Contains(at, StringComparison.Ordinal) ? $"{row.Name} at {at}" : row.Name;
    }

    /// <summary>The name of the member or part, with its truss where the trusses are told apart.</summary>
    /// <param name="row">The row.</param>
    public static string Member(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Truss is null ? NameAt(row) : $"{NameAt(row)} ({row.Truss})";
    }

    /// <summary>That the user's own partial factors hold none for a class, and where it would stand.</summary>
    /// <param name="vehicleClass">The class.</param>
    public static string FactorMissing(VehicleClass vehicleClass) => PartialFactors.IsCrowd(vehicleClass)
        ? $"{BridgeFolder.FactorsFile} has no factor on crowds and service vehicles: it is not rated until factor stands under [crowd] there"
        : $"{BridgeFolder.FactorsFile} has no factors of traffic: it is not rated until factor, dynamic_allowance and lanes stand under [traffic] there";

    /// <summary>The column of members.csv that gives a capacity.</summary>
    /// <param name="capacity">The capacity.</param>
    public static string ColumnOf(GivenCapacity capacity) => MembersTable.ColumnOf(capacity);

    /// <summary>Why a factor is lower than the member's own capacity would make it; null where it is not.</summary>
    /// <param name="row">A row.</param>
    public static string? Cap(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return (row as MemberRow)?.CappedBy is { } rod ? $"no factor is above the one at which {rod} goes slack with nothing to take over" : null;
    }

    /// <summary>The members whose factors end where a bar that only pulls goes slack, a line for each vehicle, level and truss; nothing where there are none.</summary>
    /// <param name="rows">The rows that are shown.</param>
    public static IEnumerable<ResultBlock> Caps(IEnumerable<RatingRow> rows)
    {
        string[] lines =
        [
            .. rows.OfType<MemberRow>().Where(r => r.CappedBy is not null).GroupBy(r => (Vehicle: r.Vehicle.Name, Level: r.Level.Name, r.Truss, r.CappedBy, r.Factor)).Select(g =>
                $"{g.Key.Vehicle} at {g.Key.Level} level{(g.Key.Truss is null ? "" : $" on the {g.Key.Truss} truss")}: no factor above {Words.Factor(g.Key.Factor)}, where {g.Key.CappedBy} goes slack: {string.Join(", ", g.Select(Effect))}"),
        ];
        return lines.Length == 0 ? [] : [new ResultBlock.Items("Held down by a bar that only pulls and has nothing to take over from it, not by the member's own capacity:", lines)];
    }

    /// <summary>The members that have no factor in a sense, and why; nothing where there are none.</summary>
    /// <param name="rows">The lowest row of each member and sense.</param>
    public static IEnumerable<ResultBlock> NotApplicable(IEnumerable<RatingRow> rows)
    {
        RatingRow[] never = [.. rows.Where(r => r.Status == RatingStatus.NotLoaded)];
        string[] unloaded = [.. never.Where(r => r.Live is null).Select(Effect).Distinct()];
        if (unloaded.Length > 0)
        {
            yield return new ResultBlock.Paragraph($"Not applicable, no live force under these vehicles: {string.Join(", ", unloaded)}. A factor there is not infinite: there is none, and such a member may still brace.");
        }

        string[] bounded = [.. never.Where(r => r.Live is not null).Select(Effect).Distinct()];
        if (bounded.Length > 0)
        {
            yield return new ResultBlock.Paragraph($"Not applicable, since rods go slack first: {string.Join(", ", bounded)}. There a vehicle takes some of the dead load's force away, and never reaches the capacity however heavy it is.");
        }
    }

    private static string Effect(RatingRow row) => $"{NameAt(row)} {ActsIn(row)}";

    /// <summary>What was assumed or replaced.</summary>
    /// <param name="stamp">The stamp.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(Stamp stamp, DisplayUnits units) => stamp switch
    {
        Stamp.NoWearingSurface => "assumed: no wearing surface (neither the take-off nor loads.csv has a case DW)",
        Stamp.UnknownTruckTraffic s => string.Create(CultureInfo.InvariantCulture, $"assumed: truck traffic unknown (adtt is not given), so the live-load factor is {s.LiveFactor:0.00}"),
        Stamp.GivenCapacities { Meaning: CapacityMeaning.AllowableForce } => "allowable forces are used as given in members.csv",
        Stamp.GivenCapacities { Meaning: CapacityMeaning.DesignResistance } => "capacities are used as given in members.csv: design resistances, with their partial factors in them",
        Stamp.GivenCapacities => "capacities are used as given in members.csv: resistance, condition and system factors are taken to be in them",
        Stamp.GivenImpact s => string.Create(CultureInfo.InvariantCulture, $"impact {s.Impact:0.00#} is given in bridge.toml and replaces the method's own{(s.Impact < s.OfMethod ? ", which is up to " + s.OfMethod.ToString("0.00#", CultureInfo.InvariantCulture) + ": say why in the report" : "")}"),
        Stamp.FloorOutweighsTruss s => $"warning: at {s.Joint} the dead load case DC of the truss has {Force(s.OfCase, units)}, less than the {Force(s.OfFloor, units)} that deck, beams and kerbs bring there by the floor's own weights: one of the two is wrong, and if it is the truss's, its factors are too high",
        Stamp.CrawlSpeed s => $"assumed: every vehicle crosses at crawl speed, at most 10 mph, so that none takes impact (crawl_speed in bridge.toml: \"{s.Enforced}\"). This holds only where it is enforced",
        Stamp.RidingSurfaceCounts s => string.Create(CultureInfo.InvariantCulture, $"riding surface as given in bridge.toml ({Words.Of(s.Surface)}): impact {s.Impact:0.00} on chords, end posts and diagonals of decks over 40 ft, for vehicles other than design loads; all other members keep the method's own"),
        Stamp.RidingSurfaceWithoutEffect s => $"the riding surface given in bridge.toml ({Words.Of(s.Surface)}) changes no impact here: impact or crawl_speed replaces it, the method knows no such allowance, or the deck is no longer than 40 ft",
        Stamp.GivenWheelToKerb s => $"wheel_to_kerb {Length(s.WheelToKerb, units)} is given in bridge.toml, in place of {Length(Deck.UsualWheelToKerb, units)}",
        Stamp.NoImpactOnTimber => "no impact on members of timber",
        Stamp.GivenShare s => string.Create(CultureInfo.InvariantCulture, $"truss_share {s.Share:0.000#} is given in bridge.toml and replaces the lever rule{(s.Reason is null ? ", and no reason is given" : $": \"{s.Reason}\"")}; presence is taken to be in it"),
        Stamp.NearerToKerb s => $"{s.Vehicle} does not fit with the wheel-to-kerb distance asked for; {Length(s.WheelToKerb, units)} is used",
        Stamp.FewerAbreast s => $"the roadway has {s.Lanes} lanes, and only {s.Loaded} of {s.Vehicle} fit{(s.Loaded == 1 ? "s" : "")} abreast",
        Stamp.EmergencyAlone => "emergency vehicles are rated alone on the bridge",
        Stamp.NoLaneTypeLegalLoad s => $"the deck is {Length(s.DeckLength, units)} long: spans over 200 ft also take the lane-type legal load, and none is asked for, so legal factors here are not the whole answer: name \"Lane-type legal load\" under vehicles",
        Stamp.DefaultToConfirm s => string.Create(CultureInfo.InvariantCulture, $"to confirm: {s.Clause.Says}, {s.Value:0.00##} ({s.Clause.CitationWithMark}; {s.Clause.Doubt}): look it up in your copy and, where it agrees, write confirmed = [\"{s.Clause.Name}\"] under [rating] in bridge.toml"),
        Stamp.GivenEmergencyFactor s => string.Create(CultureInfo.InvariantCulture, $"emergency_factor {s.Given:0.00##} is given in bridge.toml and replaces the LRFR live-load factor of emergency vehicles, {s.Own:0.00##}"),
        Stamp.ConfirmedByUser s => string.Create(CultureInfo.InvariantCulture, $"confirmed by the user: {s.Clause.Says}, {s.Value:0.00##} ({s.Clause.Citation})"),
        Stamp.StrengthByYear s => string.Create(
            CultureInfo.InvariantCulture,
            $"assumed: material \"{s.Material}\" has the strength by year, Fy {Stress(s.Row.Yield, units)}{(s.Row.Ultimate is { } fu ? $", Fu {Stress(fu, units)}" : "")} ({MaterialWords.Of(s.Kind)}{(s.Built is { } built ? $" of {built}" : "")}, row \"{s.Row.Period}\"; {s.Row.Clause.CitationWithMark}); a test may say otherwise"),
        Stamp.OwnTimberValues s => $"assumed: timber \"{s.Material}\" has values of its own, taken to hold for {(s.IsWet ? "wet" : "dry")} service and its size as they are: no factor for either is put on them",
        Stamp.ConditionNotGiven s => string.Create(CultureInfo.InvariantCulture, $"assumed: the condition is not given, so that the condition factor is that of a poor one, {s.Factor:0.00}: write condition under [rating] in bridge.toml"),
        Stamp.HeadsNotMeasured s => $"heads of eyebars are not measured, and the bodies alone are rated: {s.Members}",
        Stamp.TooSlender s => string.Create(CultureInfo.InvariantCulture, $"warning: more slender in {(s.Worst.Duty is MemberDuty.MainCompression or MemberDuty.SecondaryCompression ? "compression" : "tension")} than the standard allows: {s.Members}; up to {s.Worst.Slenderness:0.#}, and the limit is {s.Worst.Limit:0} ({ResistanceClauses.SlendernessLimits.CitationWithMark}); no strength is taken off for it"),
        Stamp.FloorWeights s => $"on the floor: deck {Pressure(s.Components, units)}, wearing surface {Pressure(s.WearingSurface, units)}{(s.Edge is { } edge ? $", kerbs and railings {ResultTable.Figure(units.From(Quantity.LineLoad, edge), 3)} {units.Symbol(Quantity.LineLoad)} on each side" : "")} ({s.Source}); beams weigh their sections as built",
        Stamp.StringersNotCounted s => $"assumed: as many of \"{s.Part}\" as fit the roadway weigh on floorbeams, since count is not given in {BridgeFolder.FloorFile}",
        Stamp.TrussedFloorbeams s => $"assumed of trussed floorbeams ({s.Parts}): the rod is snug without load, neither slack nor tightened, fastened at the beam's axis over the trusses, and posts and seats do not yield; rod and posts weigh nothing. A rod that hangs loose leaves the beam to carry alone, and then no factor here holds",
        Stamp.EmergencyAloneOnParts => "deck, stringers and connections are rated with an emergency vehicle alone on the bridge; a vehicle beside it is counted for truss members, floorbeams and hangers only",
        Stamp.PonyFramesNotRated => "pony truss: posts and floorbeams alone hold its top joints sideways; posts, end posts and their connections must also take the brace force of the chord, which is not rated here",
        Stamp.PackRust s => $"pack rust seen on {s.Member}{On(s.Truss)}{(s.Place.Length == 0 ? "" : $" at {s.Place}")}: no number follows from it, and what is behind it is not measured",
        Stamp.SlackPieces s => string.Create(CultureInfo.InvariantCulture, $"slack in {s.Member}{On(s.Truss)}: {s.Count} {(s.Count == 1 ? "piece is" : "pieces are")} counted as carrying nothing"),
        Stamp.StrengthToConfirm s => $"to confirm: {s.Clause.Says}, {s.Clause.Values} ({s.Clause.CitationWithMark}; {s.Clause.Doubt}): look it up in your copy and, where it agrees, write confirmed = [\"{s.Clause.Name}\"] under [rating] in bridge.toml",
        Stamp.StrengthConfirmedByUser s => $"confirmed by the user: {s.Clause.Says}, {s.Clause.Values} ({s.Clause.Citation})",
        Stamp.NoImpact s => $"no impact on vehicles of class {VehicleClassNames.Name(s.Class)}",
        _ => throw new ArgumentOutOfRangeException(nameof(stamp), stamp, "Every stamp has a sentence."),
    };

    /// <summary>The factors on dead and live load that the rows were made with.</summary>
    /// <param name="rating">The rating.</param>
    public static string Factors(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        DeadFactors dead = rating.Method.DeadFactorsWith(rating.Bridge.Rating);
        var levels = rating.Rows.Where(r => r.Level.LiveFactor is not null).GroupBy(r => (r.Level.Name, r.Level.LiveFactor)).ToList();
        IEnumerable<string> live = levels.Select(l => string.Create(
            CultureInfo.InvariantCulture,
            $", live {l.Key.LiveFactor:0.00##} at {l.Key.Name} level{(levels.Count(o => o.Key.Name == l.Key.Name) == 1 ? "" : $" on class {string.Join(" and ", l.Select(r => VehicleClassNames.Name(r.Vehicle.Class)).Distinct())}")}"));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Factors: DC {dead.Components:0.00##} ({dead.RelievingComponents:0.00##} where it relieves), DW {dead.WearingSurface:0.00##} ({dead.RelievingWearingSurface:0.00##} where it relieves){string.Concat(live)}");
    }

    private static string Of(ShareOutcome share, DisplayUnits units) => share switch
    {
        ShareOutcome.NotGiven s => $"no lateral share: {(s.TrussSpacing && s.Roadway ? "truss_spacing and roadway are" : s.TrussSpacing ? "truss_spacing is" : "roadway is")} missing in bridge.toml [deck] (or give truss_share)",
        ShareOutcome.NotTwoTrusses s => $"no lateral share: the lever rule is for two trusses and there {(s.Trusses == 1 ? "is" : "are")} {s.Trusses}; give truss_share in bridge.toml [deck]",
        ShareOutcome.TooWide s => $"too wide for the roadway: it needs {Length(s.Needed, units)} and there is {Length(s.Roadway, units)}",
        ShareOutcome.WheelOutside s => $"no lateral share: a wheel line would stand {Length(s.FromFarTruss, units)} from one truss, and the trusses are {Length(s.TrussSpacing, units)} apart; check roadway and truss_spacing, or give truss_share",
        _ => throw new ArgumentOutOfRangeException(nameof(share), share, "Every outcome has a sentence."),
    };

    private static string Pressure(double pressure, DisplayUnits units) =>
        units.Name == "us" ? $"{ResultTable.Figure(pressure / Unit.Find("psf")!.Size, 1)} psf" : $"{ResultTable.Figure(pressure / 1000, 2)} kPa";

    private static string On(string? truss) => truss is null ? "" : $" ({truss} truss)";

    private static string Stress(double stress, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Stress, stress), units.Name == "us" ? 2 : 1)} {units.Symbol(Quantity.Stress)}";

    private static string Force(double force, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Force, force), 2)} {units.Symbol(Quantity.Force)}";

    private static string Length(double metres, DisplayUnits units) =>
        $"{ResultTable.Figure(units.From(Quantity.Length, metres), 2)} {units.Symbol(Quantity.Length)}";
}
