namespace SpanRater.Tests.Resistance.Members;

/// <summary>Strengths of members worked by hand from the clauses named in docs/basis.md.</summary>
public class MemberStrengthTests
{
    private const double Mega = 1e6;

    private static readonly MetalStrength Steel = new(200 * Mega, 400 * Mega, new StrengthOrigin.Given("made up"));

    private static readonly MetalStrength Old = MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.Steel, 1897)!, 1897);

    // 2,000 mm² gross, 1,500 mm² net, U 0.9.
    [Fact]
    public void Strengths_GrossAndNet_AreThoseByHand()
    {
        var area = new TensionArea(2e-3, 1.5e-3, 0.9, IsPunched: true);

        Assert.Equal([380e3, 0.80 * 0.90 * 540e3], Values(TensionRule.LoadAndResistance.Strengths(Steel, area)), Close);
        Assert.Equal([380e3, 0.80 * 540e3], Values(TensionRule.LoadAndResistance.Strengths(Steel, area with { IsPunched = false })), Close);
        Assert.Equal([400e3, 200 * ((1500 * 0.9) + 300.0)], Values(TensionRule.LoadFactor.Strengths(Steel, area)), Close);
        Assert.Equal([220e3, 0.50 * 540e3], Values(TensionRule.Allowable(AllowableLevel.Inventory).Strengths(Steel, area)), Close);
        Assert.Equal([300e3, 0.67 * 540e3], Values(TensionRule.Allowable(AllowableLevel.Operating).Strengths(Steel, area)), Close);
    }

    [Fact]
    public void Strengths_NoNetSection_IsGrossAlone() =>
        Assert.Equal(MemberMode.GrossYield, Assert.Single(TensionRule.LoadAndResistance.Strengths(Steel, new TensionArea(2e-3))).Mode);

    // An effective net section never exceeds the gross one.
    [Fact]
    public void LoadFactor_SmallHoles_StayAtTheGrossSection() =>
        Assert.Equal(400e3, TensionRule.LoadFactor.Strengths(Steel, new TensionArea(2e-3, 1.95e-3))[1].Value, 1e-6);

    [Fact]
    public void Strengths_NoTensileStrength_IsABugOfTheCaller_ExceptByLoadFactors()
    {
        var unknown = new MetalStrength(200 * Mega, null, new StrengthOrigin.Given("made up"));
        Assert.Equal("strength", Assert.Throws<ArgumentException>(() => TensionRule.LoadAndResistance.Strengths(unknown, new TensionArea(2e-3, 1.5e-3))).ParamName);
        Assert.Equal(2, TensionRule.LoadFactor.Strengths(unknown, new TensionArea(2e-3, 1.5e-3)).Count);
    }

    // Hip verticals of Hollis Fork: two bars 7/8 in square, 19.5 ksi at operating level, 29.86 kip.
    [Fact]
    public void Allowable_OfOldSteel_TakesThePrintedStress()
    {
        const double inch = 0.0254, kip = 4448.2216152605;
        TensionStrength bars = TensionRule.Allowable(AllowableLevel.Operating).Strengths(Old, new TensionArea(2 * 0.875 * 0.875 * inch * inch))[0];
        Assert.Equal(29.86, bars.Value / kip, 0.005);
        Assert.Empty(bars.Factors);
        Assert.Equal([StrengthClauses.AllowableByYear], bars.Clauses);
    }

    [Theory]
    [InlineData(2.70e-3, MemberMode.EyebarBody, 2.0e-3)]
    [InlineData(2.43e-3, MemberMode.EyebarHead, 1.8e-3)]
    [InlineData(null, MemberMode.EyebarBody, 2.0e-3)]
    public void Eyebar_LightHead_GovernsInProportion(double? head, MemberMode mode, double area)
    {
        TensionStrength bar = TensionRule.LoadAndResistance.Eyebar(Steel, 2.0e-3, head);
        Assert.Equal(mode, bar.Mode);
        Assert.Equal(0.95 * 200 * Mega * area, bar.Value, 1e-6);
    }

    [Theory]
    [InlineData(0.8e-3, MemberMode.RodRoot, 0.8e-3)]
    [InlineData(1.2e-3, MemberMode.GrossYield, 1.0e-3)]
    public void Rod_UpsetOrNot_TakesTheLesser(double root, MemberMode mode, double area)
    {
        TensionStrength rod = TensionRule.LoadFactor.Rod(Steel, 1.0e-3, root);
        Assert.Equal((mode, 200 * Mega * area), (rod.Mode, Math.Round(rod.Value, 6)));
    }

    // Both branches meet at L/rx = 80 with 132.
    [Theory]
    [InlineData(40, 102)]
    [InlineData(80, 132)]
    [InlineData(120, 182)]
    public void SingleAngle_EqualLegs_HasTheSlendernessByHand(double plain, double effective)
    {
        Assert.Equal(effective, SingleAngle.Slenderness(plain * 0.02, 0.02), 1e-9);
        Assert.Equal(effective + (4 * ((1.5 * 1.5) - 1)), SingleAngle.SlendernessByShorterLeg(plain * 0.02, 0.02, 0.02, 1.5), 1e-9);
        Assert.Equal(0.95 * plain * 4, SingleAngle.SlendernessByShorterLeg(plain * 0.02, 0.02, 0.005, 1.0), 1e-9);
    }

    [Fact]
    public void MemberSlenderness_TwoAxes_GovernsByTheLarger()
    {
        var axes = new MemberSlenderness(
            new AxisSlenderness(EffectiveLength.Factor(MemberEnds.Riveted), 6, 0.1), new AxisSlenderness(EffectiveLength.Factor(MemberEnds.Pinned), 3, 0.05));
        Assert.Equal(45, axes.X.Value, 1e-9);
        Assert.Equal(52.5, axes.Governing.Value, 1e-9);
        Assert.Same(axes.Y, axes.Governing);
    }

    [Fact]
    public void SlendernessWarning_AtTheLimit_IsNone()
    {
        Assert.Null(SlendernessWarning.Of(MemberDuty.MainCompression, 120));
        Assert.Equal(new SlendernessWarning(MemberDuty.MainTension, 201, 200), SlendernessWarning.Of(MemberDuty.MainTension, 201));
    }

    [Theory]
    [InlineData(Condition.Good, SystemKind.Stringer, 1.00, false)]
    [InlineData(Condition.Good, SystemKind.RivetedTrussMember, 0.90, false)]
    [InlineData(Condition.Fair, SystemKind.MultipleEyebars, 0.855, false)]
    [InlineData(Condition.Poor, SystemKind.RivetedTrussMember, 0.85, true)]
    [InlineData(Condition.Poor, SystemKind.Stringer, 0.85, false)]
    [InlineData(Condition.Fair, SystemKind.WeldedTrussMember, 0.85, true)]
    public void MemberFactors_ConditionAndSystem_NeverFallBelowTheLeast(Condition condition, SystemKind kind, double product, bool held)
    {
        var factors = MemberFactors.Of(condition, kind);
        Assert.Equal(product, factors.Value, 1e-12);
        Assert.Equal((held, false), (factors.IsHeldAtLeast, factors.IsConditionAssumed));
    }

    [Fact]
    public void MemberFactors_NoCondition_AssumesAPoorOne()
    {
        var factors = MemberFactors.Of(null, SystemKind.Stringer);
        Assert.True(factors.IsConditionAssumed);
        Assert.Equal((0.85, StrengthClauses.UnknownCondition), (factors.Condition.Value, factors.Condition.Clause));
    }

    [Fact]
    public void ShearLag_ByLengthAndByCase_IsTheTables()
    {
        Assert.Equal(0.8, NetChain.ShearLag(0.02, 0.1), 1e-12);
        Assert.Equal([1.00, 0.90, 0.85, 0.70, 0.80, 0.60], Enum.GetValues<ConnectedParts>().Select(NetChain.ShearLag));
        Assert.Equal("connectionLength", Assert.Throws<ArgumentOutOfRangeException>(() => NetChain.ShearLag(0.1, 0.1)).ParamName);
    }

    private static double[] Values(IEnumerable<MemberStrength> strengths) => [.. strengths.Select(s => s.Value)];

    private static bool Close(double a, double b) => Math.Abs(a - b) < 1e-6;
}
