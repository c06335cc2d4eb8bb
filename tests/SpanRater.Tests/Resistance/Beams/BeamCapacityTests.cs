using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Resistance.Beams;

/// <summary>What a beam of the floor carries with all its cuts, and what it cannot be told without.</summary>
public class BeamCapacityTests
{
    private static readonly MetalMaterial Steel = new("steel", MaterialKind.Steel, new MetalStrength(36_000 * Psi, null, new StrengthOrigin.Given("made up")), null, null);

    private static readonly TimberDesignValues Row = TimberDesignValues.Find("Douglas Fir-Larch", TimberSizeClass.BeamsAndStringers, "No.1")!;

    private static readonly TimberMaterial Fir = new("fir", Row, new StrengthOrigin.ByGrade(Row), new TimberUse(true, LoadDuration.TwoMonths));

    private static readonly BeamMake Joist = new()
    {
        Section = FoundSection.Sound(Single(ShapeTable.Find("W12x50")!.Shape)),
        Material = Steel,
        Unbraced = 0,
        System = SystemKind.Stringer,
    };

    private static readonly BeamMake Timber = Joist with { Section = FoundSection.Sound(Single(Solid(6, 16))), Material = Fir, Unbraced = 120 * Inch, Bearing = 10 * Inch };

    private static readonly BeamMake Channel = Joist with { Section = FoundSection.Sound(Single(ShapeTable.Find("C12x20.7")!.Shape)) };

    public static TheoryData<string, BeamEffect> TimberCases() =>
        [.. from method in (string[])["LRFR", "ASR"] from effect in Enum.GetValues<BeamEffect>() select (method, effect)];

    // 36 ksi × 391/6.1 in³, condition 0.95 and system 1.00 of a stringer by LRFR.
    [Fact]
    public void Of_ABeamHeldAllAlong_IsFirstYieldWithTheFactorsOfLrfrAlone()
    {
        BeamResistance held = Resistance(Joist, BeamEffect.Moment, "LRFR");
        double kipFeet = 36 * 391 / 6.1 / 12;
        Assert.Equal(BeamMode.FirstYield, Assert.Single(held.Modes).Strength.Mode);
        Assert.Equal(0.95 * kipFeet, held.Value / KipFoot, 1e-6);
        Assert.Equal(kipFeet, Resistance(Joist, BeamEffect.Moment, "LFR").Value / KipFoot, 1e-6);
        Assert.Equal(0.55 * kipFeet, Resistance(Joist, BeamEffect.Moment, "ASR").Value / KipFoot, 1e-6);
        Assert.Null(Resistance(Joist, BeamEffect.Moment, "LFR").Factors);
    }

    [Fact]
    public void Of_ABeamHeldAtPoints_IsGovernedBySidewaysBuckling()
    {
        foreach (string method in (string[])["LRFR", "LFR", "ASR"])
        {
            BeamResistance held = Resistance(Joist with { Unbraced = 30 * Foot }, BeamEffect.Moment, method);
            Assert.Equal([BeamMode.FirstYield, BeamMode.LateralBuckling], held.Modes.Select(m => m.Strength.Mode));
            Assert.Equal(BeamMode.LateralBuckling, held.Governing.Strength.Mode);
            Assert.True(held.Value < Resistance(Joist, BeamEffect.Moment, method).Value);
        }
    }

    // Flange 0.64 − 0.16 in at one cut: its modes stand beside those of the sound beam, and the least governs.
    [Fact]
    public void Of_ABeamWithLoss_IsGovernedByTheCut()
    {
        FoundSection seen = SectionsByHand.Found(Joist.Section.AsBuilt, new Observation.Remaining(ShapeDimension.BottomFlange, 0.48 * Inch) { Place = "the middle" }, new Observation.Remaining(ShapeDimension.Web, 0.25 * Inch) { Place = "the end" });
        BeamMake make = Joist with { Section = seen, Unbraced = 20 * Foot };
        foreach (string method in (string[])["LRFR", "LFR", "ASR"])
        {
            BeamResistance moment = Resistance(make, BeamEffect.Moment, method), shear = Resistance(make, BeamEffect.Shear, method);
            Assert.Equal([null, null, "the middle", "the middle", "the end", "the end"], moment.Modes.Select(m => m.Place));
            Assert.Equal(["the middle", "the end"], [moment.Place, shear.Place]);
            Assert.Equal(0.25 / 0.37, shear.Value / Resistance(Joist, BeamEffect.Shear, method).Value, 1e-9);
            Assert.True(moment.Value < Resistance(make.AsBuilt, BeamEffect.Moment, method).Value);
        }
    }

