using System.Globalization;

namespace SpanRater.Tests.Published;

/// <summary>The vehicles of <c>Vehicles/vehicles.csv</c>, each with its source there.</summary>
internal static class PublishedVehicles
{
    private static readonly Dictionary<string, PublishedRow> Rows =
        PublishedTable.Read("Vehicles/vehicles.csv").ToDictionary(row => row["name"]);

    /// <summary>The axles of a vehicle; the one place at which the checks take a vehicle by name.</summary>
    public static AxleTrain Train(string name) => TrainOf(Rows[name]);

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
