using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How wheel lines across the deck bend a floorbeam that spans simply between the trusses: each with its ordinate.</summary>
internal static class AcrossTelling
{
    /// <summary>The wheel lines and their sum for one vehicle's reaction, that of a vehicle in the next lane apart; nothing where no wheels are told.</summary>
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
        double[] brings = [.. place.Wheels.Select(w => place.Presence * beam.MomentOrdinate(place.Section, w) / 2)];

        // Of two different vehicles either may be on the left.
        bool isApart = row.Beside is not null && place.Wheels.Count == 4;
        bool ownFirst = !isApart || Math.Abs(brings[0] + brings[1] - place.Moment) <= Math.Abs(brings[2] + brings[3] - place.Moment);
        string Whose(int i) => !isApart || i < 2 == ownFirst ? row.Vehicle.Name : row.Beside!.Vehicle.Name;
        string length = units.Symbol(Quantity.Length);
        yield return new ResultBlock.Paragraph($"A wheel line at a from that truss bends the section at x = {Told.Length(place.Section, units)} of the span L = {Told.Length(spacing, units)} by a·(L − x)/L for each unit on it, by x·(L − a)/L where it stands beyond the section. Each bears half of its vehicle's reaction:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("wheel line"), new("of"), new("a", Quantity.Length), new("ordinate", Quantity.Length, 4), new($"half, times presence {place.Presence.ToString("0.00##", CultureInfo.InvariantCulture)}", Quantity.Length, 4)],
            [
                .. place.Wheels.Select((w, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), Whose(i), w, beam.MomentOrdinate(place.Section, w), brings[i]]),
                .. Enumerable.Range(0, brings.Length).GroupBy(Whose).Select(of => (IReadOnlyList<object?>)["sum", of.Key, null, null, of.Sum(i => brings[i])]),
            ]));
    }
}