    // Two channels: two webs; first yield needs no rule for sideways buckling where the flange is held all along.
    [Fact]
    public void Of_AChannelHeldAllAlong_IsFirstYieldAndItsWeb()
    {
        Assert.Equal(36 * 129 / 6.0 / 12, Resistance(Channel, BeamEffect.Moment, "LFR").Value / KipFoot, 1e-6);
        Assert.Equal(0.58 * 36 * (12 - 1.002) * 0.282, Resistance(Channel, BeamEffect.Shear, "LFR").Value / Kip, 1e-6);
        Assert.Equal([new MissingDatum.LateralRule("section")], Missing(Channel with { Unbraced = 1 }, BeamEffect.Moment, "LFR"));
        Assert.Empty(Missing(Channel with { Unbraced = 1 }, BeamEffect.Shear, "LFR"));
    }

    [Theory]
    [MemberData(nameof(TimberCases))]
    public void Of_ATimber_IsTheStrengthOfTimberBeam(string method, BeamEffect effect)
    {
        TimberDesign design = Rules(method).Timber!(Fir, 6 * Inch, 16 * Inch);
        double expected = effect switch
        {
            BeamEffect.Moment => TimberBeam.Bending(design, 6 * Inch, 16 * Inch, 120 * Inch).Value,
            BeamEffect.Shear => TimberBeam.Shear(design, 6 * Inch, 16 * Inch, 12 * Inch, false).Value,
            _ => TimberBeam.Bearing(design, 6 * Inch, 10 * Inch).Value,
        };
        Assert.Equal(expected * (method == "LRFR" ? 0.95 : 1), Resistance(Timber with { DepthAtEnd = 12 * Inch }, effect, method).Value, 1e-6);
    }

