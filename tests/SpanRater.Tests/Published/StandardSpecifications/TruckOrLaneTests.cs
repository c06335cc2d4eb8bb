using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.StandardSpecifications;

/// <summary>
/// AASHTO Standard Specifications for Highway Bridges, 17th ed. (2002), Appendix A: end shear and moment of simple spans, one lane,
/// no impact, under the truck or the lane load with its concentrated load, whichever is worse. A lane load gives its largest moment
/// at midspan, so that the moments of the spans on which it governs are those of the fixed section there.
/// </summary>
public class TruckOrLaneTests
{
    /// <summary>Half the last printed digit [kip or kip-ft], and a hair for a value that lies on it.</summary>
    private const double HalfADigit = 0.05 + 1e-9;

    /// <summary>Where the hand-rounded HS20 table, and HS15 as a part of it, depart from their own rule by more than half a digit [kip or kip-ft].</summary>
    private const double HandRounded = 0.13;

    /// <summary>The spans of the HS20 table with hand-rounded shears [ft].</summary>
    private static readonly double[] HandRoundedSpans = [17, 46, 50, 66, 75];

    public static IEnumerable<TheoryDataRow<string, double, double>> TruckShears() =>
        from truck in (string[])["HS20", "HS15", "H20", "H15"]
        from row in PublishedTable.Read($"StandardSpecifications/{truck.ToLowerInvariant()}-end-shear.csv")
        select new TheoryDataRow<string, double, double>(truck, row.Number("span_ft"), row.Number("shear_kip"))
        {
            Label = row.Label($"{truck}, {row["span_ft"]} ft: {row["shear_kip"]} kip"),
        };

    public static IEnumerable<TheoryDataRow<string, double, double>> LaneShears() => Rows("lane-end-shear", "shear_kip", "kip");

    public static IEnumerable<TheoryDataRow<string, double, double>> LaneMoments() => Rows("lane-moment", "moment_kipft", "kip-ft");

    // The lane load never beats the truck on these spans, though it is tried.
    [Theory]
    [MemberData(nameof(TruckShears))]
    public void EndReaction_WhereTheTruckGoverns_IsThePrintedShear(string truck, double spanInFeet, double printed)
    {
        (double kips, LiveEffect worst) = PublishedLoadings.EndReaction(spanInFeet, PublishedLoadings.Shipped(truck + " truck or lane"));

        bool handRounded = truck == "HS20" && HandRoundedSpans.Contains(spanInFeet);
        Assert.Equal(printed, kips, handRounded ? HandRounded : HalfADigit);
        Assert.IsType<LivePart.Axles>(Assert.Single(worst.Parts));
    }

    // For a shear the concentrated load is 26 kip with 0.64 klf, and as much less with a lighter lane.
    [Theory]
    [MemberData(nameof(LaneShears))]
    public void EndReaction_WhereTheLaneGoverns_IsThePrintedShear(string truck, double spanInFeet, double printed)
    {
        (double kips, LiveEffect worst) = PublishedLoadings.EndReaction(spanInFeet, PublishedLoadings.Shipped(truck + " truck or lane"));

        Assert.Equal(printed, kips, HalfADigit);
        Assert.Collection(
            worst.Parts,
            lane => Assert.Equal(spanInFeet * Foot, Assert.IsType<LivePart.OfLane>(lane).Load.Length, 1e-9),
            point => Assert.Equal((truck.EndsWith("20", StringComparison.Ordinal) ? 26 : 19.5) * Kip, Assert.IsType<LivePart.PointOfLane>(point).Load, 1e-6));
    }

    [Theory]
    [MemberData(nameof(LaneMoments))]
    public void MidspanMoment_WhereTheLaneGoverns_IsThePrintedMoment(string truck, double spanInFeet, double printed) =>
        Assert.Equal(
            printed,
            PublishedLoadings.MidspanMoment(spanInFeet, PublishedLoadings.Shipped(truck + " truck or lane")),
            truck.StartsWith("HS", StringComparison.Ordinal) ? HandRounded : HalfADigit);

    // 13.5 and 9 kip are three quarters and half of 18; H10 and HS12 have no table, and stand to the others as their names.
    [Theory]
    [InlineData("H10", "H20", 10.0 / 20)]
    [InlineData("HS12", "HS20", 12.0 / 20)]
    [InlineData("HS5", "HS20", 5.0 / 20)]
    public void EndReaction_OfALoadingInProportion_IsThatPart(string light, string full, double part)
    {
        foreach (double span in (double[])[20, 60, 120, 160, 300])
        {
            double whole = PublishedLoadings.EndReaction(span, PublishedLoadings.Shipped(full + " truck or lane")).Kips;
            Assert.Equal(part * whole, PublishedLoadings.EndReaction(span, PublishedLoadings.Shipped(light + " truck or lane")).Kips, 1e-9);
        }
    }

    private static IEnumerable<TheoryDataRow<string, double, double>> Rows(string table, string column, string unit) =>
        from row in PublishedTable.Read($"StandardSpecifications/{table}.csv")
        select new TheoryDataRow<string, double, double>(row["truck"], row.Number("span_ft"), row.Number(column))
        {
            Label = row.Label($"{row["truck"]}, {row["span_ft"]} ft: {row[column]} {unit}"),
        };
}
