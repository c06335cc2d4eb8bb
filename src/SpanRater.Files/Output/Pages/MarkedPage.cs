using System.Globalization;

namespace SpanRater.Files;

/// <summary>What <c>exercise check</c> says: which answers are right, and what the wrong ones look like.</summary>
public static class MarkedPage
{
    private static readonly ResultColumn[] Columns = [new("question"), new("quantity"), new("answer"), new("mark"), new("it looks like"), new("compare")];

    /// <summary>Makes the page.</summary>
    /// <param name="marked">The marked answers.</param>
    public static ResultPage Of(MarkedExercise marked)
    {
        ArgumentNullException.ThrowIfNull(marked);
        int right = marked.Answers.Count(a => a.Mark?.IsRight == true), none = marked.Answers.Count(a => a.Answer is null);
        IReadOnlyList<object?>[] rows = [.. marked.Answers.Select(a => (IReadOnlyList<object?>)[a.Key.Question, a.Key.Quantity, a.Answer?.Text ?? "", StatusOf(a), LooksLike(a), Compare(a)])];
        string tolerance = string.Create(
            CultureInfo.InvariantCulture,
            $"Right is what lies within {100 * Marking.Part:0.#}% of the key, or within half a unit of the last digit given where that is more (but never more than {100 * Marking.MostRounding:0}%).");
        return new ResultPage(
            [
                new ResultBlock.Heading("Answers marked"),
                new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"{right} of {marked.Answers.Count} right, {marked.Answers.Count - right - none} wrong, {none} not answered."), Strong: true),
                new ResultBlock.Grid(new ResultTable(Columns, rows)),
                new ResultBlock.Paragraph(tolerance + " What a wrong answer looks like was found by solving again with that mistake in it; where several mistakes give the same number, all that fit are named."),
            ],
            new ResultTable(Columns, rows),
            [tolerance],
            json =>
            {
                json.WriteNumber("right", right);
                json.WriteNumber("wrong", marked.Answers.Count - right - none);
                json.WriteNumber("notAnswered", none);
                json.WriteStartArray("answers");
                foreach (MarkedAnswer answer in marked.Answers)
                {
                    Write(json, answer);
                }

                json.WriteEndArray();
            });
    }

    private static void Write(System.Text.Json.Utf8JsonWriter json, MarkedAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("question", answer.Key.Question);
        json.WriteString("quantity", answer.Key.Quantity);
        json.WriteString("mark", answer.Answer is null ? "notAnswered" : answer.Mark!.IsRight ? "right" : "wrong");
        json.WriteStartArray("looksLike");
        foreach (FittingMistake fit in answer.Mark?.Fits ?? [])
        {
            json.WriteStartArray();
            foreach (MistakenValue mistake in fit.Mistakes)
            {
                json.WriteStartObject();
                json.WriteString("mistake", ExerciseWords.NameOf(mistake.Mistake));
                json.WriteString("at", mistake.Where);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        if (answer.Key.Line is { } line)
        {
            json.WriteNumber("keyLine", line);
        }

        json.WriteEndObject();
    }

    private static string StatusOf(MarkedAnswer answer) => answer.Answer is null ? "not answered" : answer.Mark!.IsRight ? "right" : "wrong";

    private static string LooksLike(MarkedAnswer answer)
    {
        if (answer.Mark is not { IsRight: false } mark)
        {
            return "";
        }

        string[] fits = [.. mark.Fits.Select(f => string.Join(", and ", f.Mistakes.Select(ExerciseWords.Looks))).Distinct()];
        bool unsaid = answer.Answer!.SenseIsBlank && mark.Fits.Any(f => f.Mistakes.Any(m => m.Mistake == Mistake.SenseFlipped)) && answer.Answer.Value > 0;
        string remark = unsaid ? " (the sense is blank, so the number counts as tension)" : "";
        return fits.Length == 0 && Marking.IsNear(answer.Answer.Value, answer.Key.Value) ? $"near the key: numbers rounded on the way?{remark}"
            : fits.Length == 0 ? "none of the usual mistakes" : string.Join("; or ", fits) + remark;
    }

    private static string Compare(MarkedAnswer answer) =>
        answer.Mark is { IsRight: false } && answer.Key.Line is { } line ? string.Create(CultureInfo.InvariantCulture, $"key.md, line K{line}") : "";
}
