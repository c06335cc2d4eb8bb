using System.Reflection;
using SpanRater.Files;

namespace SpanRater.Tests.Files;

/// <summary>Sentences that no small bridge on disk brings about, word for word; and that every kind of fact has one.</summary>
public class WordingTests
{
    private static readonly Truss Truss = new KingPostTruss(4, 3).Build();

    public static TheoryData<Refusal, string> Refusals() => new()
    {
        { new Refusal.PoorResidual(2.5e-8), "The solved forces leave 2.5e-8 of the largest load unbalanced at a joint, above 1e-9: the geometry is too close to a mechanism. Check the coordinates; no result is given." },
        { new Refusal.RoutesDiffer("U1L2", 3e-8), "The two routes to the forces differ in U1L2 by 3.0e-8 of the largest member force, above 1e-9: the geometry is too close to a mechanism, or stiff and soft members are too far apart. Check coordinates, areas and moduli; no result is given." },
        { new Refusal.RoutesDiffer(null, double.NaN), "The forces could not be found a second time joint by joint, and no result is given on one route alone: the geometry is too close to a mechanism. Check the coordinates." },
        { new Refusal.NoDeck(1), "There is no deck to load: 1 joint is marked as panel point, and it takes two. Write deck = yes in joints.csv where the floor reaches the truss." },
        { new Refusal.Redundant(Stability.Of(Truss)), "Redundant: 5 members + 3 reactions = 8, equal to 2 × 4 joints = 8; rank 8. With 0 more than equilibrium can find, statics alone cannot divide the forces of ." },
        { new Refusal.NoAreas(Stability.Of(Truss), ["L0L1", "L1U1"]), "Redundant: 5 members + 3 reactions = 8, equal to 2 × 4 joints = 8; rank 8. Only the stiffness of its members divides the forces, and no area is given for L0L1, L1U1. Write the column area of members.csv; none is guessed, and no forces are given." },
        { new Refusal.NotReciprocal(3e-8), "Deflections that must be equal by reciprocity differ by 3.0e-8 of the largest, above 1e-9: stiff and soft members are too far apart. Check areas and moduli; no result is given." },
        { new Refusal.NoAreasForDeflection(["L0L1"]), "Deflections follow from areas, and none is given for L0L1. Write the column area of members.csv; none is guessed." },
        { new Refusal.DeflectionsDiffer(3e-6), "Deflections by virtual work and by stiffness differ by 3.0e-6 of the largest, above 1e-7: stiff and soft members are too far apart. Check areas and moduli; no result is given." },
        { new Refusal.NoMovingMass(), "The dead load puts no weight on a joint that can move, so nothing swings. Give the dead load of one truss in loads.csv." },
        { new Refusal.RodsThatOnlyPull(["L1U2", "U1L2"]), "Members that only pull (L1U2, U1L2): which of them act depends on the load, so that what holds for every load cannot be said." },
        { new Refusal.UncarriedCompression("U2L3", -14234.3, new UncarriedUnder("DC")), "Uncarried compression in U2L3: it only pulls, and under case DC it would have to carry -14.23 kN (-3.2 kip). No other member can; no result is given." },
        {
            new Refusal.UncarriedCompression("U2L3", -14234.3, new UncarriedUnder("Type 3", 12.192, Direction.Left, 0.625)),
            "Uncarried compression in U2L3: it only pulls, and under dead load and 0.625 times Type 3, driving left with its front axle at 12.19 m (40.00 ft) it would have to carry -14.23 kN (-3.2 kip). No other member can; no result is given."
        },
        { new Refusal.NoActingSet(4), "None of the 4 sets of acting rods that were examined carries the load without pressing a member that only pulls. Check which members are marked tension only; no result is given." },
        { new Refusal.SeveralSetsAct(["U1L2"], []), "Two sets of acting rods carry this load with different forces (U1L2 pulls; none pulls), and nothing here decides between them. No result is given." },
        { new Refusal.RodsNotApart(["U1L2", "L1U2"]), "Whether U1L2, L1U2 go slack hangs on one another or on areas, so that the worst positions of a vehicle are not found exactly. Forces under a case are given; no vehicle is rolled and nothing is rated." },
        { new Refusal.NoDeadLoad(), "Which rods act depends on dead and live load together, and loads.csv has no case DC. Give the dead load; no result is given." },
        { new Refusal.RelievingAxlesWithRods("NRL"), "Relieving axles of NRL are to be left out, which has no meaning where rods go slack: a rod acts or not under all axles together. No result is given." },
    };

