namespace SpanRater;

/// <summary>A mistake that fits a wrong answer.</summary>
/// <param name="Mistakes">The mistakes that together give the number: one, or two where no single one does.</param>
public sealed record FittingMistake(IReadOnlyList<MistakenValue> Mistakes);

/// <summary>What an answer is worth.</summary>
/// <param name="IsRight">True where it is the right value within the tolerance.</param>
/// <param name="Tolerance">How far it may be from the right value [N; - for an ordinate].</param>
/// <param name="Fits">For a wrong answer: every mistake that gives its number; empty where none is known.</param>
public sealed record AnswerMark(bool IsRight, double Tolerance, IReadOnlyList<FittingMistake> Fits);

/// <summary>Marks answers against the key, and recognises the usual mistakes by the numbers that they give.</summary>
public static class Marking
{
    /// <summary>An answer may be off by this part of the right value [-].</summary>
    public const double Part = 0.005;

    /// <summary>The rounding of the digits given excuses no more than this part of the right value [-].</summary>
    public const double MostRounding = 0.05;

    /// <summary>A wrong answer within this part of the right value is near it, as rounding on the way makes it [-].</summary>
    public const double NearPart = 0.02;

    /// <summary>An answer below this part of the right value is a zero, and no small number [-].</summary>
    private const double Zero = 1e-4;

    private const double Kip = 4_448.2216152605;

    private static readonly (Mistake Mistake, double Factor)[] Factors =
    [
        (Mistake.Thousandfold, 1000),
        (Mistake.Thousandfold, 0.001),
        (Mistake.KipForKilonewton, Kip / 1000),
        (Mistake.KipForKilonewton, 1000 / Kip),
    ];

    /// <summary>How far an answer may be from a value: half a per cent or half a unit of the last digit given, whichever is larger, the latter at most five per cent.</summary>
    /// <param name="value">The value.</param>
    /// <param name="rounding">Half a unit of the last digit given, in the same unit.</param>
    public static double Tolerance(double value, double rounding) => Math.Max(Part * Math.Abs(value), Math.Min(rounding, MostRounding * Math.Abs(value)));

    /// <summary>Whether an answer is as near the right value as rounding on the way brings one.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="right">The right value.</param>
    public static bool IsNear(double answer, double right) => Math.Abs(answer - right) <= NearPart * Math.Abs(right);

    /// <summary>Marks an answer.</summary>
    /// <param name="answer">The answer [N; - for an ordinate].</param>
    /// <param name="rounding">Half a unit of its last digit [same].</param>
    /// <param name="right">The right value [same].</param>
    /// <param name="isForce">True where units can have been mixed.</param>
    /// <param name="mistakes">What the usual mistakes give.</param>
    public static AnswerMark Of(double answer, double rounding, double right, bool isForce, IReadOnlyList<MistakenValue> mistakes)
    {
        ArgumentNullException.ThrowIfNull(mistakes);
        double tolerance = Tolerance(right, rounding);
        if (Math.Abs(answer - right) <= tolerance)
        {
            return new AnswerMark(true, tolerance, []);
        }

        FittingMistake[] single =
        [
            .. mistakes.Where(m => Is(m.Value)).Select(m => new FittingMistake([m])),
            .. Units(right).Where(m => Is(m.Value)).Select(m => new FittingMistake([m])),
        ];
        if (single.Length > 0)
        {
            return new AnswerMark(false, tolerance, single);
        }

        // Two at once: any of them with a wrong sense or a wrong unit.
        MistakenValue? turned = mistakes.FirstOrDefault(m => m.Mistake is Mistake.SenseFlipped or Mistake.SignFlipped);
        MistakenValue[] plain = [.. mistakes.Where(m => m != turned)];
        FittingMistake[] pairs =
        [
            .. plain.Where(m => turned is not null && m.Value != 0 && Is(-m.Value)).Select(m => new FittingMistake([m, turned!])),
            .. mistakes.SelectMany(m => Units(m.Value).Where(u => Is(u.Value)).Select(u => new FittingMistake([m, u]))),
        ];
        return new AnswerMark(false, tolerance, pairs);

        bool Is(double value) => Math.Abs(answer - value) <= (value == 0 ? Zero * Math.Abs(right) : Tolerance(value, rounding));

        IEnumerable<MistakenValue> Units(double value) =>
            isForce && value != 0 ? Factors.Select(f => new MistakenValue(f.Mistake, null, value * f.Factor)) : [];
    }
}
