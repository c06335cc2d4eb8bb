using SpanRater.Files;

namespace SpanRater.Tests.Published.Vehicles;

/// <summary>Every vehicle shipped with the program has the axles and spacings of the published table.</summary>
public class ShippedVehicleTests
{
    // The table's name, and ours where it differs.
    private static readonly (string Published, string Shipped)[] Names =
    [
        ("H10", "H10"), ("H15", "H15"), ("H20", "H20"), ("HS5", "HS5"), ("HS12", "HS12"), ("HS15", "HS15"), ("HS20", "HS20"),
        ("Alternate military", "Alternate military"), ("HL-93 truck", "HL-93 truck"), ("HL-93 tandem", "HL-93 tandem"),
        ("Type 3", "Type 3"), ("Type 3S2", "Type 3S2"), ("Type 3-3", "Type 3-3"),
        ("SU4", "SU4"), ("SU5", "SU5"), ("SU6", "SU6"), ("SU7", "SU7"), ("NRL", "NRL"), ("EV2", "EV2"), ("EV3", "EV3"),
        ("H5 (pedestrian bridge maintenance vehicle)", "H5 maintenance truck"),
        ("H10 (pedestrian bridge maintenance vehicle)", "H10 maintenance truck"),
        ("EN footbridge service vehicle Qserv", "EN service vehicle"),
    ];

    public static TheoryData<string, string> Cases() => [.. Names.Select(n => (n.Published, n.Shipped))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Shipped_Vehicle_HasThePublishedAxlesAndSpacings(string published, string shipped)
    {
        AxleTrain expected = PublishedVehicles.TrainOf(PublishedTable.Read("Vehicles/vehicles.csv").Single(row => row["name"] == published));
        AxleTrain actual = PublishedVehicles.Shipped(shipped).Train;
        Assert.Equal(expected.Loads.Count, actual.Loads.Count);
        for (int axle = 0; axle < actual.Loads.Count; axle++)
        {
            Assert.Equal(expected.Loads[axle], actual.Loads[axle], expected.Loads[axle] * 1e-12);
        }

        for (int gap = 0; gap < actual.Gaps.Count; gap++)
        {
            Assert.Equal(expected.Gaps[gap].Least, actual.Gaps[gap].Least, 1e-9);
            Assert.Equal(expected.Gaps[gap].Most, actual.Gaps[gap].Most, 1e-9);
        }
    }

    [Fact]
    public void Shipped_EveryVehicleButTheInventedFarmOnes_IsInTheTable()
    {
        var findings = new FindingList();
        Assert.Equal(
            Names.Select(n => n.Shipped).Order(),
            Catalogue.Shipped(findings).Entries.Select(e => e.Load).OfType<Vehicle>().Where(v => v.Class != VehicleClass.Farm).Select(v => v.Name).Order());
    }

    [Fact]
    public void Shipped_FarmVehicles_SayThatTheyAreInvented() =>
        Assert.All(
            Catalogue.Shipped(new FindingList()).Entries.Select(e => e.Load).Where(l => l.Class == VehicleClass.Farm),
            l => Assert.StartsWith("invented", l.Source, StringComparison.Ordinal));
}
