using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The moment or shear of a pin that governs: where along the pin, in which direction, and the sum of what the bars push.</summary>
internal static class PinTelling
{
    /// <summary>The place, the direction, the pushes and their sum.</summary>
    public static IEnumerable<ResultBlock> Of(ConnectionResistance resistance, double direction, PartRow row, SheetUnits sheet)
    {
        bool isShear = row.ActsAs == PartEffect.Shear;
        yield return new ResultBlock.Paragraph($"Worst {resistance.At}, along {SheetUnits.Plain(direction * 180 / Math.PI)}° from horizontal, counter-clockwise as seen in elevation: of the directions all round the pin, tried every 5° and closed in on, that is the one along which the factor is lowest. The influence line is that of the sum of the bars' forces in that direction{(isShear ? "" : ", each times its distance along the pin")}.");
        Peak? peak = row.LiveParts is [PartLive.InTruss { Shared.Part: LivePart.Axles { Peak: var at } }] ? at : null;
        string live = peak is null ? "" : $"; live is {row.Vehicle.Name} whole on one truss where this is worst";
        yield return new ResultBlock.Paragraph($"What each bar pushes the pin with, and whereto, in degrees from horizontal, counter-clockwise as seen in elevation: dead is DC and DW together, without load factors{live}. Along: its part in the direction above, push · cos(whereto − direction).");
        double[] dead = [.. resistance.Pushes.Select(p => Along((p.Components.Right + p.Wearing.Right, p.Components.Up + p.Wearing.Up), direction))];
        double[]? lives = peak is null ? null : [.. resistance.Pushes.Select(p => Along(p.Of(peak.Axles), direction))];
        double?[] arms = [.. Enumerable.Range(0, resistance.Pushes.Count).Select(i => Arm(resistance, i, isShear))];
        yield return new ResultBlock.Grid(new ResultTable(
            [
                new("bar"), new("on the pin"), new("dead", Quantity.Force), new("whereto [°]"), new("dead along", Quantity.Force, 3),
                .. peak is null ? [] : (ResultColumn[])[new("live", Quantity.Force), new("whereto [°]"), new("live along", Quantity.Force, 3)],
                .. isShear ? [] : (ResultColumn[])[new("arm", Quantity.Deflection, 3)],
            ],
            [
                .. resistance.Pushes.Select((p, i) => (IReadOnlyList<object?>)
                [
                    (i + 1).ToString(CultureInfo.InvariantCulture), ((PinConnection)resistance.Connection).Packing[i].Name,
                    .. Push((p.Components.Right + p.Wearing.Right, p.Components.Up + p.Wearing.Up)), dead[i],
                    .. peak is null ? [] : (object?[])[.. Push(p.Of(peak.Axles)), lives![i]],
                    .. isShear ? [] : (object?[])[arms[i]],
                ]),
            ]));
        if (resistance.Bar is not { } bar)
        {
            yield break;
        }

        string which = isShear ? $"Sum of \"along\" over the bars 1 to {bar + 1}"
            : $"Sum of \"along\" times arm, the distance to the middle of bar {bar + 1}, over the bars {(resistance.IsFromLast ? "after" : "before")} it";
        string sum = $"{which}: dead {Value(Sum(dead, arms), isShear, sheet)}{(lives is null ? "" : $", live {Value(Sum(lives, arms), isShear, sheet)}")}";
        yield return new ResultBlock.Paragraph($"{sum}. A sum below zero points the other way.");
    }

    // Distance from the bar to the place of the moment [m], 1 of a bar that counts in a shear; null of a bar that does not count.
    private static double? Arm(ConnectionResistance resistance, int i, bool isShear)
    {
        if (resistance.Bar is not { } bar)
        {
            return null;
        }

        IReadOnlyList<double> middles = ((PinConnection)resistance.Connection).Middles;
        return isShear ? (i <= bar ? 1 : null)
            : resistance.IsFromLast ? (i > bar ? middles[i] - middles[bar] : null)
            : i < bar ? middles[bar] - middles[i] : null;
    }

    private static double Sum(double[] along, double?[] arms) => along.Zip(arms, (a, arm) => a * (arm ?? 0)).Sum();

    private static double Along((double Right, double Up) push, double direction) => (push.Right * Math.Cos(direction)) + (push.Up * Math.Sin(direction));

    private static string Value(double value, bool isShear, SheetUnits sheet) => isShear ? sheet.Force(value) : sheet.Moment(value);

    private static object?[] Push((double Right, double Up) push)
    {
        double force = double.Hypot(push.Right, push.Up), angle = Math.Atan2(push.Up, push.Right) * 180 / Math.PI;
        return [force, force < 1 ? "" : ResultTable.Figure(angle < -0.005 ? angle + 360 : angle, 1)];
    }
}
