using SpanRater.Files;
using SpanRater.Pictures;
using SpanRater.Tests.Learning;

namespace SpanRater.Tests.Pictures;

/// <summary>One picture of every kind, of both bridges, and with names as long as they come.</summary>
internal static class ExamplePictures
{
    public const string LongName = "The Old Bridge over the River Something at the Crossing near Upper Long Village";

    private const double Foot = 0.3048;

    private static readonly Dictionary<string, Func<Picture>> Makers = new()
    {
        ["elevation Warren"] = () => ElevationPicture.Of("Tansy Weir footbridge", ExampleBridges.Warren(), DisplayUnits.Si),
        ["elevation K-truss"] = () => ElevationPicture.Of("Garrow Landing road bridge", ExampleBridges.KTruss(), DisplayUnits.Us),
        ["elevation with loads"] = () => ElevationPicture.Of("Exercise", new BaltimoreTruss(8, 3, 6).Build(), DisplayUnits.Si, new LoadCase("loads", [new("L3", 0, -90_000), new("L6", 0, -120_000)])),
        ["elevation long names"] = () => ElevationPicture.Of(LongName, LongNames(), DisplayUnits.Us),
        ["influence diagonal"] = () => Influence(ExampleBridges.KTruss(), "M2U3", DisplayUnits.Us),
        ["influence zero member"] = () => Influence(ExampleBridges.Warren(), "L2U2", DisplayUnits.Si),
        ["influence reaction"] = () => Influence(ExampleBridges.Warren(), "L6 up", DisplayUnits.Si),
        ["displaced deck diagonal of a K"] = () => Displaced(ExampleBridges.KTruss(), "M2U3", DisplayUnits.Us),
        ["displaced deck chord"] = () => Displaced(ExampleBridges.Warren(), "U2U3", DisplayUnits.Si),
        ["displaced deck zero member"] = () => Displaced(ExampleBridges.Warren(), "L2U2", DisplayUnits.Si),
        ["displaced deck long names"] = () => Displaced(LongNames(), "member-30-xy", DisplayUnits.Us),
        ["sway queen post"] = () => Sway(new QueenPostTruss(3.6, 3).Build(), ["U1L2", "L1U2"], DisplayUnits.Si),
        ["sway count right and rank wrong"] = () => Sway(new PrattTruss(6, 5, 5.5).Build(), ["L4U5"], DisplayUnits.Us, new Member("L1U2", "L1", "U2")),
        ["sway K-truss two ways"] = () => Sway(ExampleBridges.KTruss(), ["M2U3", "M6L5"], DisplayUnits.Us),
        ["sway loose joint"] = () => Sway(ExampleBridges.Warren(), ["L1U1"], DisplayUnits.Si),
        ["sway on rollers"] = () => Sway(ExampleBridges.Made([.. ExampleBridges.Warren().Joints.Select(j => j.Support is null ? j : j with { Support = Support.Roller(j.Name == "L0" ? 45 : 135) })], ExampleBridges.Warren().Members), [], DisplayUnits.Si),
        ["influence all Warren"] = () => All(ExampleBridges.Warren(), DisplayUnits.Si),
        ["influence all K-truss"] = () => All(ExampleBridges.KTruss(), DisplayUnits.Us),
        ["influence all long names"] = () => All(LongNames(), DisplayUnits.Us),
        ["free body whole K-truss"] = () => FreeBody(ExampleBridges.KTruss(), DisplayUnits.Us, _ => true),
        ["free body joint M1"] = () => FreeBody(ExampleBridges.KTruss(), DisplayUnits.Us, s => s.Kind == StepKind.Joint && s.Equations[0].Balances[0].Kind == BalanceKind.Across),
        ["free body joint L0"] = () => FreeBody(ExampleBridges.KTruss(), DisplayUnits.Us, s => s.Kind == StepKind.Joint),
        ["free body joint L4"] = () => FreeBody(ExampleBridges.KTruss(), DisplayUnits.Si, s => s.Kind == StepKind.Joint && s.Known.Count == 3),
        ["free body joint of Warren"] = () => FreeBody(ExampleBridges.Warren(), DisplayUnits.Si, s => s.Kind == StepKind.Joint && s.Known.Count == 2),
        ["free body section"] = () => FreeBody(CompoundTrusses.Fink(), DisplayUnits.Si, s => s.Kind == StepKind.Section),
        ["free body group"] = () => FreeBody(CompoundTrusses.Hexagon(0.6), DisplayUnits.Si, s => s.Kind == StepKind.Group),
        ["section K-arm"] = () => Section(ExampleBridges.KTruss(), "M2U3"),
        ["section K-vertical"] = () => Section(ExampleBridges.KTruss(), "U2M2"),
        ["section chord"] = () => Section(ExampleBridges.Warren(), "U2U3"),
        ["section hanger"] = () => Section(ExampleBridges.Warren(), "L1U1"),
        ["section long names"] = () => Section(LongNames(), "member-30-xy"),
        ["roll Warren"] = () => Roll(ExampleBridges.Warren(), ExampleBridges.Mower, "U1L2", DisplayUnits.Si),
        ["roll K-truss"] = () => Roll(ExampleBridges.KTruss(), ExampleBridges.Type3, null, DisplayUnits.Us),
        ["roll long names"] = () => Roll(LongNames(), ExampleBridges.Type3, "member-30-xy", DisplayUnits.Us),
        ["cross-section two abreast"] = () => CrossSectionOf(22, 20, 0),
        ["cross-section off centre"] = () => CrossSectionOf(25, 19, 1.5),
        ["cross-section with a wheel under a centre line"] = () => CrossSectionOf(22, 16, -1.5),
        ["cross-section three of four lanes"] = () => CrossSectionOf(50, 48, 0),
        ["cross-section many lanes"] = () => CrossSectionOf(122, 120, 0),
        ["cross-section over the trusses"] = () => CrossSectionOf(22, 26, 0),
        ["cross-section narrow"] = () => CrossSectionOf(9, 8, 0),
        ["cross-section share given"] = () => CrossSectionOf(22, 20, 0, share: 0.7),
        ["cross-section long names"] = () => CrossSectionOf(22, 20, 0.25, LongName),
        ["cross-section strips"] = Strips,
        ["packing"] = () => PackingOf(0.75, DisplayUnits.Us),
        ["packing of thin bars"] = () => PackingOf(0.125, DisplayUnits.Si),
        ["rating Warren"] = () => RatingPicture.Of(ExampleBridges.RatedWarren("L1U1"), DisplayUnits.Si),
        ["rating K-truss"] = () => RatingPicture.Of(ExampleBridges.RatedKTruss("M2L2", "U3U4"), DisplayUnits.Us),
        ["rating long names"] = () => RatingPicture.Of(
            ExampleBridges.Rate(LongName, LongNames(), 70_000, 700_000, 800_000, ExampleBridges.Type3 with { Name = LongName }, "member-03-xy"),
            DisplayUnits.Us),
    };