    [Fact]
    public void Of_WithoutWhatItNeeds_SaysWhatIsMissing()
    {
        var iron = new MetalMaterial("iron", MaterialKind.WroughtIron, Steel.Strength, null, null);
        var unknown = new MetalMaterial("steel", MaterialKind.Steel, null, null, 1912);
        (BeamMake Make, BeamEffect Effect, string Method, MissingDatum[] Missing)[] cases =
        [
            (Joist with { Material = null }, BeamEffect.Moment, "LRFR", [new MissingDatum.NoMaterial()]),
            (Joist with { Unbraced = null }, BeamEffect.Moment, "LRFR", [new MissingDatum.FlangeHeld()]),
            (Joist with { Unbraced = null }, BeamEffect.Shear, "LRFR", []),
            (Joist with { Section = FoundSection.Sound(Single(SectionsByHand.Shape(ShapeKind.Plate, (ShapeDimension.Width, 0.2), (ShapeDimension.Thickness, 0.02)))) }, BeamEffect.Shear, "LFR", [new MissingDatum.NoWeb("section")]),
            (Channel with { Unbraced = 2 }, BeamEffect.Moment, "ASR", [new MissingDatum.LateralRule("section")]),
            (Channel with { Unbraced = null }, BeamEffect.Moment, "ASR", [new MissingDatum.FlangeHeld()]),
            (Joist, BeamEffect.Bearing, "LRFR", [new MissingDatum.MetalBearing()]),
            (Joist with { Material = iron, Unbraced = 2 }, BeamEffect.Moment, "LFR", [new MissingDatum.Modulus("iron")]),
            (Joist with { Material = iron }, BeamEffect.Shear, "LFR", [new MissingDatum.Modulus("iron")]),
            (Joist with { Material = iron }, BeamEffect.Moment, "LFR", []),
            (Joist with { Material = unknown }, BeamEffect.Moment, "LFR", [unknown.MissingYield!]),
            (Joist with { Material = Fir }, BeamEffect.Moment, "LRFR", [new MissingDatum.MaterialOfSection("fir", "section")]),
            (Timber with { Material = Steel }, BeamEffect.Moment, "LRFR", [new MissingDatum.MaterialOfSection("steel", "section")]),
            (Timber with { Bearing = null }, BeamEffect.Bearing, "LRFR", [new MissingDatum.BearingLength()]),
            (Timber with { Bearing = null }, BeamEffect.Shear, "LRFR", []),
            (Timber with { Unbraced = null }, BeamEffect.Moment, "ASR", [new MissingDatum.FlangeHeld()]),
            (Timber with { Unbraced = null, Section = FoundSection.Sound(Single(Solid(16, 6))) }, BeamEffect.Moment, "ASR", []),
            (Timber with { Unbraced = 100 }, BeamEffect.Moment, "ASR", [new MissingDatum.TooSlenderBeam(Math.Sqrt(((1.63 * 100) + (48 * Inch)) * 16 / (36 * Inch)))]),
            (Timber, BeamEffect.Moment, "LFR", [new MissingDatum.TimberRule(RatingMethod.Find("LFR")!.Name)]),
            (Timber with { Bearing = null }, BeamEffect.Bearing, "LFR", [new MissingDatum.TimberRule(RatingMethod.Find("LFR")!.Name), new MissingDatum.BearingLength()]),
            (Timber with { Section = FoundSection.Sound(SectionsByHand.Section(SectionsByHand.Part("pair", Solid(6, 16), null, null))) }, BeamEffect.Shear, "ASR", [new MissingDatum.SolidTimber("section")]),
            (Joist with { Section = SectionsByHand.Found(Joist.Section.AsBuilt, new Observation.Crack { Place = "the end" }) }, BeamEffect.Moment, "LFR", [new MissingDatum.Cracked("the end")]),
        ];
        Assert.All(cases, c =>
        {
            BeamCheck check = BeamCapacity.Of(c.Make, c.Effect, Rules(c.Method), Condition.Fair);
            Assert.Equal(c.Missing.Length == 0, check.Resistance is not null);
            Assert.Equal(c.Missing.Select(m => m is MissingDatum.TooSlenderBeam slender ? $"{slender.Slenderness:F6}" : m.ToString()), check.Missing.Select(m => m is MissingDatum.TooSlenderBeam slender ? $"{slender.Slenderness:F6}" : m.ToString()));
        });
    }

    // A method of one's own has no rule for metal beams: never a silent one of another method.
    [Fact]
    public void Of_AMethodWithoutBeamRules_SaysSo()
    {
        StrengthRules rules = Rules("LFR") with { Beam = null, Method = "made up" };
        Assert.Equal([new MissingDatum.BeamRule("made up")], BeamCapacity.Of(Joist, BeamEffect.Moment, rules, null).Missing);
        Assert.Equal([new MissingDatum.BeamRule("made up")], BeamCapacity.Of(Joist, BeamEffect.Shear, rules, null).Missing);
    }

    // Where parts lie in a built-up section is not given: no section modulus, but the web carries its shear.
    [Fact]
    public void Of_PartsWithoutPositions_AsksForThemInBendingAlone()
    {
        SectionShape web = SectionsByHand.Shape(ShapeKind.StandingPlate, (ShapeDimension.Depth, 0.5), (ShapeDimension.Thickness, 0.01)), flange = SectionsByHand.Shape(ShapeKind.Plate, (ShapeDimension.Width, 0.2), (ShapeDimension.Thickness, 0.02));
        BeamMake girder = Joist with { Section = FoundSection.Sound(SectionsByHand.Section(SectionsByHand.Part("web", web, new PiecePlacement(0, 0)), SectionsByHand.Part("flanges", flange, null, null))) };
        Assert.Equal([new MissingDatum.Positions("section", "flanges")], Missing(girder, BeamEffect.Moment, "LFR"));
        Assert.Equal(0.58 * 36_000 * Psi * 0.005, Resistance(girder, BeamEffect.Shear, "LFR").Value, 1e-3);
    }

    // Lost holes in a web carry no shear.
    [Fact]
    public void Of_ABeamWithAHoleInItsWeb_CarriesLessShear()
    {
        FoundSection seen = SectionsByHand.Found(Joist.Section.AsBuilt, new Observation.Hole(ShapeDimension.Web, 2 * Inch, 1) { Place = "the end" });
        Assert.Equal((10.92 - 2) / 10.92, Resistance(Joist with { Section = seen }, BeamEffect.Shear, "LFR").Value / Resistance(Joist, BeamEffect.Shear, "LFR").Value, 1e-9);
    }

