namespace SpanRater.Tests.Published.MovingLoadExamples;

/// <summary>
/// Textbook examples of loads that move over a simple beam. Units cancel, so the numbers go in as printed: a span of 40 ft
/// as 40, a load of 24 kip as 24.
/// </summary>
public class MovingLoadTests
{
    /// <summary>
    /// Cooper E80, loads of one rail [kip] and their places from the first wheel [ft]: the engine and its tender, as far
    /// as the span holds them. From memory of the loading in the AREMA Manual for Railway Engineering, chapter 15.
    /// </summary>
    private static readonly (double Load, double Place)[] CooperE80 =
        [(20, 0), (40, 8), (40, 13), (40, 18), (40, 23), (26, 32), (26, 37), (26, 43), (26, 48)];

    public static IEnumerable<TheoryDataRow<string, string, double, double>> Rows() =>
        PublishedTable.Read("MovingLoadExamples/examples.csv").Select(row =>
            new TheoryDataRow<string, string, double, double>(row["case"], row["quantity"], row.Number("value"), HalfADigit(row["value"]))
            {
                Label = row.Label($"{row["case"]}, {row["quantity"]}: {row["value"]} {row["unit"]}"),
            });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Beam_OfTheExample_GivesThePrintedValue(string example, string quantity, double printed, double tolerance)
    {
        PublishedRow row = PublishedTable.Read("MovingLoadExamples/examples.csv").Single(r => r["case"] == example && r["quantity"] == quantity);
        double span = row.Number("span");
        double actual = quantity switch
        {
            "Mmax" => Placement.LargestMoment(span, TrainOf(row)),
            "Vmax" => Placement.LargestEndShear(span, TrainOf(row)),
            "resultant" => TrainOf(row).Weight,
            "centroid" => Placement.DistanceOfResultant(TrainOf(row)),
            "M_centre_wheel3" => WheelThreeAtMidspan(new InfluenceLine([0, span / 2, span], [0, span / 4, 0])),
            "RB_wheel3" => WheelThreeAtMidspan(new InfluenceLine([0, span], [1, 0])),
            _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "No such quantity."),
        };

        Assert.Equal(printed, actual, tolerance);
    }

    // The route of stringers: the exact search on a simple span, which knows nothing of trusses.
    [Theory]
    [MemberData(nameof(LargestRows))]
    public void SimpleSpan_OfTheExample_GivesThePrintedValue(string example, string quantity, double printed, double tolerance)
    {
        PublishedRow row = PublishedTable.Read("MovingLoadExamples/examples.csv").Single(r => r["case"] == example && r["quantity"] == quantity);
        var beam = new SimpleSpan(row.Number("span"));

        Assert.Equal(printed, (quantity == "Mmax" ? beam.MostMoment(TrainOf(row)) : beam.MostShear(TrainOf(row)))!.Effect, tolerance);
    }

    public static IEnumerable<TheoryDataRow<string, string, double, double>> LargestRows() => Rows().Where(r => r.Data.Item2 is "Mmax" or "Vmax");

    // The engine heads for the left support, B in the book's reaction.
    private static double WheelThreeAtMidspan(InfluenceLine line)
    {
        double front = (line.Stations[^1] / 2) - CooperE80[2].Place;
        return CooperE80.Sum(wheel => wheel.Load * line.OrdinateAt(front + wheel.Place));
    }

    private static AxleTrain TrainOf(PublishedRow row)
    {
        double[] places = row.Numbers("positions");
        return new AxleTrain(row.Numbers("loads"), [.. places.Skip(1).Select((p, i) => AxleGap.Fixed(p - places[i]))]);
    }

    // Half the last printed digit, and a hair for round-off.
    private static double HalfADigit(string printed)
    {
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        return (0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - printed.Length)) + 1e-9;
    }
}