    public static TheoryData<string> Names => [.. Makers.Keys];

    public static Picture Make(string name) => Makers[name]();

    /// <summary>The K-truss with member names of twelve characters.</summary>
    public static Truss LongNames()
    {
        Truss truss = ExampleBridges.KTruss();
        return ExampleBridges.Made(truss.Joints, [.. truss.Members.Select((member, m) => member with { Name = $"member-{m:00}-xy" })]);
    }

    public static Deck DeckOf(double spacing, double roadway, double offset) => new()
    {
        TrussSpacing = spacing * Foot,
        Roadway = roadway * Foot,
        RoadwayOffset = offset * Foot,
        TrussNames = ["north", "south"],
    };

    /// <summary>Type 3 across a deck, in feet, by LRFR.</summary>
    public static Picture CrossSectionOf(double spacing, double roadway, double offset, string? name = null, double? share = null)
    {
        Deck deck = DeckOf(spacing, roadway, offset) with { TrussShare = share };
        deck = name is null ? deck : deck with { TrussNames = [name, $"{name}, other side"] };
        var bridge = new Bridge(name ?? "Cross-section", null, ExampleBridges.KTruss(), deck, new RatingSettings(), [], []);
        RatingMethod method = RatingMethod.All[0];
        return CrossSectionPicture.Of(bridge, method, VehicleShares.Of(deck, [ExampleBridges.Type3 with { Name = name ?? "Type 3" }], method), [], DisplayUnits.Us);
    }

