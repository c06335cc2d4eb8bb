using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The key of an exercise: numbered lines that show the work, then the answers.</summary>
public static class ExerciseKeySheet
{
    /// <summary>Makes the page.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="units">Its units.</param>
    public static ResultPage Of(Exercise exercise, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(units);
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"Key to {ExerciseSheet.TitleOf(exercise)}", 1),
            new ResultBlock.Paragraph(string.Create(
                CultureInfo.InvariantCulture,
                $"Found joint by joint, and a second time from the equations of the whole truss at once; the two agree within {ForceSolution.RouteLimit:0e+0}. Forces are taken as tension until the sign says otherwise: a negative result is compression. Numbers are shown rounded and carried on unrounded.")),
        };
        blocks.AddRange(exercise.Level == ExerciseLevel.Hard ? MovingKey.Lines(exercise) : new StaticKey(exercise, units).Lines());
        blocks.Add(new ResultBlock.Heading("Answers", 2));
        blocks.Add(new ResultBlock.Grid(new ResultTable(
            [new("question"), new("quantity"), new("answer"), new("line")],
            [
                .. exercise.Items.Select((item, i) => (IReadOnlyList<object?>)
                [
                    (i + 1).ToString(CultureInfo.InvariantCulture),
                    ExerciseWords.QuantityOf(item.Question),
                    Answer(item, units),
                    string.Create(CultureInfo.InvariantCulture, $"K{ExerciseWords.KeyLineOf(exercise, item)}"),
                ]),
            ])));
        return new ResultPage(blocks, new ResultTable([], []), [], _ => { });
    }

    private static string Answer(ExerciseItem item, DisplayUnits units) => item.Question.Quantity switch
    {
        AskedQuantity.Ordinate => ResultTable.Figure(item.Key, 4),
        AskedQuantity.Reaction => $"{ResultTable.Figure(units.From(Quantity.Force, item.Key), 2)} {units.Symbol(Quantity.Force)}",
        _ => Words.ForceInWords(item.Key, units),
    };
}