    public static TheoryData<Stamp, string> Stamps() => new()
    {
        { new Stamp.NoWearingSurface(), "assumed: no wearing surface (neither the take-off nor loads.csv has a case DW)" },
        { new Stamp.UnknownTruckTraffic(1.45), "assumed: truck traffic unknown (adtt is not given), so the live-load factor is 1.45" },
        { new Stamp.GivenCapacities(CapacityMeaning.FactoredResistance), "capacities are used as given in members.csv: resistance, condition and system factors are taken to be in them" },
        { new Stamp.GivenCapacities(CapacityMeaning.DesignResistance), "capacities are used as given in members.csv: design resistances, with their partial factors in them" },
        { new Stamp.GivenCapacities(CapacityMeaning.AllowableForce), "allowable forces are used as given in members.csv" },
        { new Stamp.GivenImpact(0.30, 0.30), "impact 0.30 is given in bridge.toml and replaces the method's own" },
        { new Stamp.GivenImpact(0.287, 0.30), "impact 0.287 is given in bridge.toml and replaces the method's own, which is up to 0.30: say why in the report" },
        { new Stamp.FloorOutweighsTruss("L1", 2 * 4448.2216152605, 4448.2216152605), "warning: at L1 the dead load case DC of the truss has 1.00 kip, less than the 2.00 kip that deck, beams and kerbs bring there by the floor's own weights: one of the two is wrong, and if it is the truss's, its factors are too high" },
        { new Stamp.GivenShare(0.75, null), "truss_share 0.750 is given in bridge.toml and replaces the lever rule, and no reason is given; presence is taken to be in it" },
        { new Stamp.GivenShare(0.0625, "refined analysis of 2019"), "truss_share 0.0625 is given in bridge.toml and replaces the lever rule: \"refined analysis of 2019\"; presence is taken to be in it" },
        { new Stamp.NearerToKerb("Type 3", 0.3048), "Type 3 does not fit with the wheel-to-kerb distance asked for; 1.00 ft is used" },
        { new Stamp.FewerAbreast("Type 3", 2, 1), "the roadway has 2 lanes, and only 1 of Type 3 fits abreast" },
        { new Stamp.FloorWeights(598.5, 1149.1, null, "DC by the layers of dead.csv, DW by the layers of dead.csv"), "on the floor: deck 12.5 psf, wearing surface 24.0 psf (DC by the layers of dead.csv, DW by the layers of dead.csv); beams weigh their sections as built" },
        { new Stamp.FloorWeights(598.5, 0, 291.878, "DC by deck_dc under [floor], DW none"), "on the floor: deck 12.5 psf, wearing surface 0.0 psf, kerbs and railings 0.020 klf on each side (DC by deck_dc under [floor], DW none); beams weigh their sections as built" },
        { new Stamp.TrussedFloorbeams("beams"), "assumed of trussed floorbeams (beams): the rod is snug without load, neither slack nor tightened, fastened at the beam's axis over the trusses, and posts and seats do not yield; rod and posts weigh nothing. A rod that hangs loose leaves the beam to carry alone, and then no factor here holds" },
        { new Stamp.StringersNotCounted("joists"), "assumed: as many of \"joists\" as fit the roadway weigh on floorbeams, since count is not given in floor.csv" },
        { new Stamp.EmergencyAloneOnParts(), "deck, stringers and connections are rated with an emergency vehicle alone on the bridge; a vehicle beside it is counted for truss members, floorbeams and hangers only" },
        { new Stamp.EmergencyAlone(), "emergency vehicles are rated alone on the bridge" },
        { new Stamp.NoLaneTypeLegalLoad(73.152), "the deck is 240.00 ft long: spans over 200 ft also take the lane-type legal load, and none is asked for, so legal factors here are not the whole answer: name \"Lane-type legal load\" under vehicles" },
        { new Stamp.CrawlSpeed("gate and attendant"), "assumed: every vehicle crosses at crawl speed, at most 10 mph, so that none takes impact (crawl_speed in bridge.toml: \"gate and attendant\"). This holds only where it is enforced" },
        { new Stamp.RidingSurfaceWithoutEffect(RidingSurface.Smooth), "the riding surface given in bridge.toml (smooth) changes no impact here: impact or crawl_speed replaces it, the method knows no such allowance, or the deck is no longer than 40 ft" },
        { new Stamp.GivenWheelToKerb(1 * 0.3048), "wheel_to_kerb 1.00 ft is given in bridge.toml, in place of 2.00 ft" },
        { new Stamp.RidingSurfaceCounts(RidingSurface.MinorDeviations, 0.20), "riding surface as given in bridge.toml (minor deviations): impact 0.20 on chords, end posts and diagonals of decks over 40 ft, for vehicles other than design loads; all other members keep the method's own" },
        { new Stamp.NoImpactOnTimber(), "no impact on members of timber" },
        { new Stamp.DefaultToConfirm(FactorClauses.Emergency, 1.3), "to confirm: LRFR live-load factor of emergency vehicles, 1.30 (FHWA memo of 3 November 2016, from memory; later editions give values by truck traffic): look it up in your copy and, where it agrees, write confirmed = [\"emergency factor\"] under [rating] in bridge.toml" },
        { new Stamp.GivenEmergencyFactor(1.2, 1.3), "emergency_factor 1.20 is given in bridge.toml and replaces the LRFR live-load factor of emergency vehicles, 1.30" },
        { new Stamp.ConfirmedByUser(FactorClauses.SpecialHauling, 1.45), "confirmed by the user: LRFR live-load factor of SU4 to SU7 and of the notional load that screens them, 1.45 (AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.4.2.3b)" },
        { new Stamp.StrengthByYear("plate steel", MaterialKind.Steel, 1897, PublishedStrength.Find(MaterialKind.Steel, 1897)!), "assumed: material \"plate steel\" has the strength by year, Fy 26.00 ksi, Fu 52.00 ksi (steel of 1897, row \"before 1905\"; AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), Table 6A.6.2.1-1, from memory); a test may say otherwise" },
        { new Stamp.OwnTimberValues("larch", true), "assumed: timber \"larch\" has values of its own, taken to hold for wet service and its size as they are: no factor for either is put on them" },
        { new Stamp.ConditionNotGiven(0.85), "assumed: the condition is not given, so that the condition factor is that of a poor one, 0.85: write condition under [rating] in bridge.toml" },
        { new Stamp.HeadsNotMeasured("L0L1, L1L2"), "heads of eyebars are not measured, and the bodies alone are rated: L0L1, L1L2" },
        { new Stamp.TooSlender("L2U2, L4U4", new SlendernessWarning(MemberDuty.MainCompression, 131.24, 120)), "warning: more slender in compression than the standard allows: L2U2, L4U4; up to 131.2, and the limit is 120 (AASHTO LRFD, 8th ed. (2017), 6.8.4 and 6.9.3, from memory); no strength is taken off for it" },
        { new Stamp.PonyFramesNotRated(), "pony truss: posts and floorbeams alone hold its top joints sideways; posts, end posts and their connections must also take the brace force of the chord, which is not rated here" },
        { new Stamp.PackRust("M6L6", "upstream", "L6"), "pack rust seen on M6L6 (upstream truss) at L6: no number follows from it, and what is behind it is not measured" },
        { new Stamp.SlackPieces("U1L2", null, 1), "slack in U1L2: 1 piece is counted as carrying nothing" },
        { new Stamp.StrengthToConfirm(ResistanceClauses.Eyebars), "to confirm: net section of the head through the pin hole, at least this many times the body; a lighter head governs in that proportion, 1.35 (AASHTO LRFD, 8th ed. (2017), 6.8.6.2, from memory; proportions differ between editions): look it up in your copy and, where it agrees, write confirmed = [\"eyebar heads\"] under [rating] in bridge.toml" },
        { new Stamp.StrengthConfirmedByUser(ResistanceClauses.Eyebars), "confirmed by the user: net section of the head through the pin hole, at least this many times the body; a lighter head governs in that proportion, 1.35 (AASHTO LRFD, 8th ed. (2017), 6.8.6.2)" },
        { new Stamp.NoImpact(VehicleClass.Maintenance), "no impact on vehicles of class maintenance" },
    };

