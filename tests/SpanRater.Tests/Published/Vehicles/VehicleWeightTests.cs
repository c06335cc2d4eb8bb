namespace SpanRater.Tests.Published.Vehicles;

/// <summary>The axle loads of every published vehicle add up to its published gross weight.</summary>
public class VehicleWeightTests
{
    public static IEnumerable<TheoryDataRow<string, double>> Rows() =>
        PublishedTable.Read("Vehicles/vehicles.csv").Select(row =>
            new TheoryDataRow<string, double>(row["name"], row.Number("gross"))
            {
                Label = row.Label($"{row["name"]}: {row["gross"]} {row["units"].Split(';')[0]}"),
            });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Weight_OfEveryVehicle_IsThePublishedGross(string name, double gross)
    {
        PublishedRow row = PublishedTable.Read("Vehicles/vehicles.csv").Single(r => r["name"] == name);
        double unit = row["units"] == "kip;ft" ? CustomaryUnits.Kip : 1000;

        // Axle loads are printed in full: nothing but round-off may part them from the sum.
        Assert.Equal(gross, PublishedVehicles.TrainOf(row).Weight / unit, 1e-9);
    }
}
