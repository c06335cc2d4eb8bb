namespace SpanRater.Files;

/// <summary>A question with what was answered and what that is worth.</summary>
/// <param name="Key">The question and its key.</param>
/// <param name="Answer">The answer; null where there is none.</param>
/// <param name="Mark">Its mark; null where there is no answer.</param>
public sealed record MarkedAnswer(KeyEntry Key, LearnerAnswer? Answer, AnswerMark? Mark);

/// <summary>Answers marked against a key.</summary>
/// <param name="Answers">One a question, in the order of the key.</param>
public sealed record MarkedExercise(IReadOnlyList<MarkedAnswer> Answers)
{
    /// <summary>Reads answers and key, and marks; null with findings where either cannot be used.</summary>
    /// <param name="answersPath">The answers.</param>
    /// <param name="keyPath">The key.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static MarkedExercise? Read(string answersPath, string keyPath, FindingList findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string? keyText = TextFile.Read(keyPath, keyPath, findings), text = TextFile.Read(answersPath, answersPath, findings);
        if (keyText is null || text is null || ExerciseKey.Read(keyText, keyPath, findings) is not { } key || ExerciseAnswers.Read(text, answersPath, key, findings) is not { } answers)
        {
            return null;
        }

        return new MarkedExercise([.. key.Select(entry => Marked(entry, answers.FirstOrDefault(a => a.Question == entry.Question)))]);
    }

    private static MarkedAnswer Marked(KeyEntry entry, LearnerAnswer? answer) =>
        new(entry, answer, answer is null ? null : Marking.Of(answer.Value, answer.Rounding, entry.Value, entry.Kind != "ordinate", entry.Mistakes));
}
