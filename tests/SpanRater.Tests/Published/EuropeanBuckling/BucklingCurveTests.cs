namespace SpanRater.Tests.Published.EuropeanBuckling;

/// <summary>
/// Buckling curves of EN 1993-1-1:2005, 6.3.1.2: factors χ as handbooks print them, from memory; imperfection factors as found, each row
/// with its source.
/// </summary>
public class BucklingCurveTests
{
    public static IEnumerable<TheoryDataRow<string, double, double, double>> Rows() =>
        from row in PublishedTable.Read("EuropeanBuckling/chi.csv")
        select new TheoryDataRow<string, double, double, double>(row["curve"], row.Number("alpha"), row.Number("lambda_bar"), row.Number("chi"))
        {
            Label = row.Label($"curve {row["curve"]}, slenderness {row["lambda_bar"]}: χ {row["chi"]}"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Reduction_OfASlenderness_IsThePrintedFactor(string curve, double imperfection, double slenderness, double printed)
    {
        BucklingCurve found = BucklingCurve.Find(curve)!;

        Assert.Equal(imperfection, found.Imperfection);
        Assert.Equal(printed, found.Reduction(slenderness), 0.0005 + 1e-9);
    }

    [Fact]
    public void Reduction_BelowThePlateau_IsOne() =>
        Assert.All(BucklingCurve.All, c => Assert.Equal([1.0, 1.0, 1.0], new[] { 0, 0.1, BucklingCurve.Plateau }.Select(c.Reduction)));

    // With Φ = (1 + η + λ̄²)/2 the factor solves (1 − χ)(1 − χ λ̄²) = η χ, the equation of Ayrton and Perry, η = α (λ̄ − 0.2).
    [Fact]
    public void Reduction_OfAnySlenderness_SolvesTheEquationOfAyrtonAndPerry() =>
        Assert.All(BucklingCurve.All, c =>
        {
            for (double slenderness = 0.25; slenderness < 5; slenderness += 0.25)
            {
                double chi = c.Reduction(slenderness);
                Assert.Equal(c.Imperfection * (slenderness - 0.2) * chi, (1 - chi) * (1 - (chi * slenderness * slenderness)), 1e-12);
            }
        });

    [Fact]
    public void Reduction_OfASlenderMember_StaysBelowEuler() =>
        Assert.All(BucklingCurve.All, c => Assert.InRange(c.Reduction(10), 0, 0.01));

    // By hand: √(1600/400) = 2.
    [Fact]
    public void Slenderness_OfTwoForces_IsTheRootOfTheirRatio() => Assert.Equal(2, BucklingCurve.Slenderness(1600e3, 400e3), 1e-12);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Reduction_OfNoSlenderness_IsABugOfTheCaller(double slenderness) =>
        Assert.Equal("slenderness", Assert.Throws<ArgumentOutOfRangeException>(() => BucklingCurve.All[0].Reduction(slenderness)).ParamName);

    [Theory]
    [InlineData(0, 1, "squashForce")]
    [InlineData(1, 0, "criticalForce")]
    public void Slenderness_OfNoForce_IsABugOfTheCaller(double squash, double critical, string name) =>
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => BucklingCurve.Slenderness(squash, critical)).ParamName);

    [Theory]
    [InlineData("A0")]
    [InlineData("e")]
    public void Find_NameOfNoCurve_IsNull(string name) => Assert.Null(BucklingCurve.Find(name));
}