    public static TheoryData<NotRatedReason, string> Reasons() => new()
    {
        { new NotRatedReason.NoCapacity(GivenCapacity.InventoryTension), "no capacity: column \"inventory tension\" of members.csv is blank" },
        { new NotRatedReason.PartLacks([new MissingDatum.NoMaterial(), new MissingDatum.Cracked("the seat")]), $"{MissingDatumWording.Of(new MissingDatum.NoMaterial())}. {MissingDatumWording.Of(new MissingDatum.Cracked("the seat"))}" },
        { new NotRatedReason.PartOfLoading("HL-93"), "its standard form has a lane load as well, and the truck alone would flatter: rate \"HL-93\" instead" },
        { new NotRatedReason.NotATrainWithRods("Crowd"), "rods go slack, and \"Crowd\" is more than one train: a lane load, a crowd, tracks, or several vehicles. Over rods only single trains are rated" },
        { new NotRatedReason.Uncarried("U2L3", 0.7999, "inventory"), "uncarried compression in U2L3: it only pulls, and at 0.79 of the vehicle, factored for inventory level, it goes slack with nothing to take over. Every rating of a truss member for this vehicle is withheld" },
        { new NotRatedReason.NoPeaks(new Refusal.RoutesDiffer("U1L2", 3e-8)), "its peaks could not be found by two routes that agree (routesDiffer): check coordinates, and the members marked tension only" },
        { new NotRatedReason.RelievingAxlesWithRods("NRL"), "relieving axles of NRL are to be left out, which has no meaning where rods go slack" },
        { new NotRatedReason.NoPermitFactor(), "permit_factor is missing in bridge.toml [rating]: a permit vehicle is rated with the factor its permit calls for" },
        { new NotRatedReason.NoPartialFactor(VehicleClass.Crowd), "factors.toml has no factor on crowds and service vehicles: it is not rated until factor stands under [crowd] there" },
        { new NotRatedReason.NoPartialFactor(VehicleClass.Legal), "factors.toml has no factors of traffic: it is not rated until factor, dynamic_allowance and lanes stand under [traffic] there" },
        { new NotRatedReason.NoShare(new ShareOutcome.NotGiven(true, true)), "no lateral share: truss_spacing and roadway are missing in bridge.toml [deck] (or give truss_share)" },
        { new NotRatedReason.NoShare(new ShareOutcome.NotGiven(false, true)), "no lateral share: roadway is missing in bridge.toml [deck] (or give truss_share)" },
        { new NotRatedReason.NoShare(new ShareOutcome.NotTwoTrusses(3)), "no lateral share: the lever rule is for two trusses and there are 3; give truss_share in bridge.toml [deck]" },
        { new NotRatedReason.NoShare(new ShareOutcome.TooWide(2.4384, 2.1336)), "too wide for the roadway: it needs 8.00 ft and there is 7.00 ft" },
        { new NotRatedReason.NoShare(new ShareOutcome.WheelOutside(4.572, 4.2672)), "no lateral share: a wheel line would stand 15.00 ft from one truss, and the trusses are 14.00 ft apart; check roadway and truss_spacing, or give truss_share" },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Refusal_Sentence_SaysWhatAndTheMend(Refusal refusal, string expected) => Assert.Equal(expected, RefusalWording.Sentence(refusal, Truss));

    [Theory]
    [MemberData(nameof(Stamps))]
    public void Stamp_Sentence_SaysWhatWasAssumed(Stamp stamp, string expected) => Assert.Equal(expected, RatingWording.Of(stamp, DisplayUnits.Us));

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Reason_Sentence_NamesTheDatum(NotRatedReason reason, string expected) => Assert.Equal(expected, RatingWording.Of(reason, DisplayUnits.Us));

    // What moves in a mechanism is told by the tests of bad geometry.
    [Fact]
    public void EveryRefusal_ButAMechanism_HasItsSentenceHere()
    {
        Type[] told = [.. Refusals().Cast<Xunit.ITheoryDataRow>().Select(row => row.GetData()[0]!.GetType()), typeof(Refusal.Mechanism)];
        Assert.All(typeof(Refusal).GetNestedTypes().Where(t => t.IsSubclassOf(typeof(Refusal))), t => Assert.Contains(t, told));
    }

    [Theory]
    [InlineData(typeof(Stamp), nameof(Stamps))]
    [InlineData(typeof(NotRatedReason), nameof(Reasons))]
    public void EveryKind_OfFact_HasItsSentenceHere(Type kind, string cases)
    {
        var data = (System.Collections.IEnumerable)typeof(WordingTests).GetMethod(cases, BindingFlags.Public | BindingFlags.Static)!.Invoke(null, null)!;
        Type[] told = [.. data.Cast<Xunit.ITheoryDataRow>().Select(row => row.GetData()[0]!.GetType())];
        Assert.All(kind.GetNestedTypes().Where(t => t.IsSubclassOf(kind)), t => Assert.Contains(t, told));
    }

    [Theory]
    [InlineData(0.994, "0.99")]
    [InlineData(0.996, "0.99")]
    [InlineData(0.99999, "0.99")]
    [InlineData(1.0, "1.00")]
    [InlineData(1.004, "1.00")]
    [InlineData(0.605, "0.60")]
    [InlineData(1.999, "1.99")]
    [InlineData(1.9999999999999, "2.00")]
    [InlineData(10.0, "10.00")]
    [InlineData(10.01, ">10")]
    [InlineData(0.0, "0.00")]
    public void Factor_OfATable_NeverRoundsUpToEnough(double factor, string expected) => Assert.Equal(expected, Words.Factor(factor));
}
