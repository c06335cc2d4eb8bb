using CsCheck;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Resistance.Beams;

/// <summary>First yield, sideways buckling and web shear of metal beams; clauses in docs/basis.md, from memory.</summary>
public class BeamRuleTests
{
    private const double Inch3 = Inch * Inch * Inch, Elastic = PublishedStrength.Modulus;

    private static readonly MetalStrength Steel = new(36_000 * Psi, null, new StrengthOrigin.Given("made up"));

    private static readonly Dictionary<string, BeamRule> Rules = new()
    {
        ["LRFR"] = BeamRule.LoadAndResistance,
        ["LFR"] = BeamRule.LoadFactor,
        ["ASR inventory"] = BeamRule.Allowable(AllowableLevel.Inventory),
        ["ASR operating"] = BeamRule.Allowable(AllowableLevel.Operating),
    };

    // An I of two equal flanges: width, flange, depth, web [m].
    private static readonly Gen<FlangeAndWeb> Shapes =
        Gen.Select(Gen.Double[0.1, 0.3], Gen.Double[0.008, 0.025], Gen.Double[0.2, 0.6], Gen.Double[0.006, 0.015], (b, tf, d, tw) => Doubly(b, tf, d, tw));

    public static TheoryData<string> Methods() => [.. Rules.Keys];

    // S = Ix/(d/2) of Ix as the table prints it: 64.1 and 47.2 in³.
    [Theory]
    [InlineData("W12x50", 391, 12.2, "LRFR", 1.00)]
    [InlineData("W12x50", 391, 12.2, "LFR", 1.00)]
    [InlineData("W12x50", 391, 12.2, "ASR inventory", 0.55)]
    [InlineData("W12x50", 391, 12.2, "ASR operating", 0.75)]
    [InlineData("W16x31", 375, 15.9, "LRFR", 1.00)]
    [InlineData("W16x31", 375, 15.9, "LFR", 1.00)]
    [InlineData("W16x31", 375, 15.9, "ASR inventory", 0.55)]
    [InlineData("W16x31", 375, 15.9, "ASR operating", 0.75)]
    public void Yielding_OfAPublishedShape_IsItsPartOfFyS(string name, double inertia, double depth, string method, double part)
    {
        SectionProperties printed = ShapeTable.Find(name)!.Shape.Properties;
        MetalBending strength = Rules[method].Yielding(Steel, Math.Min(printed.TopModulus, printed.BottomModulus));

        Assert.Equal(BeamMode.FirstYield, strength.Mode);
        Assert.Equal(part * 36_000 * (inertia / (depth / 2)), strength.Value / (Psi * Inch3), 1e-3);
        Assert.Contains(BeamClauses.NoPlasticMoments, strength.Clauses);
        Assert.Null(strength.Lateral);
    }

