using SpanRater.Files;
using SpanRater.Tests.Ratings;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.RatingParameters;

/// <summary>For every row of <c>rating-parameters.csv</c> the numbers with which the program stands for it, or why it does not use it.</summary>
internal static class RatingParameters
{
    private const string Superseded = "superseded by the interims of 2013";
    private const string Service = "service limit states are not rated";
    private const string GivenPermit = "a permit's factor is given by the user (permit_factor); none is assumed";
    private const string Sidewalks = "sidewalks beside a roadway are not loaded";
    private const string Duty = "a duty of the owner, and no number of a formula";

    private static readonly Catalogue Catalogue = Catalogue.Shipped(new FindingList());

    private static readonly RatingMethod Lrfr = RatingMethod.Find("LRFR")!, Lfr = RatingMethod.Find("LFR")!, Asr = RatingMethod.Find("ASR")!;

    // A steel of yield 1 and tensile strength 2 Pa.
    private static readonly MetalStrength Steel = new(1, 2, new StrengthOrigin.Given("made up"));

    private static readonly MetalStrength Iron = MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.WroughtIron, null)!, null);

    /// <summary>The program's numbers, all of which stand for the one value; by topic and item.</summary>
    public static IReadOnlyDictionary<(string Topic, string Item), Func<double[]>> Used { get; } = new Dictionary<(string, string), Func<double[]>>
    {
        [("LRFR load factor", "DC")] = () => [Lrfr.DeadFactors.Components],
        [("LRFR load factor", "DW")] = () => [Lrfr.DeadFactors.WearingSurface],
        [("LRFR load factor", "LL design inventory Strength I")] = () => [Factor(Lrfr, VehicleClass.Design, "inventory")],
        [("LRFR load factor", "LL design operating Strength I")] = () => [Factor(Lrfr, VehicleClass.Design, "operating")],
        [("LRFR legal load factor", "routine legal loads ADTT unknown")] = () => [Factor(Lrfr, VehicleClass.Legal, "legal")],
        [("LRFR legal load factor", "routine legal loads ADTT >= 5000")] = () => [Legal(VehicleClass.Legal, 5000), Legal(VehicleClass.Legal, 20_000)],
        [("LRFR legal load factor", "routine legal loads ADTT <= 1000")] = () => [Legal(VehicleClass.Legal, 1000), Legal(VehicleClass.Legal, 0)],
        [("LRFR legal load factor", "SHV / NRL ADTT unknown or >= 5000")] = () => [Legal(VehicleClass.Screening, null), Legal(VehicleClass.Screening, 5000), Legal(Class("SU7"), null)],
        [("LRFR legal load factor", "SHV / NRL ADTT <= 1000")] = () => [Legal(VehicleClass.Screening, 1000), Legal(Class("SU7"), 1000)],
        [("EV load factor", "EV2/EV3 LRFR (and LFR operating A2)")] = () => [Factor(Lrfr, Class("EV2"), "emergency"), Factor(Lrfr, Class("EV3"), "emergency"), Factor(Lfr, Class("EV2"), "operating")],
        [("impact LRFR", "IM truck/tandem/legal/permit")] = () => [HangerImpact(VehicleClass.Design), HangerImpact(VehicleClass.Legal), HangerImpact(VehicleClass.Permit)],
        [("impact LRFR", "IM legal, smooth riding surface, spans > 40 ft")] = () => [OnSurface(RidingSurface.Smooth, 40.1), Lrfr.ImpactOn(RidingSurface.Smooth)!.Value],
        [("impact LRFR", "IM legal, minor deviations, spans > 40 ft")] = () => [OnSurface(RidingSurface.MinorDeviations, 40.1)],
        [("impact LRFR", "IM wood components")] = () => [HangerImpact(VehicleClass.Legal, timber: true)],
        [("impact LRFR", "IM slow permit <= 10 mph")] = () => [HangerImpact(VehicleClass.Permit, new RatingSettings { PermitFactor = 1.2, CrawlSpeed = "flagman" })],
        [("impact LRFR", "IM fatigue")] = () => [FatigueNote.Impact],
        [("impact LFR/ASR", "I = 50/(L+125), cap")] = () => [Lfr.Impact(20 * Foot), Asr.Impact(20 * Foot)],
        [("LFR", "A1 dead")] = () => [Lfr.DeadFactors.Components, Lfr.DeadFactors.WearingSurface],
        [("LFR", "A2 inventory")] = () => [Factor(Lfr, VehicleClass.Legal, "inventory")],
        [("LFR", "A2 operating")] = () => [Factor(Lfr, VehicleClass.Legal, "operating")],
        [("ASR", "A1 and A2")] = () => [Asr.DeadFactors.Components, Asr.DeadFactors.WearingSurface, Factor(Asr, VehicleClass.Legal, "inventory"), Factor(Asr, VehicleClass.Legal, "operating")],
        [("condition factor phi_c", "good or satisfactory (superstructure condition 6 or more)")] = () => [MemberFactors.Of(Condition.Good, SystemKind.Stringer).Condition.Value],
        [("condition factor phi_c", "fair (5)")] = () => [MemberFactors.Of(Condition.Fair, SystemKind.Stringer).Condition.Value],
        [("condition factor phi_c", "poor (4 or less)")] = () => [MemberFactors.Of(Condition.Poor, SystemKind.Stringer).Condition.Value],
        [("system factor phi_s", "welded members in two-girder/truss/arch bridges")] = () => [System(SystemKind.WeldedTrussMember)],
        [("system factor phi_s", "riveted members in two-girder/truss/arch bridges")] = () => [System(SystemKind.RivetedTrussMember)],
        [("system factor phi_s", "multiple eyebar members in truss bridges")] = () => [System(SystemKind.MultipleEyebars)],
        [("system factor phi_s", "floorbeams spaced > 12 ft with non-continuous stringers")] = () => [System(SystemKind.WideFloorbeam)],
        [("system factor phi_s", "redundant stringer subsystems between floorbeams")] = () => [System(SystemKind.Stringer)],
        [("floor", "phi_c*phi_s not less than")] = () => [MemberFactors.Least, MemberFactors.Of(Condition.Poor, SystemKind.WeldedTrussMember).Value],
        [("ASR", "steel axial tension gross inventory x Fy")] = () => [Steel.AllowableGross(AllowableLevel.Inventory).Value],
        [("ASR", "steel axial tension gross operating x Fy")] = () => [Steel.AllowableGross(AllowableLevel.Operating).Value],
        [("ASR", "steel tension net section inventory x Fu")] = () => [Steel.AllowableNet(AllowableLevel.Inventory)!.Value / Steel.Ultimate!.Value],
        [("ASR", "steel tension net section operating x Fu")] = () => [Steel.AllowableNet(AllowableLevel.Operating)!.Value / Steel.Ultimate!.Value],
        [("ASR", "column factor of safety inventory")] = () => [ColumnCurve.SafetyFactor(AllowableLevel.Inventory)],
        [("ASR", "column factor of safety operating")] = () => [ColumnCurve.SafetyFactor(AllowableLevel.Operating)],
        [("ASR", "wrought iron tension/bending inventory ksi")] = () => [Iron.AllowableGross(AllowableLevel.Inventory).Value / (1000 * Psi)],
        [("ASR", "wrought iron tension/bending operating ksi")] = () => [Iron.AllowableGross(AllowableLevel.Operating).Value / (1000 * Psi)],
        [("resistance factor", "phi_c axial compression, steel only")] = () => [ColumnCurve.LoadAndResistance.Strength(1, 1, 1).Factors.Single().Value],
        [("resistance factor", "phi_y tension yielding gross")] = () => [TensionRule.LoadAndResistance.Strengths(Steel, new TensionArea(1, 1))[0].Factors.Single().Value],
        [("resistance factor", "phi_u tension fracture net")] = () => [TensionRule.LoadAndResistance.Strengths(Steel, new TensionArea(1, 1, IsPunched: false))[1].Factors.Single().Value],
        [("resistance factor", "phi_f flexure")] = () => [CombinedRule.LoadAndResistance.MomentStrength(Steel, 1)],
        [("effective length K", "truss member, bolted/riveted/welded ends both ends")] = () => [EffectiveLength.Factor(MemberEnds.Riveted)],
        [("effective length K", "truss member, pinned ends")] = () => [EffectiveLength.Factor(MemberEnds.Pinned)],
        [("effective length K", "single angle any end")] = () => [EffectiveLength.Factor(MemberEnds.SingleAngle)],
        [("slenderness limit", "compression primary KL/r")] = () => [SlendernessWarning.LimitOf(MemberDuty.MainCompression)],
        [("slenderness limit", "compression secondary KL/r")] = () => [SlendernessWarning.LimitOf(MemberDuty.SecondaryCompression)],
        [("slenderness limit", "tension primary with stress reversal L/r")] = () => [SlendernessWarning.LimitOf(MemberDuty.MainTensionWithReversal)],
        [("slenderness limit", "tension primary no reversal L/r")] = () => [SlendernessWarning.LimitOf(MemberDuty.MainTension)],
        [("slenderness limit", "tension secondary L/r")] = () => [SlendernessWarning.LimitOf(MemberDuty.SecondaryTension)],
        [("posting", "RF below which a legal vehicle type is not allowed")] = () => [SafeLoad.LeastFactor],
        [("posting", "minimum gross live load capacity to stay open, US ton")] = () => [SafeLoad.ClosureLine / (2 * Kip)],
        [("multiple presence", "1 lane")] = () => [Lrfr.Presence(1)],
        [("multiple presence", "2 lanes")] = () => [Lrfr.Presence(2)],
        [("multiple presence", "3 lanes")] = () => [Lrfr.Presence(3)],
        [("multiple presence", "> 3 lanes")] = () => [Lrfr.Presence(4), Lrfr.Presence(7)],
        [("lane reduction", "1 or 2 lanes")] = () => [Lfr.Presence(1), Lfr.Presence(2), Asr.Presence(1), Asr.Presence(2)],
        [("lane reduction", "3 lanes")] = () => [Lfr.Presence(3), Asr.Presence(3)],
        [("lane reduction", "4 or more")] = () => [Lfr.Presence(4), Lfr.Presence(7), Asr.Presence(4)],
        [("pedestrian", "pedestrian bridge live load psf (no IM)")] = () => [Pressure("Crowd 90 psf")],
        [("pedestrian", "sidewalk span 0-25 ft psf")] = () => [Pressure("AASHTO sidewalk crowd", 5), Pressure("AASHTO sidewalk crowd", 25)],
        [("pedestrian", "sidewalk span 26-100 ft psf")] = () => [Pressure("AASHTO sidewalk crowd", 26), Pressure("AASHTO sidewalk crowd", 100)],
        [("pedestrian", "1997 guide spec pedestrian load psf")] = () => [Pressure("Crowd 85 psf")],
        [("unit weight", "steel pcf")] = () => [PoundsPerCubicFoot("steel")],
        [("unit weight", "concrete pcf")] = () => [PoundsPerCubicFoot("concrete")],
        [("unit weight", "timber pcf (treated or untreated)")] = () => [PoundsPerCubicFoot("timber")],
        [("unit weight", "macadam/gravel rolled pcf")] = () => [PoundsPerCubicFoot("macadam"), PoundsPerCubicFoot("rolled gravel")],
        [("unit weight", "compacted sand, earth, gravel pcf")] = () => [PoundsPerCubicFoot("compacted earth")],
        [("unit weight", "loose sand, earth, gravel pcf")] = () => [PoundsPerCubicFoot("loose earth")],
        [("truck position", "wheel gauge ft")] = () => [Vehicle.StandardGauge / Foot, ((Vehicle)Catalogue.Find("HS20")!).Gauge / Foot],
        [("truck position", "lane loading width ft")] = () => [LeverRule.LaneLoadWidth / Foot],
        [("truck position", "wheel to curb, main members ft")] = () => [new Deck().WheelToKerb / Foot],
    };

    /// <summary>Why the program has no number for a row; by topic and item.</summary>
    public static IReadOnlyDictionary<(string Topic, string Item), string> NotUsed { get; } = new (string Reason, string Topic, string[] Items)[]
    {
        (Service, "LRFR load factor",
            ["LL Service II inventory (steel)", "LL Service II operating (steel)", "LL Service II legal (steel)", "LL Service II permit (steel)"]),
        (Superseded, "LRFR legal load factor (old)",
            ["routine ADTT unknown / >=5000", "routine ADTT 1000", "routine ADTT <=100", "SHV ADTT unknown / >=5000", "SHV ADTT 1000", "SHV ADTT <=100"]),
        (GivenPermit, "LRFR permit factor",
            ["single trip, escorted, no other vehicles, one lane no MPF", "single trip, mixed traffic, one lane no MPF", "< 100 crossings, mixed, one lane no MPF",
            .. from traffic in (string[])["ADTT >5000", "ADTT 1000", "ADTT <100"]
               from weight in (string[])["GVW/AL < 2.0 kip/ft", "2.0 < GVW/AL < 3.0 kip/ft", "GVW/AL > 3.0 kip/ft"]
               select $"routine/annual unlimited, two or more lanes, {traffic}, {weight}"]),
        ("girder and slab bridges are not rated", "system factor phi_s",
            ["three-girder bridges with girder spacing 6 ft", "four-girder bridges with spacing <= 4 ft", "all other girder and slab bridges"]),
        ("deck joints are not rated", "impact LRFR", ["IM deck joints"]),
        ("bending and shear of members and bearing of pins are not rated", "resistance factor",
            ["phi_v shear", "phi_b bearing on milled surface/pin", "phi_bs block shear"]),
        (Duty, "posting", ["days to post or restrict after need is identified", "months to complete (re)rating"]),
        (Sidewalks, "pedestrian", ["sidewalk load with vehicles psf"]),
        ("the deck itself is not rated", "truck position", ["wheel to curb, deck design ft"]),
    }.SelectMany(g => g.Items.Select(i => (Key: (g.Topic, i), g.Reason))).ToDictionary(r => r.Key, r => r.Reason);

    private static double System(SystemKind kind) => MemberFactors.Of(Condition.Good, kind).System.Value;

    private static VehicleClass Class(string vehicle) => Catalogue.Find(vehicle)!.Class;

    private static double Factor(RatingMethod method, VehicleClass vehicleClass, string level) =>
        method.LevelsOf(vehicleClass, new RatingSettings()).Single(l => l.Name == level).LiveFactor!.Value;

    private static double Legal(VehicleClass vehicleClass, double? truckTraffic) =>
        Assert.Single(Lrfr.LevelsOf(vehicleClass, new RatingSettings { TruckTraffic = truckTraffic })).LiveFactor!.Value;

    private static double HangerImpact(VehicleClass vehicleClass, RatingSettings? settings = null, bool timber = false)
    {
        Bridge bridge = KingPostBridge.Of(40) with { Rating = settings ?? new RatingSettings { PermitFactor = 1.2 } };
        if (timber)
        {
            bridge = bridge with { Truss = Truss.Create([.. bridge.Truss.Joints], [.. bridge.Truss.Members.Select(m => m with { IsTimber = true })]).Truss! };
        }

        return KingPostBridge.Rate(bridge, "LRFR", KingPostBridge.OneAxle(vehicleClass)).MemberRows.First(r => r.MemberIndex == KingPostBridge.Hanger && r.Sense == Sense.Tension).Impact!.Value;
    }

    // On a deck longer than the method asks for; the king post has 120 ft.
    private static double OnSurface(RidingSurface surface, double span)
    {
        Assert.True(span * Foot > Lrfr.SurfaceCountsAbove && Lrfr.SurfaceCountsAbove > (span - 0.2) * Foot);
        Bridge bridge = KingPostBridge.Of(40) with { Rating = new RatingSettings { Surface = surface } };
        bridge = bridge with { Truss = Truss.Create([.. bridge.Truss.Joints], [.. bridge.Truss.Members.Select(m => m with { Role = "bottom chord" })]).Truss! };
        return KingPostBridge.Rate(bridge, "LRFR", KingPostBridge.OneAxle(VehicleClass.Legal)).MemberRows.First(r => r.MemberIndex == KingPostBridge.LowerChord && r.Sense == Sense.Tension).Impact!.Value;
    }

    private static double Pressure(string crowd, double loadedFeet = 30)
    {
        Crowd found = Assert.IsType<Crowd>(Catalogue.Find(crowd));
        return found.Intensity.At(loadedFeet * Foot, 10 * Foot) / (4.4482216152605 / (Foot * Foot));
    }

    private static double PoundsPerCubicFoot(string material) => PublishedUnitWeight.Find(material)!.Weight / PublishedUnitWeight.PoundPerCubicFoot;
}
