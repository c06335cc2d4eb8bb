using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// Crowds on the Tansy Weir footbridge, through the whole rating of the sample: each of its two trusses carries 1 m of the deck's 2 m.
/// Our own regression anchors, computed independently by an elimination solver, not published. Rule of EN 1991-2:2003,
/// 5.3.2.1(2), from memory. Tolerance: half of the last printed digit.
/// </summary>
public class TansyWeirCrowdTests
{
    private static readonly BridgeReading Reading = BridgeFolder.Read(Repository.Sample("tansy-weir"), []);

    private static readonly Crowd Plain = new("plain", VehicleClass.Crowd, new ConstantPressure(4500, "given"), null, "given");

    [Theory]
    [InlineData("L2U3", Sense.Compression, -23.62, 10.8)]
    [InlineData("L2U3", Sense.Tension, 10.50, 7.2)]
    [InlineData("U1L2", Sense.Tension, 41.98, 14.4)]
    [InlineData("L2L3", Sense.Tension, 101.25, 18.0)]
    [InlineData("U1U2", Sense.Compression, -90.00, 18.0)]
    public void Live_PlainCrowd_IsTheAnchor(string member, Sense sense, double kilonewtons, double loadedLength) =>
        Check(Plain, member, sense, kilonewtons, loadedLength, 4.5);

    [Theory]
    [InlineData("L2U3", Sense.Compression, -25.93, 10.8, 4.94)]
    [InlineData("L2U3", Sense.Tension, 11.66, 7.2, 5.00)]
    [InlineData("U1L2", Sense.Tension, 43.87, 14.4, 4.70)]
    [InlineData("L1U1", Sense.Tension, 15.00, 6.0, 5.00)]
    public void Live_CrowdByLoadedLength_IsTheAnchor(string member, Sense sense, double kilonewtons, double loadedLength, double crowd) =>
        Check(Assert.IsType<Crowd>(Reading.Catalogue.Find("EN crowd")), member, sense, kilonewtons, loadedLength, crowd);

    [Fact]
    public void Live_CrowdOnAVerticalOverAnUnloadedCrossing_IsNone() =>
        Assert.All(RowsOf(Plain).Where(r => r.Member.Name is "L2U2" or "L4U4"), r => Assert.Null(r.Live));

    private static void Check(Crowd crowd, string member, Sense sense, double kilonewtons, double loadedLength, double pressure)
    {
        MemberRow row = RowsOf(crowd).First(r => r.Member.Name == member && r.Sense == sense);
        var part = Assert.IsType<LivePart.OfCrowd>(Assert.Single(row.Effect!.Parts).Part);

        Assert.Equal(kilonewtons, row.Live!.Value / 1000, 0.005 + 1e-9);
        Assert.Equal(loadedLength, part.Load.Length, 1e-9);
        Assert.Equal(pressure, part.Load.Intensity / 1000, 0.005);
        Assert.Equal(0, row.Impact);
    }

    private static IReadOnlyList<MemberRow> RowsOf(Crowd crowd)
    {
        Bridge bridge = Reading.Bridge!;
        Assert.True(BridgeRater.Rate(bridge, bridge.Rating.Method!, [crowd]).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating.MemberRows;
    }
}
