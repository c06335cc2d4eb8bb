namespace SpanRater;

/// <summary>Solves a truss again with one mistake in the work, and gives what comes out. Values that would pass for the right one are left out.</summary>
internal sealed class MistakeFinder(Truss truss, JointWork fromLeft, JointWork fromRight)
{
    /// <summary>Values nearer to the right one than this part of it would be marked right [-].</summary>
    private const double PassesForRight = 0.006;

    /// <summary>Mistakes in a reaction.</summary>
    /// <param name="ups">All upward reactions [N].</param>
    /// <param name="asked">The one asked for.</param>
    public static IReadOnlyList<MistakenValue> OfReaction(double[] ups, int asked)
    {
        var found = new List<MistakenValue>();
        Add(found, ups[asked], Mistake.SignFlipped, null, -ups[asked]);
        for (int r = 0; r < ups.Length; r++)
        {
            Add(found, ups[asked], Mistake.OtherReaction, null, ups[r]);
        }

        return found;
    }

    /// <summary>Mistakes in the force of a member.</summary>
    /// <param name="member">The member.</param>
    /// <param name="carried">Loads and reactions at the joints, right and up of each [N].</param>
    /// <param name="right">The right force [N].</param>
    public IReadOnlyList<MistakenValue> OfForce(int member, double[] carried, double right)
    {
        var found = new List<MistakenValue>();
        Add(found, right, Mistake.SenseFlipped, null, -right);
        AddWork(found, member, right, work => Forces(work, carried, member));
        return found;
    }

    /// <summary>Mistakes in an ordinate.</summary>
    /// <param name="member">The member.</param>
    /// <param name="carried">Unit load at each panel point with its reactions, right and up of each joint [-].</param>
    /// <param name="key">The right ordinates [-].</param>
    /// <param name="point">The panel point asked for.</param>
    public IReadOnlyList<MistakenValue> OfOrdinate(int member, double[][] carried, double[] key, int point)
    {
        var found = new List<MistakenValue>();
        Add(found, key[point], Mistake.SignFlipped, null, -key[point]);
        AddWork(found, member, key[point], work => Forces(work, carried[point], member));
        for (int i = 0; i < key.Length; i++)
        {
            if (Math.Abs(key[i]) > 1e-9)
            {
                Add(found, key[point], Mistake.OtherPanelPoint, truss.Joints[truss.PanelPoints[i]].Name, key[i]);
            }
        }

        return found;
    }

    /// <summary>Mistakes in a peak.</summary>
    /// <param name="member">The member.</param>
    /// <param name="carried">Unit load at each panel point with its reactions, right and up of each joint [-].</param>
    /// <param name="key">The right ordinates [-].</param>
    /// <param name="train">The train.</param>
    /// <param name="sense">The sense asked for.</param>
    /// <param name="right">The right placement.</param>
    public IReadOnlyList<MistakenValue> OfPeak(int member, double[][] carried, double[] key, AxleTrain train, Sense sense, TrainPlacement right)
    {
        var found = new List<MistakenValue>();
        Add(found, right.Force, Mistake.SenseFlipped, null, -right.Force);
        foreach (Direction direction in (Direction[])[Direction.Right, Direction.Left])
        {
            Add(found, right.Force, Mistake.OneDirectionOnly, null, TrainPlacement.Worst(truss.Stations, key, train, sense, direction)?.Force ?? 0);
        }

        Add(found, right.Force, Mistake.AllAxlesAtPeak, null, train.Weight * (sense == Sense.Tension ? key.Max() : key.Min()));
        foreach (JointWork work in (JointWork[])[fromLeft, fromRight])
        {
            double[] line = [.. carried.Select(c => work.Solve(c, _ => true)[member])];
            line[0] = line[^1] = 0;
            Add(found, right.Force, Mistake.SineForCosine, null, TrainPlacement.Worst(truss.Stations, line, train, sense, Direction.Right, Direction.Left)?.Force ?? 0);
        }

        return found;
    }

    private IEnumerable<MistakenValue> Forces(JointWork work, double[] carried, int member)
    {
        yield return new(Mistake.SineForCosine, null, work.Solve(carried, _ => true)[member]);
        int joint = work.Steps.First(s => s.Found.Contains(member)).Joint;
        yield return new(Mistake.SineForCosineAtJoint, truss.Joints[joint].Name, work.Solve(carried, j => j == joint)[member]);
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            if (truss.Joints[j].Support is not null)
            {
                double[] without = [.. carried];
                without[2 * j] = 0;
                without[(2 * j) + 1] = 0;
                yield return new(Mistake.ReactionLeftOut, truss.Joints[j].Name, work.Solve(without)[member]);
            }
        }
    }

    private void AddWork(List<MistakenValue> found, int member, double right, Func<JointWork, IEnumerable<MistakenValue>> mistakes)
    {
        int left = StepsTo(fromLeft), fromTheRight = StepsTo(fromRight);
        foreach ((JointWork work, int steps) in ((JointWork, int)[])[(fromLeft, left), (fromRight, fromTheRight)])
        {
            // Nobody works from the far end to a member near this one; a section is often taken with the far part, though.
            bool isFar = steps > Math.Min(left, fromTheRight) + 4;
            foreach (MistakenValue value in mistakes(work).Where(m => !isFar || m.Mistake == Mistake.ReactionLeftOut))
            {
                Add(found, right, value.Mistake, value.Where, value.Value);
            }
        }

        int StepsTo(JointWork work) => work.Steps.TakeWhile(s => !s.Found.Contains(member)).Count();

        (double x, double y) = fromLeft.Direction(member, truss.FromJoint(member));
        if (x != 0 && y != 0)
        {
            Add(found, right, Mistake.SineForCosineOfMember, null, right * Math.Abs(y / x));
            Add(found, right, Mistake.SineForCosineOfMember, null, right * Math.Abs(x / y));
        }
    }

    private static void Add(List<MistakenValue> found, double right, Mistake mistake, string? where, double value)
    {
        bool passes = Math.Abs(value - right) <= PassesForRight * Math.Abs(right);
        bool isThere = found.Exists(f => f.Mistake == mistake && f.Where == where && Math.Abs(f.Value - value) <= 1e-9 * Math.Abs(right));
        if (double.IsFinite(value) && !passes && !isThere)
        {
            found.Add(new MistakenValue(mistake, where, Math.Abs(value) <= 1e-12 * Math.Abs(right) ? 0 : value));
        }
    }
}
