namespace SpanRater.Files;

/// <summary>A question of a key.</summary>
/// <param name="Question">Its number.</param>
/// <param name="Quantity">What it asks for, in words.</param>
/// <param name="Kind">reaction, force, ordinate, largest tension or largest compression.</param>
/// <param name="Value">The right value [N; - for an ordinate].</param>
/// <param name="Unit">Its unit as the sheet has it; empty for an ordinate.</param>
/// <param name="Line">Number of the line of key.md that answers it; null where the key does not say.</param>
/// <param name="Mistakes">What the usual mistakes give.</param>
public sealed record KeyEntry(string Question, string Quantity, string Kind, double Value, string Unit, int? Line, IReadOnlyList<MistakenValue> Mistakes);

/// <summary>key.csv, read.</summary>
internal static class ExerciseKey
{
    private static readonly TableColumn[] Columns =
    [
        new("question", Required: true), new("quantity", Required: true), new("kind", Required: true), new("value", Quantity.Number, Required: true),
        new("unit", Required: true), new("line", Quantity.Number), new("mistake", Required: true), new("at"),
    ];

    private static readonly string[] Kinds = ["reaction", "force", "ordinate", "largest tension", "largest compression"];

    /// <summary>The questions of a key; null where it cannot be used.</summary>
    public static IReadOnlyList<KeyEntry>? Read(string text, string file, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var entries = new List<KeyEntry>();
        foreach (TableRow row in table.Rows)
        {
            string? question = row.Required("question");
            double? value = row.Required("value") is null ? null : row.Value("value");
            (double? size, string? wrong) = SizeOf(row["unit"].Text);
            if (wrong is not null)
            {
                findings.Error(row["unit"].Where, wrong);
            }

            if (question is null || value is null || size is null)
            {
                continue;
            }

            int index = entries.FindIndex(e => e.Question == question);
            if (row["mistake"].IsBlank)
            {
                if (index >= 0)
                {
                    findings.Error(row["question"].Where, $"question {question} is there twice: each has one row without a mistake.");
                }
                else if (!Kinds.Contains(row["kind"].Text))
                {
                    findings.Error(row["kind"].Where, $"kind \"{row["kind"].Text}\": write {string.Join(", ", Kinds[..^1])} or {Kinds[^1]}.");
                }
                else
                {
                    entries.Add(new KeyEntry(question, row["quantity"].Text, row["kind"].Text, value.Value * size.Value, row["unit"].Text, (int?)row.Value("line"), []));
                }
            }
            else if (ExerciseWords.FindMistake(row["mistake"].Text) is not { } mistake)
            {
                findings.Error(row["mistake"].Where, $"unknown mistake \"{row["mistake"].Text}\".{NearestName.Question(row["mistake"].Text, ExerciseWords.MistakeNames)} The mistakes are: {string.Join(", ", ExerciseWords.MistakeNames)}.");
            }
            else if (index < 0)
            {
                findings.Error(row["question"].Where, $"question {question} has a mistake before its right value: put the row without a mistake first.");
            }
            else
            {
                string? at = row["at"].IsBlank ? null : row["at"].Text;
                entries[index] = entries[index] with { Mistakes = [.. entries[index].Mistakes, new MistakenValue(mistake, at, value.Value * size.Value)] };
            }
        }

        return table.HasBrokenRows || findings.HasErrors ? null : entries;
    }

    private static (double? Size, string? Wrong) SizeOf(string unit) =>
        unit.Length == 0 ? (1, null)
        : Unit.Find(unit) is { Quantity: Quantity.Force } found ? (found.Size, null)
        : (null, $"\"{unit}\": {QuantityText.WrongUnit(unit, Quantity.Force)}");
}
