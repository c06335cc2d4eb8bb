using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The work of a key for a train: the influence line of each asked member, then where the train stands for each peak.</summary>
internal static class MovingKey
{
    /// <summary>The numbered lines.</summary>
    public static List<ResultBlock> Lines(Exercise exercise)
    {
        var blocks = new List<ResultBlock>();
        int line = 0;
        foreach ((string member, IReadOnlyList<double> ordinates) in exercise.KeyOrdinates)
        {
            blocks.Add(new ResultBlock.Heading(string.Create(CultureInfo.InvariantCulture, $"K{++line} Influence line of {member}"), 3));
            blocks.Add(new ResultBlock.Paragraph($"A unit load at each panel point in turn, straight between them. Tension is positive. Why it looks so: spanrater influence bridge --explain {member}, in this folder."));
            blocks.Add(new ResultBlock.Grid(new ResultTable(
                [new("panel point"), new("station", Quantity.Length), new("ordinate", Quantity.Number, 4)],
                [.. exercise.Truss.PanelPoints.Select((p, i) => (IReadOnlyList<object?>)[exercise.Truss.Joints[p].Name, exercise.Truss.Joints[p].X, Clean(ordinates[i])])])));
        }

        foreach (ExerciseItem item in exercise.Items.Where(i => i.Question.Quantity == AskedQuantity.Peak))
        {
            TrainPlacement placement = item.Placement!;
            blocks.Add(new ResultBlock.Heading(string.Create(CultureInfo.InvariantCulture, $"K{++line} {Capital(ExerciseWords.QuantityOf(item.Question))}"), 3));
            blocks.Add(new ResultBlock.Paragraph($"Of all positions with an axle on a panel point, in both directions, this one gives most. The train drives to the {Words.Of(placement.Direction)}."));
            blocks.Add(new ResultBlock.Grid(new ResultTable(
                [new("axle, from the front"), new("load", Quantity.Force), new("station", Quantity.Length), new("ordinate", Quantity.Number, 4), new("adds", Quantity.Force)],
                [
                    .. placement.Stations.Select((x, i) => (IReadOnlyList<object?>)
                        [(i + 1).ToString(CultureInfo.InvariantCulture), exercise.Train!.Loads[i], x, Clean(placement.Ordinates[i]), exercise.Train.Loads[i] * placement.Ordinates[i]]),
                    ["sum", exercise.Train!.Weight, null, null, placement.Force],
                ])));
        }

        return blocks;
    }

    private static double Clean(double ordinate) => Math.Abs(ordinate) < 1e-12 ? 0 : ordinate;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
