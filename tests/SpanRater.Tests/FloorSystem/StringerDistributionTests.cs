namespace SpanRater.Tests;

/// <summary>Rows of AASHTO Standard Specifications, 17th ed., Table 3.23.1, and LRFD, Table 4.6.2.2.2a-1, from memory; the lever rule by hand.</summary>
public class StringerDistributionTests
{
    private const double Foot = 0.3048;

    [Theory]
    [InlineData(DeckType.Plank, 3, StringerMaterial.Timber, 4.0, 3.75)]
    [InlineData(DeckType.NailLaminated, 4, StringerMaterial.Steel, 4.5, 4.0)]
    [InlineData(DeckType.NailLaminated, 6, StringerMaterial.Steel, 5.0, 4.25)]
    [InlineData(DeckType.GluedLaminated, 4, StringerMaterial.GluedLaminatedTimber, 4.5, 4.0)]
    [InlineData(DeckType.GluedLaminated, 6, StringerMaterial.GluedLaminatedTimber, 6.0, 5.0)]
    [InlineData(DeckType.GluedLaminated, 4, StringerMaterial.Steel, 4.5, 4.0)]
    [InlineData(DeckType.GluedLaminated, 6, StringerMaterial.Steel, 5.25, 4.5)]
    [InlineData(DeckType.Concrete, 7, StringerMaterial.Steel, 7.0, 5.5)]
    [InlineData(DeckType.Concrete, 7, StringerMaterial.Timber, 6.0, 5.0)]
    [InlineData(DeckType.Concrete, 7, StringerMaterial.Concrete, 6.5, 6.0)]
    [InlineData(DeckType.SteelGrid, 3, StringerMaterial.Steel, 4.5, 4.0)]
    [InlineData(DeckType.SteelGrid, 4, StringerMaterial.Steel, 6.0, 5.0)]
    [InlineData(DeckType.CorrugatedSteel, 2, StringerMaterial.Steel, 5.5, 4.5)]
    public void Of_WheelLines_IsHalfOfSpacingOverTheDivisor(DeckType type, double inches, StringerMaterial beam, double one, double two)
    {
        double Lanes(int lanes) => StringerDistribution.Of(type, inches * Foot / 12, beam, 3 * Foot, lanes, DistributionTable.WheelLines)!.Lanes;

        Assert.Equal(3 / one / 2, Lanes(1), 1e-12);
        Assert.Equal(3 / two / 2, Lanes(2), 1e-12);
    }

    [Theory]
    [InlineData(DeckType.Plank, 6.7, 7.5)]
    [InlineData(DeckType.NailLaminated, 8.3, 8.5)]
    [InlineData(DeckType.GluedLaminated, 10.0, 10.0)]
    public void Of_Lanes_IsSpacingOverTheDivisor(DeckType type, double one, double two)
    {
        StringerShare Of(int lanes) => StringerDistribution.Of(type, null, StringerMaterial.Steel, 3 * Foot, lanes, DistributionTable.Lanes)!;

        Assert.Equal(3 / one, Of(1).Lanes, 1e-12);
        Assert.Equal(3 / one / 1.2, Of(1).WithoutPresence, 1e-12);
        Assert.Equal(3 / two, Of(2).Lanes, 1e-12);
    }

    // 12 ft apart, one vehicle: 1 + (1 − 6/12) = 1.5 wheel lines. Two, with wheels at 0, 6, 10, 16 ft
    // and that at 6 ft on the stringer: 6/12 + 1 + 8/12 + 2/12 = 28/12.
    [Fact]
    public void InteriorByLever_HasAWheelOverTheStringer()
    {
        Assert.Equal(0.75, StringerDistribution.InteriorByLever(12 * Foot, 6 * Foot, 1), 1e-12);
        Assert.Equal(14.0 / 12, StringerDistribution.InteriorByLever(12 * Foot, 6 * Foot, 2), 1e-12);
    }

    // The printed limits on the spacing, above which the lever rule holds.
    [Theory]
    [InlineData(DeckType.NailLaminated, 6, StringerMaterial.Steel, 5, 6.5)]
    [InlineData(DeckType.GluedLaminated, 6, StringerMaterial.GluedLaminatedTimber, 6, 7.5)]
    [InlineData(DeckType.GluedLaminated, 6, StringerMaterial.Steel, 5.5, 7)]
    [InlineData(DeckType.Concrete, 7, StringerMaterial.Steel, 10, 14)]
    [InlineData(DeckType.Concrete, 7, StringerMaterial.Timber, 6, 10)]
    [InlineData(DeckType.Concrete, 7, StringerMaterial.Concrete, 6, 10)]
    [InlineData(DeckType.SteelGrid, 4, StringerMaterial.Steel, 6, 10.5)]
    public void Of_AboveTheLimit_IsNull(DeckType type, double inches, StringerMaterial beam, double one, double two)
    {
        StringerShare? Of(double feet, int lanes) => StringerDistribution.Of(type, inches * Foot / 12, beam, feet * Foot, lanes, DistributionTable.WheelLines);
        Assert.NotNull(Of(one, 1));
        Assert.Null(Of(one + 0.01, 1));
        Assert.NotNull(Of(two, 2));
        Assert.Null(Of(two + 0.01, 2));
    }

    [Theory]
    [InlineData(DeckType.Plank, 5)]
    [InlineData(DeckType.NailLaminated, 6)]
    [InlineData(DeckType.GluedLaminated, 6)]
    public void Of_LanesAboveTheLimit_IsNull(DeckType type, double limit)
    {
        Assert.NotNull(StringerDistribution.Of(type, null, StringerMaterial.Timber, limit * Foot, 1, DistributionTable.Lanes));
        Assert.Null(StringerDistribution.Of(type, null, StringerMaterial.Timber, (limit + 0.01) * Foot, 1, DistributionTable.Lanes));
    }

    // What is not known counts as thin, which puts more on one stringer.
    [Theory]
    [InlineData(DeckType.SteelGrid, 4.5)]
    [InlineData(DeckType.NailLaminated, 4.5)]
    public void Of_WithoutAThickness_CountsAsThin(DeckType type, double divisor) =>
        Assert.Equal(3 / divisor / 2, StringerDistribution.Of(type, null, StringerMaterial.Steel, 3 * Foot, 1, DistributionTable.WheelLines)!.Lanes, 1e-12);

    // Standard Specifications, 13.6.5.2, from memory.
    [Fact]
    public void TimberShear_IsHalfOfUndistributedAndDistributed()
    {
        Assert.Equal(3 * 1.0, TimberShear.Distance(1, 16), 1e-12);
        Assert.Equal(3.0, TimberShear.Distance(1.5, 12), 1e-12);
        Assert.Equal(0.5 * ((0.6 * 0.5) + 0.28), TimberShear.Share(0.5, 0.28), 1e-12);
    }
}
