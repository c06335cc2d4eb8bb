using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>A vehicle seen from the side: its axles at their spacings, to scale, with loads above and spacings below; its front is at the left.</summary>
public static class VehicleSketch
{
    /// <summary>Width of a sketch, which a phone shows whole [px].</summary>
    public const double Width = 344;

    private const double Border = 34, Size = 13, Row = 17, Wheel = 14, Body = 24, Arrow = 24, MostPerMetre = 36;

    /// <summary>Draws a vehicle on axles.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="units">Units shown.</param>
    public static Drawing Of(Vehicle vehicle, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(units);
        double[] at = [.. Stations(vehicle.Train)];
        double scale = Math.Min(MostPerMetre, at[^1] > 0 ? (Width - (2 * Border)) / at[^1] : MostPerMetre);
        double begin = (Width - (at[^1] * scale)) / 2;
        double[] x = [.. at.Select(a => begin + (a * scale))];
        string[] loads = [.. vehicle.Train.Loads.Select(l => Figures.Force(l, units))];
        string[] gaps = [.. vehicle.Train.Gaps.Select(g => Spacing(g, units))];
        double[] middles = [.. x.Zip(x.Skip(1), (left, right) => (left + right) / 2)];
        int[] loadRows = Rows(x, loads), gapRows = Rows(middles, gaps);
        double ground = 20 + (Row * (gapRows.DefaultIfEmpty(-1).Max() + 1)), top = ground + Wheel + Body + Arrow + (Row * (loadRows.Max() + 1)) + 8;
        var parts = new List<DrawingPart>
        {
            new Stroke("ground", [new(8, ground), new(Width - 8, ground)], Ink.Grey, 1.4),
            new Stroke("vehicle", Rectangle(x[0] - 16, ground + (Wheel * 0.6), x[^1] + 16, ground + Wheel + Body), Ink.Grey, 1.4, Closed: true),
        };
        for (int g = 0; g < gaps.Length; g++)
        {
            double low = ground - 12;
            parts.Add(new Stroke("spacing", [new(x[g], low), new(x[g + 1], low)], Ink.Grey, 1, vehicle.Train.Gaps[g].Varies ? Dash.Dashed : Dash.Solid));
            parts.AddRange(((double[])[x[g], x[g + 1]]).Select(e => new Stroke("spacing", [new(e, low - 5), new(e, low + 5)], Ink.Grey, 1)));
            parts.Add(new Text("spacing", new(middles[g], low - 13 - (Row * gapRows[g])), gaps[g], Size, Ink.Black, OnPaper: true));
        }

        for (int a = 0; a < x.Length; a++)
        {
            double foot = ground + Wheel + Body, head = foot + Arrow + (Row * loadRows[a]);
            parts.Add(new Mark("axle", new(x[a], ground + (Wheel / 2)), MarkShape.Circle, Wheel, Ink.Black, Filled: true));
            parts.Add(new Stroke("axle load", [new(x[a], foot + 8), new(x[a], head)], Ink.Black, 2));
            parts.Add(new Area("axle load", [new(x[a], foot), new(x[a] - 5, foot + 11), new(x[a] + 5, foot + 11)], Ink.Black));
        }

        parts.AddRange(loads.Select((l, a) => new Text("axle load", new(x[a], ground + Wheel + Body + Arrow + 9 + (Row * loadRows[a])), l, Size, Ink.Black, OnPaper: true)));
        return new Drawing(0, 0, Width, top, 1, 1, parts);
    }

    /// <summary>Draws a vehicle on tracks.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="units">Units shown.</param>
    public static Drawing Of(TrackedVehicle vehicle, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(units);
        double scale = Math.Min(MostPerMetre, (Width - (2 * Border)) / vehicle.Length), half = vehicle.Length * scale / 2, middle = Width / 2, ground = 40;
        return new Drawing(0, 0, Width, 132, 1, 1,
        [
            new Stroke("ground", [new(8, ground), new(Width - 8, ground)], Ink.Grey, 1.4),
            new Stroke("tracks", Rectangle(middle - half, ground, middle + half, ground + 22), Ink.Black, 2.4, Closed: true),
            new Stroke("vehicle", Rectangle(middle - (half * 0.9), ground + 22, middle + (half * 0.9), ground + 52), Ink.Grey, 1.4, Closed: true),
            new Text("weight", new(middle, ground + 70), $"{Figures.Force(vehicle.Weight, units)} on two tracks", Size, Ink.Black),
            new Stroke("length", [new(middle - half, ground - 12), new(middle + half, ground - 12)], Ink.Grey, 1),
            .. ((double[])[middle - half, middle + half]).Select(e => new Stroke("length", [new(e, ground - 17), new(e, ground - 7)], Ink.Grey, 1)),
            new Text("length", new(middle, ground - 26), Figures.Length(vehicle.Length, units), Size, Ink.Black),
        ]);
    }

    // A gap that varies is drawn at its least, and both its ends are written.
    private static IEnumerable<double> Stations(AxleTrain train)
    {
        double at = 0;
        yield return at;
        foreach (AxleGap gap in train.Gaps)
        {
            at += gap.Least;
            yield return at;
        }
    }

    private static string Spacing(AxleGap gap, DisplayUnits units) =>
        gap.Varies ? $"{Figures.LengthNumber(gap.Least, units)} to {Figures.Length(gap.Most, units)}" : Figures.Length(gap.Least, units);

    // Each text in the first row in which it stands clear of the one before it.
    private static int[] Rows(double[] at, string[] texts)
    {
        var ends = new List<double>();
        var rows = new int[texts.Length];
        for (int t = 0; t < texts.Length; t++)
        {
            double half = (Lettering.Width(texts[t], Size) / 2) + 4;
            int row = ends.FindIndex(e => e <= at[t] - half);
            if (row < 0)
            {
                row = ends.Count;
                ends.Add(0);
            }

            ends[row] = at[t] + half;
            rows[t] = row;
        }

        return rows;
    }

    private static DrawingPoint[] Rectangle(double left, double low, double right, double high) => [new(left, low), new(right, low), new(right, high), new(left, high)];
}
