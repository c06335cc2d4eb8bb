namespace SpanRater.Files;

/// <summary>The words for exercises, their questions and the usual mistakes.</summary>
public static class ExerciseWords
{
    private static readonly (Mistake Mistake, string Name)[] Names =
    [
        (Mistake.SignFlipped, "sign turned round"),
        (Mistake.SenseFlipped, "tension for compression"),
        (Mistake.SineForCosine, "sine for cosine everywhere"),
        (Mistake.SineForCosineAtJoint, "sine for cosine at the joint"),
        (Mistake.SineForCosineOfMember, "sine for cosine of the member"),
        (Mistake.ReactionLeftOut, "reaction left out"),
        (Mistake.OtherReaction, "other reaction"),
        (Mistake.OtherPanelPoint, "other panel point"),
        (Mistake.OneDirectionOnly, "one direction only"),
        (Mistake.AllAxlesAtPeak, "all axles at the peak"),
        (Mistake.Thousandfold, "thousandfold"),
        (Mistake.KipForKilonewton, "kip for kN"),
    ];

    /// <summary>Every mistake by the name that a key has for it.</summary>
    public static IEnumerable<string> MistakeNames => Names.Select(n => n.Name);

    /// <summary>The name that a key has for a mistake.</summary>
    /// <param name="mistake">The mistake.</param>
    public static string NameOf(Mistake mistake) => Names.First(n => n.Mistake == mistake).Name;

    /// <summary>The mistake of that name, or null.</summary>
    /// <param name="name">The name.</param>
    public static Mistake? FindMistake(string name) => Names.FirstOrDefault(n => n.Name == name) is { Name: not null } found ? found.Mistake : null;

    /// <summary>What a mistake looks like: "the reaction at L0 left out".</summary>
    /// <param name="mistake">The mistake.</param>
    public static string Looks(MistakenValue mistake)
    {
        ArgumentNullException.ThrowIfNull(mistake);
        return mistake.Mistake switch
        {
            Mistake.SignFlipped => "the sign turned round",
            Mistake.SenseFlipped => "tension taken for compression, or compression for tension",
            Mistake.SineForCosine => "sine and cosine exchanged at every joint",
            Mistake.SineForCosineAtJoint => $"sine and cosine exchanged at joint {mistake.Where}",
            Mistake.SineForCosineOfMember => "sine and cosine of this member exchanged",
            Mistake.ReactionLeftOut => $"the reaction at {mistake.Where} left out of the equations",
            Mistake.OtherReaction => "the reaction of the other support",
            Mistake.OtherPanelPoint => $"the ordinate at {mistake.Where}",
            Mistake.OneDirectionOnly => "the train driven in one direction only",
            Mistake.AllAxlesAtPeak => "every axle counted with the largest ordinate",
            Mistake.Thousandfold => "a factor of a thousand: N for kN, or lb for kip",
            Mistake.KipForKilonewton => "kip and kN mixed",
            _ => throw new ArgumentOutOfRangeException(nameof(mistake), mistake, "Every mistake has its words."),
        };
    }

    /// <summary>easy, medium or hard.</summary>
    /// <param name="level">The level.</param>
    public static string Of(ExerciseLevel level) => level switch
    {
        ExerciseLevel.Easy => "easy",
        ExerciseLevel.Medium => "medium",
        _ => "hard",
    };

    /// <summary>The kind of a question, as a key has it.</summary>
    /// <param name="question">The question.</param>
    public static string KindOf(ExerciseQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return question.Quantity switch
        {
            AskedQuantity.Reaction => "reaction",
            AskedQuantity.MemberForce => "force",
            AskedQuantity.Ordinate => "ordinate",
            _ => $"largest {Words.Of(question.Sense!.Value)}",
        };
    }

    /// <summary>What a question asks for: "force in U1L2".</summary>
    /// <param name="question">The question.</param>
    public static string QuantityOf(ExerciseQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return question.Quantity switch
        {
            AskedQuantity.Reaction => $"upward reaction at {question.Joint}",
            AskedQuantity.MemberForce => $"force in {question.Member}",
            AskedQuantity.Ordinate => $"influence ordinate of {question.Member} at {question.Joint}",
            _ => $"largest {Words.Of(question.Sense!.Value)} in {question.Member} under the train",
        };
    }

    /// <summary>The number of the line of the key where a question is answered.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="item">The question.</param>
    public static int KeyLineOf(Exercise exercise, ExerciseItem item)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(item);
        if (exercise.Level != ExerciseLevel.Hard)
        {
            int member = item.Question.Member is { } name ? exercise.Truss.FindMember(name)!.Value : -1;
            return item.Question.Quantity == AskedQuantity.Reaction ? 1 : 2 + exercise.Steps.TakeWhile(s => !s.Found.Contains(member)).Count();
        }

        // A line for the influence line of each member, then one for each peak.
        string[] members = [.. exercise.Items.Select(i => i.Question.Member!).Distinct()];
        return item.Question.Quantity == AskedQuantity.Ordinate
            ? 1 + Array.IndexOf(members, item.Question.Member!)
            : 1 + members.Length + exercise.Items.Where(i => i.Question.Quantity == AskedQuantity.Peak).TakeWhile(i => i != item).Count();
    }
}
