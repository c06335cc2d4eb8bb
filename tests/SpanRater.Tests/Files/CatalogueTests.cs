using SpanRater.Files;

namespace SpanRater.Tests.Files;

public sealed class CatalogueTests
{
    private static readonly Catalogue Shipped = ReadShipped();

    [Fact]
    public void Shipped_EveryEntry_HasASource() => Assert.All(Shipped.Entries, e => Assert.NotEqual("", e.Load.Source));

    [Fact]
    public void Shipped_EveryClassOfVehicle_IsThere() =>
        Assert.Equal(
            Enum.GetValues<VehicleClass>().Where(c => c != VehicleClass.Permit),
            Shipped.Entries.Select(e => e.Load.Class).Distinct().Order());

    [Fact]
    public void Shipped_DesignTrucksWithALaneLoad_KnowTheirLoading()
    {
        string[] without = [.. Shipped.Entries.Select(e => e.Load).OfType<Vehicle>().Where(v => v.Class == VehicleClass.Design && v.LaneLoading is null).Select(v => v.Name)];
        Assert.Equal(["Alternate military"], without);
        Assert.Equal("HL-93", ((Vehicle)Shipped.Find("HL-93 tandem")!).LaneLoading);
    }

    [Fact]
    public void Shipped_VehiclesOfOtherClasses_AreRatedAlone() =>
        Assert.All(Shipped.Entries.Select(e => e.Load).OfType<Vehicle>().Where(v => v.Class != VehicleClass.Design), v => Assert.Null(v.LaneLoading));

    [Fact]
    public void Shipped_NotionalLoad_LeavesRelievingAxlesOutAndVariesItsFirstGap()
    {
        var notional = (Vehicle)Shipped.Find("nrl")!;
        Assert.Equal(RelievingAxles.LeftOut, notional.Train.RelievingAxles);
        Assert.Equal(new AxleGap(6 * 0.3048, 14 * 0.3048), notional.Train.Gaps[0]);
    }

    [Fact]
    public void Read_LoadingOfAnUnknownVehicle_IsRefused()
    {
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.toml");
        File.WriteAllText(file, "[[loading]]\nname = \"Convoy\"\nclass = \"legal\"\nvehicles = [\"Type 33\"]\n");
        try
        {
            var findings = new FindingList();
            _ = Catalogue.Read([file], [], findings);
            Assert.Equal($"{file}:2:8: loading \"Convoy\" names vehicle \"Type 33\", which no catalogue has. Did you mean \"Type 3\"?", Assert.Single(findings.All).ToString());
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static Catalogue ReadShipped()
    {
        var findings = new FindingList();
        Catalogue catalogue = Catalogue.Shipped(findings);
        Assert.Empty(findings.All);
        return catalogue;
    }
}
