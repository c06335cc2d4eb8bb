using System.Globalization;
using System.Text;

namespace SpanRater.Files;

/// <summary>Writes the tables of an exercise: the blank answers, the key, and the train.</summary>
public static class ExerciseTables
{
    /// <summary>The blank form that a learner fills in.</summary>
    public const string AnswersFile = "answers.csv";

    /// <summary>The key that answers are marked by.</summary>
    public const string KeyFile = "key.csv";

    /// <summary>The train's name in the bridge folder.</summary>
    public const string TrainName = "Exercise train";

    private const string HowToAnswer =
        "# Put a number under answer. Under sense write tension or compression; or leave it blank and write compression with a minus sign. An upward reaction is positive.\n";

    /// <summary>answers.csv: a row a question, the answer blank.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="units">Units of the exercise.</param>
    public static byte[] Answers(Exercise exercise, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(units);
        byte[] table = BridgeFolderWriter.Table(
            ["question", "quantity", "answer", "unit", "sense"],
            exercise.Items.Select((item, i) => (IReadOnlyList<string>)[Number(i), ExerciseWords.QuantityOf(item.Question), "", UnitOf(item.Question, units), ""]));
        return [.. Encoding.UTF8.GetBytes(HowToAnswer), .. table];
    }

    /// <summary>key.csv: a row a question with its right value, then a row a mistake with what it gives.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="units">Units of the exercise.</param>
    public static byte[] Key(Exercise exercise, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(units);
        var rows = new List<IReadOnlyList<string>>();
        for (int i = 0; i < exercise.Items.Count; i++)
        {
            ExerciseItem item = exercise.Items[i];
            string unit = UnitOf(item.Question, units), line = ExerciseWords.KeyLineOf(exercise, item).ToString(CultureInfo.InvariantCulture);
            rows.Add([Number(i), ExerciseWords.QuantityOf(item.Question), ExerciseWords.KindOf(item.Question), Value(item.Key), unit, line, "", ""]);
            rows.AddRange(item.Mistakes.Select(m => (IReadOnlyList<string>)[Number(i), "", "", Value(m.Value), unit, "", ExerciseWords.NameOf(m.Mistake), m.Where ?? ""]));

            string Value(double si) => ShortestFigure.Of(si, unit.Length == 0 ? Plain : Unit.Find(unit)!);
        }

        return BridgeFolderWriter.Table(["question", "quantity", "kind", "value", "unit", "line", "mistake", "at"], rows);
    }

    /// <summary>vehicles.csv of the bridge folder: the train.</summary>
    /// <param name="train">A train whose gaps do not vary.</param>
    /// <param name="units">Units of the exercise.</param>
    public static byte[] Vehicles(AxleTrain train, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentNullException.ThrowIfNull(units);
        Unit length = BridgeFolderWriter.LengthUnit(units), force = BridgeFolderWriter.ForceUnit(units);
        return BridgeFolderWriter.Table(
            ["vehicle", "class", $"load [{force.Symbol}]", $"spacing [{length.Symbol}]", "source"],
            train.Loads.Select((load, i) => (IReadOnlyList<string>)
            [
                TrainName, i == 0 ? "farm" : "", ShortestFigure.Of(load, force), i == 0 ? "" : ShortestFigure.Of(train.Gaps[i - 1].Least, length), i == 0 ? "invented for an exercise" : "",
            ]));
    }

    /// <summary>The unit of an answer; empty for an ordinate.</summary>
    /// <param name="question">The question.</param>
    /// <param name="units">Units of the exercise.</param>
    public static string UnitOf(ExerciseQuestion question, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(units);
        return question.Quantity == AskedQuantity.Ordinate ? "" : units.Symbol(Quantity.Force);
    }

    private static Unit Plain { get; } = new("", Quantity.Number, 1);

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}
