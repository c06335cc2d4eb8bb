using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// An emergency vehicle beside a legal one on floorbeams, against every place of the pair between the kerbs and every section. That the legal vehicle stays while the emergency vehicle
/// is scaled is of the FHWA memo of 3 November 2016, from memory.
/// </summary>
public class FloorNeighbourTests
{
    private const double Foot = 0.3048;

    // Trusses 22 ft apart; of a roadway of 20 ft the pair cannot move, of 22 ft it moves by 2 ft.
    [Theory]
    [InlineData(20)]
    [InlineData(22)]
    public void Floorbeam_BesideALegalVehicle_HasTheLowestFactorOfAllPlaces(int width)
    {
        PartRow row = RowOf(width, PartEffect.Moment);
        double room = row.Capacity!.Value - row.FactoredDead, lowest = double.PositiveInfinity;
        double own = 1.3 * 1.33 * ((PartLive.OnFloorbeam)row.LiveParts[0]).Along / 2, other = 1.3 * 1.33 * row.Beside!.Part.Part.Force / 2;
        double kerb = (22 - width) / 2.0;
        for (double first = kerb + 2; first <= 22 - kerb - 2 - 16 + 1e-9; first += 0.02)
        {
            for (double section = 0.02; section < 22; section += 0.02)
            {
                double Moment(double wheel) => Math.Min(wheel, section) * (22 - Math.Max(wheel, section)) / 22 * Foot;
                double left = Moment(first) + Moment(first + 6), right = Moment(first + 10) + Moment(first + 16);
                lowest = Math.Min(lowest, Math.Min((room - (other * right)) / (own * left), (room - (other * left)) / (own * right)));
            }
        }

        // The sweep can miss the lowest by a step of either place.
        Assert.InRange(row.Factor!.Value, Math.Max(0, lowest) - 0.01, Math.Max(0, lowest) + 1e-9);
    }

    // Wheels 3, 9, 13 and 19 ft from the truss: 19/22 and 13/22 of the nearer, 9/22 and 3/22 of the farther, each with half of its reaction.
    [Fact]
    public void EndOfAFloorbeam_BesideALegalVehicle_IsByHand()
    {
        PartRow row = RowOf(20, PartEffect.Shear);
        double room = row.Capacity!.Value - row.FactoredDead, own = ((PartLive.AtEnd)row.LiveParts[0]).Along / 2, other = row.Beside!.Part.Part.Force / 2;
        double Factor(double ours, double theirs) => (room - (1.3 * 1.33 * other * theirs / 22)) / (1.3 * 1.33 * own * ours / 22);
        Assert.Equal(Math.Min(Factor(19 + 13, 9 + 3), Factor(9 + 3, 19 + 13)), row.Factor!.Value, 1e-9);
    }

    // The rating alone stays beside it, and with one lane nothing stands beside it.
    [Fact]
    public void Floorbeam_OfOneLane_HasNoNeighbour()
    {
        using BridgeOnDisk garrow = BridgeOnDisk.OfSample("garrow-landing").Replace("bridge.toml", "roadway = \"20 ft\"", "roadway = \"16 ft\"");
        Assert.DoesNotContain(Rate(garrow).PartRows, r => r.Beside is not null);
    }

    private static PartRow RowOf(int roadway, PartEffect effect)
    {
        using BridgeOnDisk garrow = BridgeOnDisk.OfSample("garrow-landing").Replace("bridge.toml", "roadway = \"20 ft\"", $"roadway = \"{roadway} ft\"");
        BridgeRating rating = Rate(garrow);
        PartRow row = rating.PartRows.Single(r => r.Part == PartKind.Floorbeam && r.ActsAs == effect && r.Beside is not null);
        Assert.True(row.Factor < rating.Alone(row)!.Factor);
        return row;
    }

    private static BridgeRating Rate(BridgeOnDisk folder)
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        return BridgeRater.Rate(reading.Bridge!, RatingMethod.Find("LRFR")!, [reading.Catalogue.Find("EV3")!, reading.Catalogue.Find("SU7")!]).TryGet(out BridgeRating? rating, out _) ? rating : throw new InvalidOperationException("It is a truss.");
    }
}
