using System.Globalization;

namespace SpanRater.Tests.Ratings;

/// <summary>What the clauses of strengths and resistances say, against what the formulas have.</summary>
public class ResistanceClauseTests
{
    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    private static readonly MetalStrength Steel = new(1, 2, new StrengthOrigin.Given("made up"));

    private static readonly AllowableLevel[] Levels = Enum.GetValues<AllowableLevel>();

    public static TheoryData<Clause, double[]> Numbers()
    {
        var iron = MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.WroughtIron, null)!, null);
        WetService dimension = TimberFactors.Wet(TimberSizeClass.Dimension, 1e9, 1e9), large = TimberFactors.Wet(TimberSizeClass.BeamsAndStringers, 1e9, 1e9);
        double[] Of(WetService s) => [s.Bending, s.Tension, s.Shear, s.CompressionAcross, s.Compression, s.Modulus];
        double[] widths = [4, 5, 6, 8, 10, 12, 14];
        return new TheoryData<Clause, double[]>
        {
            { StrengthClauses.UnknownPins, [.. PublishedStrength.All.Where(r => r.Kind == MaterialKind.Pin).Select(r => r.Yield / Ksi)] },
            { StrengthClauses.WroughtIron, [iron.Yield / Ksi, iron.Ultimate!.Value / Ksi] },
            { StrengthClauses.AllowableIron, [.. Levels.Select(l => iron.AllowableGross(l).Value / Ksi)] },
            { StrengthClauses.AllowableGross, [.. Levels.Select(l => Steel.AllowableGross(l).Value)] },
            { StrengthClauses.AllowableNet, [.. Levels.Select(l => Steel.AllowableNet(l)!.Value / 2)] },
            { StrengthClauses.ConditionFactor, [.. Enum.GetValues<Condition>().Select(c => MemberFactors.Of(c, SystemKind.Stringer).Condition.Value)] },
            { StrengthClauses.UnknownCondition, [MemberFactors.Of(null, SystemKind.Stringer).Condition.Value] },
            {
                StrengthClauses.SystemFactor,
                [
                    .. ((SystemKind[])[SystemKind.WeldedTrussMember, SystemKind.RivetedTrussMember, SystemKind.MultipleEyebars, SystemKind.WideFloorbeam, SystemKind.Stringer])
                        .Select(k => MemberFactors.Of(Condition.Good, k).System.Value),
                ]
            },
            { StrengthClauses.OtherTrussMember, [MemberFactors.Of(Condition.Good, SystemKind.OtherTrussMember).System.Value] },
            { StrengthClauses.LeastOfBoth, [MemberFactors.Least] },
            { ResistanceClauses.PunchedHoles, [1.00, TensionRule.LoadAndResistance.Strengths(Steel, new TensionArea(1, 1))[1].Factors[1].Value] },
            { ResistanceClauses.ShearLagByCase, [.. Enum.GetValues<ConnectedParts>().Select(NetChain.ShearLag)] },
            { ResistanceClauses.Eyebars, [TensionRule.LeastHead] },
            { ResistanceClauses.ColumnAsr, [.. Levels.Select(ColumnCurve.SafetyFactor)] },
            { ResistanceClauses.EffectiveLength, [.. Enum.GetValues<MemberEnds>().Select(EffectiveLength.Factor)] },
            { ResistanceClauses.SlendernessLimits, [.. Enum.GetValues<MemberDuty>().Select(SlendernessWarning.LimitOf)] },
            { ResistanceClauses.PartSlenderness, [BuiltUpColumn.MostOfPart] },
            { ResistanceClauses.LacingShear, [Lacing.ShearOfCompression] },
            { ResistanceClauses.CrossedBars, [Lacing.CrossedBar] },
            { TimberClauses.Duration, [.. Enum.GetValues<LoadDuration>().Select(TimberFactors.Duration)] },
            { TimberClauses.WetDimension, Of(dimension) },
            { TimberClauses.WetTimbers, Of(large) },
            { TimberClauses.SizeDimension, [.. widths.Select(w => TimberFactors.Size(TimberSizeClass.Dimension, 0.05, w * 0.0254))] },
            { TimberClauses.SizeDimensionAlong, [TimberFactors.SizeAlong(TimberSizeClass.Dimension, 0.35)] },
            { TimberClauses.Repetitive, [TimberFactors.Repetitive] },
            { TimberClauses.LrfrTimber, [TimberFactors.PhiBending, TimberFactors.PhiShear, TimberFactors.PhiCompression, TimberFactors.PhiTension] },
            { TimberClauses.TimeEffect, [TimberFactors.TimeEffect, TimberFactors.TimeEffectOfPermits] },
            { TimberClauses.LrfrModulus, [TimberFactors.ModulusFormat, TimberFactors.PhiModulus] },
            { TimberClauses.OperatingTimber, [TimberFactors.Operating] },
        };
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Values_AreTheNumbersOfTheProgram(Clause clause, double[] numbers)
    {
        double[] said = [.. clause.Values.Split("; ").Select(v => double.Parse(v.Split(' ')[0], CultureInfo.InvariantCulture))];
        Assert.Equal(said.Length, numbers.Length);
        Assert.All(said.Zip(numbers), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }

    // "26/52; 30/60": yield and tensile strength, or the stresses at both levels.
    [Fact]
    public void UnknownSteel_ValuesOfTheTables_AreTheNumbersOfTheProgram()
    {
        PublishedStrength[] steel = [.. PublishedStrength.All.Where(r => r.Kind == MaterialKind.Steel)];
        Assert.Equal(StrengthClauses.UnknownSteel.Values, Joined(steel.Select(r => (r.Yield, r.Ultimate!.Value))));
        Assert.Equal(StrengthClauses.AllowableByYear.Values, Joined(steel.Select(r => r.AllowableTension!.Value)));
        string columns = string.Join("; ", steel.Select(r => string.Create(
            CultureInfo.InvariantCulture, $"{r.AllowableColumn!.AtZero * 1000 / Ksi:#,0} − {r.AllowableColumn.Fall * 1000 / Ksi:0.00}, {r.AllowableColumn.Limit:0.0}")));
        Assert.StartsWith(columns, ResistanceClauses.ColumnAsrByYear.Values, StringComparison.Ordinal);
    }

    private static string Joined(IEnumerable<(double, double)> pairs) =>
        string.Join("; ", pairs.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Item1 / Ksi:0.#}/{p.Item2 / Ksi:0.#}"))) + " ksi";
}
