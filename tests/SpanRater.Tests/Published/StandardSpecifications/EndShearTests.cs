using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.StandardSpecifications;

/// <summary>
/// AASHTO Standard Specifications for Highway Bridges, 17th ed. (2002), Appendix A: largest end shear of simple spans, one
/// lane, no impact, for the spans on which the truck governs it. The end reaction of a truss whose deck ends over its
/// supports has the line of a simple span, straight from 1 to 0, so each span is a truss of that length.
/// </summary>
public class EndShearTests
{
    /// <summary>Half the last printed digit [kip], and a hair for a value that lies on it.</summary>
    private const double HalfADigit = 0.05 + 1e-9;

    /// <summary>Where the hand-rounded table departs from its own rule by more than half a digit [kip].</summary>
    private const double HandRounded = 0.13;

    /// <summary>The spans of the HS20 table with hand-rounded shears [ft].</summary>
    private static readonly double[] HandRoundedSpans = [17, 46, 50, 66, 75];

    public static IEnumerable<TheoryDataRow<string, double, double>> Rows() =>
        from truck in (string[])["HS20", "HS15", "H20", "H15"]
        from row in PublishedTable.Read($"StandardSpecifications/{truck.ToLowerInvariant()}-end-shear.csv")
        select new TheoryDataRow<string, double, double>(truck, row.Number("span_ft"), row.Number("shear_kip"))
        {
            Label = row.Label($"{truck}, {row["span_ft"]} ft: {row["shear_kip"]} kip"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void EndReaction_UnderTheTruck_IsThePrintedShear(string truck, double spanInFeet, double printed)
    {
        SolvedTruss truss = ParallelChordTruss.WarrenWithVerticals(6, spanInFeet * Foot / 6, spanInFeet * Foot / 8);
        AxleTrain train = PublishedVehicles.Train(truck);
        PeakPair peaks = new RollingPlan(truss.Truss.Stations, train).PeaksOf(truss.Reaction("L0 up"));

        bool handRounded = truck == "HS20" && HandRoundedSpans.Contains(spanInFeet);
        Assert.Equal(printed, peaks.Tension!.Force / Kip, handRounded ? HandRounded : HalfADigit);
        Assert.Null(peaks.Compression);
    }

    // A gap that may be 14 to 30 ft is worst at 14 ft for every simple span.
    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    public void EndReaction_UnderTheTruckWithAVaryingGap_IsLargestAtTheSmallestGap(double spanInFeet)
    {
        SolvedTruss truss = ParallelChordTruss.WarrenWithVerticals(6, spanInFeet * Foot / 6, spanInFeet * Foot / 8);
        AxleTrain train = PublishedVehicles.Train("HS20");

        Peak peak = new RollingPlan(truss.Truss.Stations, train).PeaksOf(truss.Reaction("L0 up")).Tension!;

        Assert.Equal(14 * Foot, peak.Gaps[1], 1e-9);
    }
}
