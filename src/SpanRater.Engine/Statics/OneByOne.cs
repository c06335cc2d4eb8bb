namespace SpanRater;

/// <summary>
/// Chooses the equations of a free body so that each holds one unknown force alone, as a person does: a plain sum where that
/// is enough, else moments about the point where the other unknowns meet, else the axes turned.
/// </summary>
internal static class OneByOne
{
    /// <summary>A coefficient below this part of the largest possible one does not find its force.</summary>
    private const double TooSmall = 1e-6;

    /// <summary>The equations, in order; they may leave some unknowns.</summary>
    /// <param name="kind">What is cut free.</param>
    /// <param name="body">The free body.</param>
    /// <param name="unknowns">The unknown forces on its border.</param>
    public static List<RouteStage> Of(StepKind kind, FreeBody body, IReadOnlyList<int> unknowns)
    {
        var stages = new List<RouteStage>();
        var open = new List<int>(unknowns);
        while (open.Count > 0 && Next(Candidates(kind, body, unknowns, stages.Count == 0), body, open) is { } stage)
        {
            stages.Add(stage);
            open.Remove(stage.Forces[0]);
        }

        return stages;
    }

    /// <summary>The force that an equation finds where all but the open ones are known: the one open force in it; null where there is none or there are several.</summary>
    public static int? FoundBy(Balance balance, FreeBody body, IReadOnlyCollection<int> open)
    {
        BalanceTerm[] terms = [.. balance.Terms.Where(t => open.Contains(t.Force))];
        return terms is [var one] && Weight(one, balance, body) >= TooSmall ? one.Force : null;
    }

    /// <summary>How much of a force an equation holds, 1 at most for a sum [-].</summary>
    public static double Weight(BalanceTerm term, Balance balance, FreeBody body) =>
        Math.Abs(term.Coefficient) / (balance.Kind == BalanceKind.Moment ? body.Size : 1);

    // The first group in which an equation holds one open force alone; in it the equation that holds most of its force.
    private static RouteStage? Next(IEnumerable<IEnumerable<Balance>> groups, FreeBody body, List<int> open)
    {
        foreach (IEnumerable<Balance> group in groups)
        {
            Balance? best = null;
            int found = 0;
            double most = 0;
            foreach (Balance balance in group)
            {
                if (FoundBy(balance, body, open) is { } force)
                {
                    double weight = Weight(balance.Terms.First(t => t.Force == force), balance, body);

                    // Of equals the first: 1e-9 keeps round-off from choosing.
                    if (weight > most * (1 + 1e-9))
                    {
                        (best, found, most) = (balance, force, weight);
                    }
                }
            }

            if (best is not null)
            {
                return new RouteStage([found], [best], Elimination.Of(new double[,] { { best.CoefficientOf(found) } })!);
            }
        }

        return null;
    }

    private static IEnumerable<IEnumerable<Balance>> Candidates(StepKind kind, FreeBody body, IReadOnlyList<int> unknowns, bool isFirst)
    {
        IEnumerable<Balance> axes = Axes(body), across = unknowns.Select(body.Across);
        switch (kind)
        {
            case StepKind.Joint:
                return [axes, across];
            case StepKind.WholeTruss when isFirst:
                return [Moments(body, unknowns, atOneJoint: true), Moments(body, unknowns, atOneJoint: false), axes, across];
            case StepKind.WholeTruss:
                return [axes, Moments(body, unknowns, atOneJoint: true), Moments(body, unknowns, atOneJoint: false), across];
            default:
                return [Moments(body, unknowns, atOneJoint: false), axes, across];
        }
    }

    private static IEnumerable<Balance> Axes(FreeBody body)
    {
        yield return body.Up();
        yield return body.Right();
    }

    private static IEnumerable<Balance> Moments(FreeBody body, IReadOnlyList<int> unknowns, bool atOneJoint)
    {
        for (int a = 0; a < unknowns.Count; a++)
        {
            for (int b = a + 1; b < unknowns.Count; b++)
            {
                if (body.Meeting(unknowns[a], unknowns[b]) is { } centre && (!atOneJoint || body.ActTogether(unknowns[a], unknowns[b])))
                {
                    yield return body.Moment(centre.X, centre.Y);
                }
            }
        }
    }
}
