using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Tests.Published;

/// <summary>Vehicles as shipped with the program, and as the table <c>Vehicles/vehicles.csv</c> has them, each with its source there.</summary>
internal static class PublishedVehicles
{
    private static readonly Catalogue Catalogue = Catalogue.Shipped(new FindingList());

    /// <summary>The axles of a shipped vehicle; the one place at which the checks take a vehicle by name.</summary>
    public static AxleTrain Train(string name) => Shipped(name).Train;

    /// <summary>A vehicle as shipped.</summary>
    public static Vehicle Shipped(string name) => Assert.IsType<Vehicle>(Catalogue.Find(name));

    /// <summary>The axles in a row of the table.</summary>
    public static AxleTrain TrainOf(PublishedRow row)
    {
        (double force, double length) = row["units"] == "kip;ft" ? (CustomaryUnits.Kip, CustomaryUnits.Foot) : (1000, 1);
        return new AxleTrain(
            [.. row.Numbers("axle_loads").Select(p => p * force)],
            [.. row["spacings"].Split(';', StringSplitOptions.RemoveEmptyEntries).Select(s => GapOf(s, length))]);
    }

    // Either one length, or the smallest and the largest with a hyphen between.
    private static AxleGap GapOf(string text, double length)
    {
        double[] limits = [.. text.Split('-').Select(n => double.Parse(n, CultureInfo.InvariantCulture) * length)];
        return new AxleGap(limits[0], limits[^1]);
    }
}