    /// <summary>The lane loads of two lanes.</summary>
    public static Picture Strips()
    {
        Deck deck = DeckOf(22, 20, 0);
        var share = (ShareOutcome.Found)LeverRule.LaneShare(deck, null, _ => 1);
        return CrossSectionPicture.Of(
            "Strips", "Lane loads on two lanes.", null, deck, [new CrossSection(0, "Two lanes.", [], share.OnLeft[1].Strips, "lane load", "R = 1.000 w", "R = w × (0.727 + 0.273) = 1.000 w.")], DisplayUnits.Us);
    }

    /// <summary>A pin at L1 of the Warren truss: chords, diagonal, hanger and floor, bars as thick as said [in], gaps of 1/4 in and one of 2 in.</summary>
    public static Picture PackingOf(double thickness, DisplayUnits units)
    {
        Bridge bridge = ExampleBridges.RatedWarren("L1U1").Bridge;
        PinLoad[] loads = [Of(bridge, "L0L1"), Of(bridge, "L1L2"), new PinLoad.OfFloor(), Of(bridge, "L1U1"), Of(bridge, "L1U1"), new PinLoad.OfFloor(), Of(bridge, "L1L2"), Of(bridge, "L0L1")];
        PackedBar[] bars = [.. loads.Select((l, i) => new PackedBar(l, l is PinLoad.OfMember of ? bridge.Truss.Members[of.Member].Name : "floor", thickness * Foot / 12, i == 0 ? 0 : (i == 4 ? 2 : 0.25) * Foot / 12))];
        return PinPicture.Of(bridge, new PinConnection("pin L1", 0, bridge.Truss.Joints.ToList().FindIndex(j => j.Name == "L1"), 2.125 * Foot / 12, bars), "Remark.", units);
    }

    private static PinLoad.OfMember Of(Bridge bridge, string member) => new(bridge.Truss.Members.ToList().FindIndex(m => m.Name == member));

    private static Picture Influence(Truss truss, string effect, DisplayUnits units) =>
        InfluencePicture.OfEffect("Influence", ExampleBridges.LinesOf(truss), effect, units);

    private static Picture Displaced(Truss truss, string member, DisplayUnits units) =>
        DisplacedDeckPicture.Of("Displaced", ExampleBridges.LinesOf(truss), UnitShortening.Of(truss, truss.FindMember(member)!.Value).Value!, units);

    private static Picture Sway(Truss truss, string[] without, DisplayUnits units, params Member[] with)
    {
        Truss moving = ExampleBridges.Made(truss.Joints, [.. truss.Members.Where(m => !without.Contains(m.Name)), .. with]);
        return SwayPicture.Of("Sway", moving, Stability.Of(moving), units);
    }

    private static Picture All(Truss truss, DisplayUnits units) => InfluencePicture.OfAll("All", ExampleBridges.LinesOf(truss), units);

    private static Picture Roll(Truss truss, Vehicle vehicle, string? member, DisplayUnits units)
    {
        InfluenceLines lines = ExampleBridges.LinesOf(truss);
        return RollPicture.Of("Roll", ExampleBridges.Rolled(lines, vehicle), member, units);
    }

    private static Picture FreeBody(Truss truss, DisplayUnits units, Func<WorkedStep, bool> which)
    {
        WorkedSolution worked = WorkedClaims.Worked(truss, Everywhere(truss));
        return FreeBodyPicture.OfStep("Free body", worked, worked.Steps.TakeWhile(s => !which(s)).Count(), new ForceNotation(units, false, 300_000));
    }

    private static Picture Section(Truss truss, string member)
    {
        Assert.True(SectionCheck.Of(truss, Everywhere(truss), truss.FindMember(member)!.Value).TryGet(out SectionCheck? check, out _));
        return FreeBodyPicture.OfSection("Section", check, new ForceNotation(DisplayUnits.Us, false, 300_000));
    }

    private static LoadCase Everywhere(Truss truss) =>
        new("everywhere", [.. truss.Joints.Where(j => truss.PanelPoints.Count == 0 || j.IsPanelPoint).Select(j => new JointLoad(j.Name, 0, -57_650))]);
}
