namespace SpanRater.Files;

/// <summary>An answer of a learner.</summary>
/// <param name="Question">Number of the question.</param>
/// <param name="Value">Signed value, tension and up positive [N; - for an ordinate].</param>
/// <param name="Rounding">Half a unit of its last digit [same].</param>
/// <param name="Text">As it was written, with unit and sense.</param>
/// <param name="SenseIsBlank">True where the sense was left blank.</param>
public sealed record LearnerAnswer(string Question, double Value, double Rounding, string Text, bool SenseIsBlank);

/// <summary>answers.csv, filled in.</summary>
internal static class ExerciseAnswers
{
    private static readonly TableColumn[] Columns =
        [new("question", Required: true), new("quantity"), new("answer", Quantity.Number, Required: true), new("unit", Required: true), new("sense")];

    /// <summary>The answers that are there; null where the table cannot be used.</summary>
    public static IReadOnlyList<LearnerAnswer>? Read(string text, string file, IReadOnlyList<KeyEntry> key, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var answers = new List<LearnerAnswer>();
        var seen = new List<string>();
        foreach (TableRow row in table.Rows)
        {
            if (row.Required("question") is not { } question)
            {
                continue;
            }

            if (key.FirstOrDefault(k => k.Question == question) is not { } entry)
            {
                findings.Error(row["question"].Where, $"there is no question {question}: the key has {string.Join(", ", key.Select(k => k.Question))}.");
                continue;
            }

            if (seen.Contains(question))
            {
                findings.Error(row["question"].Where, $"question {question} is answered twice: keep one row.");
                continue;
            }

            seen.Add(question);
            if (!row["answer"].IsBlank && Answer(row, question, entry, findings) is { } answer)
            {
                answers.Add(answer);
            }
        }

        return table.HasBrokenRows || findings.HasErrors ? null : answers;
    }

    private static LearnerAnswer? Answer(TableRow row, string question, KeyEntry entry, FindingList findings)
    {
        if (UnitBehind(row["answer"].Text) is { } behind)
        {
            findings.Error(row["answer"].Where, $"\"{row["answer"].Text}\" has its unit behind it: write the number alone here, and {behind} under unit.");
            return null;
        }

        double? number = row.Value("answer");
        double? size = SizeOf(row["unit"], entry, findings);
        double? sign = SignOf(row["sense"], entry, findings);
        if (number is not { } value || size is null || sign is null)
        {
            return null;
        }

        if (value < 0 && sign > 0)
        {
            findings.Error(row["answer"].Where, $"\"{row["answer"].Text}\" is below zero and its sense is {row["sense"].Text}: write the size alone, or leave the sense blank.");
            return null;
        }

        // A size with the sense "compression" may carry the minus sign as well; a peak's sense stands in the question.
        bool isBlank = row["sense"].IsBlank;
        double signed = sign == 0 ? (value > 0 && entry.Kind == "largest compression" ? -value : value) : sign.Value * Math.Abs(value);
        string words = string.Join(' ', new[] { row["answer"].Text, row["unit"].Text, row["sense"].Text }.Where(t => t.Length > 0));
        return new LearnerAnswer(question, signed * size.Value, HalfUnit(row["answer"].Text) * size.Value, words, isBlank);
    }

    // The unit of a force that follows a number in the same cell: kN in "170 kN"; null where there is none.
    private static string? UnitBehind(string text)
    {
        string behind = text.Trim().TrimStart("+-−0123456789.,".ToCharArray()).Trim();
        return behind.Length > 0 && behind.Length < text.Trim().Length && Unit.Find(behind) is { Quantity: Quantity.Force } ? behind : null;
    }

    private static double? SizeOf(TableCell unit, KeyEntry entry, FindingList findings)
    {
        if (entry.Unit.Length == 0)
        {
            string[] parts = unit.Text.Split('/', StringSplitOptions.TrimEntries);
            bool isRatio = parts.Length == 2 && parts[0] == parts[1] && Unit.Find(parts[0]) is { Quantity: Quantity.Force };
            if (isRatio || unit.Text.ToUpperInvariant() is "" or "-" or "1" or "–" or "NONE")
            {
                return 1;
            }

            findings.Error(unit.Where, $"unit \"{unit.Text}\": an influence ordinate is a force per force and has no unit: clear it.");
            return null;
        }

        // KN and Kip are written for kN and kip often, and can mean nothing else.
        string spelling = string.Equals(unit.Text, entry.Unit, StringComparison.OrdinalIgnoreCase) ? entry.Unit : unit.Text;
        if (Unit.Find(spelling) is { Quantity: Quantity.Force } found)
        {
            return found.Size;
        }

        findings.Error(unit.Where, unit.IsBlank ? $"the answer has no unit: write {entry.Unit}, or the unit you worked in." : $"unit \"{unit.Text}\": {QuantityText.WrongUnit(unit.Text, Quantity.Force)}");
        return null;
    }

    // 1 or -1; 0 where it is left blank.
    private static double? SignOf(TableCell sense, KeyEntry entry, FindingList findings)
    {
        bool isReaction = entry.Kind == "reaction";
        double? sign = (sense.Text.ToUpperInvariant(), isReaction) switch
        {
            ("", _) => 0,
            ("TENSION" or "T" or "PULL", false) or ("UP", true) => 1,
            ("COMPRESSION" or "C" or "PUSH", false) or ("DOWN", true) => -1,
            _ => null,
        };
        if (sign is null)
        {
            findings.Error(sense.Where, $"sense \"{sense.Text}\": write {(isReaction ? "up or down" : "tension or compression")}, or leave it blank.");
        }

        return sign;
    }

    // Half of what the last digit stands for: 0.05 for "67.5", 0.5 for "67".
    private static double HalfUnit(string text)
    {
        int exponentAt = text.IndexOfAny(['e', 'E']);
        string digits = exponentAt < 0 ? text : text[..exponentAt];
        int exponent = exponentAt < 0 ? 0 : int.Parse(text[(exponentAt + 1)..], System.Globalization.CultureInfo.InvariantCulture);
        int mark = digits.IndexOfAny(['.', ',']);
        int decimals = mark < 0 ? 0 : digits.Length - mark - 1;
        return 0.5 * Math.Pow(10, exponent - decimals);
    }
}
