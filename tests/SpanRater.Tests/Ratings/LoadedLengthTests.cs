using SpanRater.Tests.Published;
using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// Impact by loaded length on a Pratt truss of six panels of 20 ft, 25 ft high. The line of U2L3, the diagonal of the third
/// panel, is pressed on 48 ft from the left, 120 x 2/5, and pulled on the other 72 ft; that of the hanger L1U1 covers two panels.
/// </summary>
public class LoadedLengthTests
{
    private static readonly BridgeRating Rating = RatingOfAPrattTruss();

    [Theory]
    [InlineData("U2L3", Sense.Tension, 72, 50 / 197.0)]
    [InlineData("U2L3", Sense.Compression, 48, 50 / 173.0)]
    [InlineData("L2L3", Sense.Tension, 120, 50 / 245.0)]
    [InlineData("L1U1", Sense.Tension, 40, 0.30)]
    public void Impact_OfAMember_TakesTheStretchOfItsOwnLine(string member, Sense sense, double lengthInFeet, double impact)
    {
        MemberRow row = Rating.MemberRows.Single(r => r.Member.Name == member && r.Sense == sense && r.Level.Name == "operating");

        Assert.Equal(lengthInFeet * Foot, row.LoadedLength!.Value, 1e-9);
        Assert.Equal(impact, row.Impact!.Value, 1e-12);
    }

    private static BridgeRating RatingOfAPrattTruss()
    {
        Truss truss = ParallelChordTruss.Pratt(6, 20 * Foot, 25 * Foot).Truss;
        Bridge bridge = Of(0) with
        {
            Truss = truss,
            Cases = [new LoadCase(Bridge.ComponentsCase, [new JointLoad("L3", 0, -1000)])],
            Capacities = [.. truss.Members.Select(_ => GivenCapacities.None)],
        };
        return Rate(bridge, "LFR", OneAxle(VehicleClass.Legal));
    }
}