    // Steel of 1905 to 1936: 16 and 22.5 ksi as printed are not 0.55 and 0.75 of its yield.
    [Theory]
    [InlineData(AllowableLevel.Inventory, 16_000, 0.55)]
    [InlineData(AllowableLevel.Operating, 22_500, 0.75)]
    public void Allowable_OfSteelByYear_TakesThePrintedStressAndNoMore(AllowableLevel level, double printed, double part)
    {
        var old = MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.Steel, 1920)!, 1920);
        BeamRule rule = BeamRule.Allowable(level);
        FlangeAndWeb shape = Of("W12x50");

        Assert.Equal(printed * Psi * 1e-3, rule.Yielding(old, 1e-3).Value, 1e-6);
        Assert.Equal(printed * Psi * 1e-3, rule.Lateral(old, Elastic, 1e-3, shape, 0.1).Value, 1e-6);

        // Elastic range: 0.55 and 0.75 of the elastic moment, whatever the stress is that is printed.
        double far = 12, elastic = BeamRule.LoadFactor.Lateral(Steel, Elastic, 1e-2, shape, far).Value;
        Assert.Equal(part * elastic, rule.Lateral(old, Elastic, 1e-2, shape, far).Value, elastic * 1e-9);
    }

    // By hand: W12x50 at 30 ft. Iyc = 0.64 × 8.08³/12, J = (2 × 8.08 × 0.64³ + 10.92 × 0.37³)/3.
    [Fact]
    public void LoadFactor_OfALongBeam_IsTheMomentByHand()
    {
        double iyc = 0.64 * Math.Pow(8.08, 3) / 12, j = ((2 * 8.08 * Math.Pow(0.64, 3)) + (10.92 * Math.Pow(0.37, 3))) / 3, length = 360;
        double moment = Math.PI * 29e6 * (iyc / length) * Math.Sqrt((0.772 * j / iyc) + (9.8696044 * Math.Pow(12.2 / length, 2)));
        double held = 0.55 * moment, modulus = 200 * Inch3;

        Assert.Equal(moment, Rules["LFR"].Lateral(Steel, Elastic, modulus, Of("W12x50"), length * Inch).Value / (Psi * Inch3), moment * 1e-7);
        Assert.Equal(held, Rules["ASR inventory"].Lateral(Steel, Elastic, modulus, Of("W12x50"), length * Inch).Value / (Psi * Inch3), moment * 1e-7);
        Assert.Equal(held * 0.75 / 0.55, Rules["ASR operating"].Lateral(Steel, Elastic, modulus, Of("W12x50"), length * Inch).Value / (Psi * Inch3), moment * 1e-7);
    }

    // The elastic moment of an I of two equal flanges, π/L √(E Iy G J + (π E/L)² Iy Cw), Cw = Iy h²/4 with h between the middles of the flanges (Timoshenko and Gere,
    // Theory of Elastic Stability, from memory). The clause has the whole depth d for h, up to d/h too much, 0.772 for 2/(2 × 1.3), and no web in Iy.
    [Fact]
    public void LoadFactor_ElasticRange_IsTheGeneralElasticMoment() =>
        SeededCases.Check(Gen.Select(Shapes, Gen.Double[8, 60]), 400, c =>
        {
            (FlangeAndWeb shape, double slenderness) = c;
            double length = slenderness * shape.FlangeWidth, high = shape.Depth / (shape.Depth - shape.FlangeThickness);
            double moment = BeamRule.LoadFactor.Lateral(Steel, Elastic, 1, shape, length).Value;
            double withoutWeb = 2 * shape.FlangeThickness * Math.Pow(shape.FlangeWidth, 3) / 12, withWeb = withoutWeb + (shape.WebDepth * Math.Pow(shape.WebThickness, 3) / 12);
            Assert.InRange(moment / General(shape, length, withoutWeb, torsion: true), 1, high * Math.Sqrt(0.772 * 1.3));
            Assert.InRange(moment / General(shape, length, withWeb, torsion: true), 0.97, high * Math.Sqrt(0.772 * 1.3));
        });

    // W12x50, W16x31 with the printed Iy: d/h is 1.055 and 1.029.
    [Theory]
    [InlineData("W12x50", 56.3, 1.055)]
    [InlineData("W16x31", 12.4, 1.029)]
    public void LoadFactor_OfAPublishedShape_IsTheGeneralElasticMomentOfItsPrintedIy(string name, double across, double most)
    {
        FlangeAndWeb shape = Of(name);
        foreach (double feet in (double[])[15, 20, 30, 40, 60])
        {
            double moment = BeamRule.LoadFactor.Lateral(Steel, Elastic, 1, shape, feet * Foot).Value;
            Assert.InRange(moment / General(shape, feet * Foot, across * Math.Pow(Inch, 4), torsion: true), 0.995, most);
        }
    }

    // π² E rt²/L² S leaves out the torsion of St Venant. Of what is left, warping, it is (h/d) (1 + (aw/6)(D/h)²)/(1 + aw/3), aw the web over one flange,
    // and so never more than the general moment. S here of the outline without the web's own fillets.
    [Fact]
    public void LoadAndResistance_ElasticRange_IsBelowTheGeneralElasticMoment() =>
        SeededCases.Check(Gen.Select(Shapes, Gen.Double[1.01, 5]), 400, c =>
        {
            (FlangeAndWeb shape, double beyond) = c;
            double h = shape.Depth - shape.FlangeThickness, flange = shape.FlangeWidth * shape.FlangeThickness, web = shape.WebDepth * shape.WebThickness, aw = web / flange;
            double modulus = ((flange * h * h / 2) + (web * shape.WebDepth * shape.WebDepth / 12)) / (shape.Depth / 2);
            double length = beyond * BeamRule.LoadAndResistance.Lateral(Steel, Elastic, modulus, shape, 1).Lateral!.LongLength!.Value;
            double moment = BeamRule.LoadAndResistance.Lateral(Steel, Elastic, modulus, shape, length).Value, inertia = 2 * flange * shape.FlangeWidth * shape.FlangeWidth / 12;

            double ofWarping = h / shape.Depth * (1 + (aw / 6 * Math.Pow(shape.WebDepth / h, 2))) / (1 + (aw / 3));
            Assert.Equal(ofWarping, moment / General(shape, length, inertia, torsion: false), 1e-9);
            Assert.True(moment < General(shape, length, inertia, torsion: true));
        });

    // Lp = rt √(E/Fy), Lr = π rt √(E/(0.7 Fy)), half way between them 0.85 Fy; W12x50 by hand: rt 2.078 in, Lp 4.91 ft, Lr 18.45 ft.
    [Fact]
    public void LoadAndResistance_WhereRangesMeet_IsFyAndSevenTenthsOfIt()
    {
        double radius = 8.08 / Math.Sqrt(12 * (1 + (10.92 * 0.37 / (3 * 8.08 * 0.64)))), shortest = radius * Math.Sqrt(29_000 / 36.0), longest = Math.PI * radius * Math.Sqrt(29_000 / 25.2);
        MetalBending At(double inches) => BeamRule.LoadAndResistance.Lateral(Steel, Elastic, 1, Of("W12x50"), inches * Inch);

        Assert.Equal((shortest, longest), (At(100).Lateral!.ShortLength!.Value / Inch, At(100).Lateral!.LongLength!.Value / Inch), Near);
        Assert.Equal((4.91, 18.45), (Math.Round(shortest / 12, 2), Math.Round(longest / 12, 2)));
        foreach (double side in (double[])[1 - 1e-9, 1 + 1e-9])
        {
            Assert.Equal(36_000, At(shortest * side).Stress / Psi, 1e-3);
            Assert.Equal(25_200, At(longest * side).Stress / Psi, 1e-3);
        }

        Assert.Equal(0.85 * 36_000, At((shortest + longest) / 2).Stress / Psi, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Lateral_FurtherApart_IsNeverMoreNorAboveFirstYield(string method)
    {
        BeamRule rule = Rules[method];
        SeededCases.Check(Gen.Select(Shapes, Gen.Double[150e6, 450e6], Gen.Double[0.05, 25], Gen.Double[0, 5]), 400, c =>
        {
            (FlangeAndWeb shape, double yield, double length, double more) = c;
            var strength = new MetalStrength(yield, null, new StrengthOrigin.Given("made up"));
            double modulus = shape.FlangeWidth * shape.FlangeThickness * shape.Depth;
            double near = rule.Lateral(strength, Elastic, modulus, shape, length).Value, far = rule.Lateral(strength, Elastic, modulus, shape, length + more).Value;
            Assert.True(far <= near * (1 + 1e-12));
            Assert.True(near <= rule.Yielding(strength, modulus).Value * (1 + 1e-12));
            Assert.Equal(rule.Yielding(strength, modulus).Value, rule.Lateral(strength, Elastic, modulus, shape, 1e-3).Value, 1e-3);
        });
    }

    // 10.92 in by 0.37 in of W12x50: 0.58 × 36 ksi × 4.0404 in² = 84.36 kip; ASR 0.33 and 0.45 of Fy. D/tw 29.5 is below 1.12 √(5 E/Fy) = 71.1.
    [Theory]
    [InlineData("LRFR", 0.58)]
    [InlineData("LFR", 0.58)]
    [InlineData("ASR inventory", 0.33)]
    [InlineData("ASR operating", 0.45)]
    public void Shear_OfAStoutWeb_IsItsPartOfTheYieldOnTheWeb(string method, double part)
    {
        WebShear one = Rules[method].Shear(Steel, Elastic, [(10.92 * Inch, 0.37 * Inch)]);
        Assert.Equal(part * 36 * 10.92 * 0.37, one.Value / Kip, 1e-9);
        Assert.Equal(1, one.Buckling);
        Assert.Equal(2 * one.Value, Rules[method].Shear(Steel, Elastic, [(10.92 * Inch, 0.37 * Inch), (10.92 * Inch, 0.37 * Inch)]).Value, 1e-6);

        // 100 in by 0.5 in, D/tw 200: C = 1.57 (5 × 29,000/36)/200² = 0.1581.
        WebShear slender = Rules[method].Shear(Steel, Elastic, [(100 * Inch, 0.5 * Inch)]);
        Assert.Equal(0.1581, slender.Buckling, 0.00005);
        Assert.Equal(part * 36 * 50 * (1.57 * 5 * 29_000 / 36 / 40_000), slender.Value / Kip, 1e-9);
    }

    // Constants are rounded where the second and the third range meet: 1.57/1.40² = 0.8010 over 1.12/1.40 = 0.8.
    [Fact]
    public void Buckling_WhereRangesMeet_IsContinuous() =>
        SeededCases.Check(Gen.Select(Gen.Double[150e6, 700e6], Gen.Double[1, 300], Gen.Double[0, 50]), 300, c =>
        {
            (double yield, double slenderness, double more) = c;
            double root = Math.Sqrt(5 * Elastic / yield);
            double At(double over) => BeamRule.Buckling(over * root, Elastic, yield);
            Assert.Equal(1, At(1.12 * (1 - 1e-9)));
            Assert.Equal(1, At(1.12 * (1 + 1e-9)), 1e-8);
            Assert.Equal(0.8, At(1.40 * (1 - 1e-9)), 1e-8);
            Assert.InRange(At(1.40 * (1 + 1e-9)) / 0.8, 1, 1.0013);

            double stout = BeamRule.Buckling(slenderness, Elastic, yield), slender = BeamRule.Buckling(slenderness + more, Elastic, yield);
            Assert.InRange(slender / stout, 0, 1.0013);
            Assert.InRange(stout, 1e-9, 1);
        });

    [Fact]
    public void Radius_OfAPublishedShape_IsThatByHand() =>
        Assert.Equal(8.08 / Math.Sqrt(12 * (1 + (10.92 * 0.37 / (3 * 8.08 * 0.64)))), Of("W12x50").Radius / Inch, 1e-9);

    private static FlangeAndWeb Of(string name) =>
        FlangeAndWeb.Of(SectionsByHand.Section(SectionsByHand.Part("beam", ShapeTable.Find(name)!.Shape, (PiecePlacement?)null)))!;

    private static FlangeAndWeb Doubly(double width, double flange, double depth, double web) =>
        new(width, flange, depth - (2 * flange), web, depth) { OtherWidth = width, OtherThickness = flange };

    private static double General(FlangeAndWeb shape, double length, double inertia, bool torsion)
    {
        const double shear = Elastic / (2 * 1.3);
        double h = shape.Depth - shape.FlangeThickness, warping = inertia * h * h / 4;
        double j = torsion ? ((2 * shape.FlangeWidth * Math.Pow(shape.FlangeThickness, 3)) + (shape.WebDepth * Math.Pow(shape.WebThickness, 3))) / 3 : 0;
        return Math.PI / length * Math.Sqrt((Elastic * inertia * shear * j) + (Math.Pow(Math.PI * Elastic / length, 2) * inertia * warping));
    }

    private static bool Near((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9;
}
