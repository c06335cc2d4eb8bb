using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How wheel lines across the deck act on a floorbeam: each with its ordinate.</summary>
internal static class AcrossTelling
{
    /// <summary>The wheel lines on a floorbeam that spans simply between the trusses, and their sum for one vehicle's reaction, that of a vehicle in the next lane apart; nothing where no wheels are told.</summary>
    /// <param name="place">The placement, whose moment is that of the vehicle rated.</param>
    /// <param name="row">The row.</param>
    /// <param name="spacing">Distance between the trusses [m].</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<ResultBlock> Of(AcrossPlacement place, PartRow row, double spacing, DisplayUnits units)
    {
        if (place.Wheels.Count == 0)
        {
            yield break;
        }

        var beam = new SimpleSpan(spacing);
        yield return new ResultBlock.Paragraph($"A wheel line at a from that truss bends the section at x = {Told.Length(place.Section, units)} of the span L = {Told.Length(spacing, units)} by a·(L − x)/L for each unit on it, by x·(L − a)/L where it stands beyond the section. Each bears half of its vehicle's reaction:");
        yield return Wheels(place, row, Quantity.Length, w => beam.MomentOrdinate(place.Section, w), []);
    }

    /// <summary>The wheel lines as a table.</summary>
    /// <param name="place">The placement.</param>
    /// <param name="row">The row.</param>
    /// <param name="quantity">What an ordinate is: a length of a moment, a number of anything else.</param>
    /// <param name="ordinate">The ordinate where a wheel line stands.</param>
    /// <param name="before">What an ordinate is made of, a column each.</param>
    public static ResultBlock.Grid Wheels(AcrossPlacement place, PartRow row, Quantity quantity, Func<double, double> ordinate, IReadOnlyList<(ResultColumn Column, Func<double, object?> Of)> before)
    {
        double[] brings = [.. place.Wheels.Select(w => place.Presence * ordinate(w) / 2)];

        // Of two different vehicles either may be on the left.
        bool isApart = row.Beside is not null && place.Wheels.Count == 4;
        bool ownFirst = !isApart || Math.Abs(brings[0] + brings[1] - place.Moment) <= Math.Abs(brings[2] + brings[3] - place.Moment);
        string Whose(int i) => !isApart || i < 2 == ownFirst ? row.Vehicle.Name : row.Beside!.Vehicle.Name;
        return new ResultBlock.Grid(new ResultTable(
            [
                new("wheel line"), new("of"), new("a", Quantity.Length), .. before.Select(b => b.Column), new("ordinate", quantity, 4),
                new($"half, times presence {place.Presence.ToString("0.00##", CultureInfo.InvariantCulture)}", quantity, 4),
            ],
            [
                .. place.Wheels.Select((w, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), Whose(i), w, .. before.Select(b => b.Of(w)), ordinate(w), brings[i]]),
                .. Enumerable.Range(0, brings.Length).GroupBy(Whose).Select(of => (IReadOnlyList<object?>)["sum", of.Key, null, .. before.Select(_ => (object?)null), null, of.Sum(i => brings[i])]),
            ]));
    }
}