    // 10 by 3 in laid flat is graded by its 10 in: CF 1.1, and not the 1.3 of a timber 3 in wide; Cfu is left at 1. Values No.1: 1,000 psi, CD 1.15, wet: 1,000 × 1.1 is below 1,150, CM 1.
    [Fact]
    public void Of_APlankLaidFlat_TakesTheFactorOfItsWiderSide()
    {
        TimberDesignValues row = TimberDesignValues.Find("Douglas Fir-Larch", TimberSizeClass.Dimension, "No.1")!;
        BeamMake plank = Timber with { Section = FoundSection.Sound(Single(Solid(10, 3))), Material = Fir with { Values = row, Origin = new StrengthOrigin.ByGrade(row) } };
        Assert.Equal(1000 * 1.15 * 1.1 * 10 * 9 / 6, Resistance(plank, BeamEffect.Moment, "ASR").Value / (Psi * Inch * Inch * Inch), 1e-6);
        Assert.Equal(
            Resistance(plank with { Section = FoundSection.Sound(Single(Solid(3, 10))), Unbraced = 0 }, BeamEffect.Moment, "ASR").Value * 3 / 10,
            Resistance(plank, BeamEffect.Moment, "ASR").Value,
            1e-6);
    }

    // The web gone at one cut: nothing is left that carries the shear, and no number is made of it.
    [Fact]
    public void Of_AGirderWhoseWebIsGone_SaysThatThereIsNoWeb()
    {
        SectionShape web = SectionsByHand.Shape(ShapeKind.StandingPlate, (ShapeDimension.Depth, 0.5), (ShapeDimension.Thickness, 0.01)), flange = SectionsByHand.Shape(ShapeKind.Plate, (ShapeDimension.Width, 0.2), (ShapeDimension.Thickness, 0.02));
        MemberSection girder = SectionsByHand.Section(SectionsByHand.Part("web", web, new PiecePlacement(0, 0)), SectionsByHand.Part("flanges", flange, new PiecePlacement(0, 0), new PiecePlacement(0, 0.52)));
        FoundSection seen = SectionsByHand.Found(girder, new Observation.Gone { Part = "web", Place = "the end" });
        Assert.Equal([new MissingDatum.NoWeb("section")], Missing(Joist with { Section = seen }, BeamEffect.Shear, "LFR"));
    }

    // 6 by 6 in, decayed to 4 by 6 in: deeper than wide now, and how it is held has to be known.
    [Fact]
    public void Of_ATimberThatDecayMakesDeeperThanWide_AsksHowItIsHeld()
    {
        FoundSection seen = SectionsByHand.Found(Single(Solid(6, 6)), new Observation.Decay(2 * Inch, SectionFace.Left) { Place = "the middle" });
        Assert.Equal([new MissingDatum.FlangeHeld()], Missing(Timber with { Section = seen, Unbraced = null }, BeamEffect.Moment, "ASR"));
    }

    private static BeamResistance Resistance(BeamMake make, BeamEffect effect, string method)
    {
        BeamCheck check = BeamCapacity.Of(make, effect, Rules(method), Condition.Fair);
        Assert.Empty(check.Missing);
        return check.Resistance!;
    }

    private static IReadOnlyList<MissingDatum> Missing(BeamMake make, BeamEffect effect, string method) => BeamCapacity.Of(make, effect, Rules(method), Condition.Fair).Missing;

    // Inventory level of ASR comes first.
    private static StrengthRules Rules(string method) =>
        RatingMethod.Find(method)!.StrengthsAt(RatingMethod.Find(method)!.LevelsOf(VehicleClass.Legal, new RatingSettings())[0])!;

    private static SectionShape Solid(double width, double depth) => SectionsByHand.Shape(ShapeKind.Timber, (ShapeDimension.Width, width * Inch), (ShapeDimension.Depth, depth * Inch));

    private static MemberSection Single(SectionShape shape) => SectionsByHand.Section(SectionsByHand.Part("beam", shape, new PiecePlacement(0, 0)));
}
