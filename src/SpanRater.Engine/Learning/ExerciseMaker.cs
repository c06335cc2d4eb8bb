using MathNet.Numerics.Random;

namespace SpanRater;

/// <summary>Makes exercises.</summary>
public sealed class ExerciseMaker
{
    private readonly FormKind kind;
    private readonly ExerciseLevel level;
    private readonly int seed;
    private readonly ExerciseUnits units;
    private readonly MersenneTwister random;
    private readonly FormMeasures measures;
    private readonly Truss truss;

    private ExerciseMaker(FormKind kind, ExerciseLevel level, int seed, ExerciseUnits units)
    {
        this.kind = kind;
        this.level = level;
        this.seed = seed;
        this.units = units;

        // The generator of the numerics package keeps its numbers from one version of the platform to the next.
        random = new MersenneTwister(seed);
        measures = FriendlyForm.Of(kind, level, units, random);
        truss = kind.Make(measures).Build();
    }

    /// <summary>Makes an exercise, or says why the truss cannot be solved or why its two solutions differ.</summary>
    /// <param name="kind">The kind of form.</param>
    /// <param name="level">How much it asks for.</param>
    /// <param name="seed">The same seed gives the same exercise.</param>
    /// <param name="units">The units in which its numbers are whole.</param>
    public static Outcome<Exercise> Make(FormKind kind, ExerciseLevel level, int seed, ExerciseUnits units)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(units);
        return new ExerciseMaker(kind, level, seed, units).Make();
    }

    private Outcome<Exercise> Make()
    {
        if (!DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out Refusal? refusal))
        {
            return refusal;
        }

        // The second route: it shares the directions of the members with the first, and nothing else.
        if (JointRoute.Of(truss, new EquilibriumSystem(truss)) is not { } route || JointWork.Of(truss, fromRight: false) is not { } fromLeft || JointWork.Of(truss, fromRight: true) is not { } fromRight)
        {
            return new Refusal.RoutesDiffer(null, double.NaN);
        }

        var mistakes = new MistakeFinder(truss, fromLeft, fromRight);
        Outcome<Exercise> made = level == ExerciseLevel.Hard ? MakeMoving(system, route, fromLeft, mistakes) : MakeStatic(system, route, fromLeft, mistakes);
        return made.Value is { } exercise && LastStep(exercise, fromRight.Steps) < LastStep(exercise, fromLeft.Steps) ? exercise with { Steps = fromRight.Steps } : made;
    }

    // The step after which every asked member is known.
    private static int LastStep(Exercise exercise, IReadOnlyList<JointStep> steps) =>
        exercise.Items.Where(i => i.Question.Member is not null).Max(i => steps.TakeWhile(s => !s.Found.Contains(exercise.Truss.FindMember(i.Question.Member!)!.Value)).Count());

    private Outcome<Exercise> MakeStatic(DeterminateTruss system, JointRoute route, JointWork work, MistakeFinder mistakes)
    {
        LoadCase loads = Loads();
        if (!system.Solve(loads).TryGet(out ForceSolution? solution, out Refusal? refusal))
        {
            return refusal;
        }

        double[] p = Vector(loads), second = route.Solve(p);
        (int Joint, bool Up)[] components = [.. Components()];
        var items = new List<ExerciseItem>();
        double[] ups = [.. solution.Reactions.Select(r => r.Up)];
        double[] keyUps = [.. solution.Reactions.Select(r => second[truss.Members.Count + Array.IndexOf(components, (r.Joint, true))])];
        for (int r = 0; r < ups.Length; r++)
        {
            var question = new ExerciseQuestion(AskedQuantity.Reaction, null, truss.Joints[solution.Reactions[r].Joint].Name, null);
            items.Add(new ExerciseItem(question, ups[r], keyUps[r], null, MistakeFinder.OfReaction(keyUps, r)));
        }

        double[] carried = WithReactions(p, solution.Reactions.Select(r => r.Joint), keyUps);
        foreach (int member in Asked(work, m => Math.Abs(second[m]) > 1e-6 * loads.Loads.Sum(l => Math.Abs(l.Up))))
        {
            var question = new ExerciseQuestion(AskedQuantity.MemberForce, truss.Members[member].Name, null, null);
            items.Add(new ExerciseItem(question, solution.MemberForces[member], second[member], null, mistakes.OfForce(member, carried, second[member])));
        }

        return Checked(items, loads, null, solution.Reactions, second[..truss.Members.Count], work, new Dictionary<string, IReadOnlyList<double>>());
    }

    private Outcome<Exercise> MakeMoving(DeterminateTruss system, JointRoute route, JointWork work, MistakeFinder mistakes)
    {
        if (!InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out Refusal? refusal))
        {
            return refusal;
        }

        AxleTrain train = Train();
        double[][] carried = [.. truss.PanelPoints.Select(p => WithUnitLoad(route, p))];
        double[][] second = [.. truss.PanelPoints.Select(p => route.Solve(UnitLoad(p)))];
        int[] asked = [.. Asked(work, m => second[0][m] == 0 && Math.Abs(second[^1][m]) < 1e-12 && second.Any(s => Math.Abs(s[m]) > 1e-6)).Take(2)];
        var items = new List<ExerciseItem>();
        var ordinates = new Dictionary<string, IReadOnlyList<double>>();
        var plan = new RollingPlan(truss.Stations, train);
        foreach (int member in asked)
        {
            string name = truss.Members[member].Name;
            double[] key = [.. second.Select(s => s[member])];
            ordinates.Add(name, key);
            InfluenceLine line = lines.Members[member].Line;
            int[] inner = [.. Enumerable.Range(1, key.Length - 2).Where(i => Math.Abs(key[i]) > 1e-6)];
            foreach (int i in Some(inner, member == asked[0] ? 2 : 1).Order())
            {
                var question = new ExerciseQuestion(AskedQuantity.Ordinate, name, truss.Joints[truss.PanelPoints[i]].Name, null);
                items.Add(new ExerciseItem(question, line.Ordinates[i], key[i], null, mistakes.OfOrdinate(member, carried, key, i)));
            }

            PeakPair peaks = plan.PeaksOf(line);
            foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
            {
                TrainPlacement? placed = TrainPlacement.Worst(truss.Stations, key, train, sense, Direction.Right, Direction.Left);
                if (peaks.Of(sense) is { } peak && placed is not null)
                {
                    var question = new ExerciseQuestion(AskedQuantity.Peak, name, null, sense);
                    items.Add(new ExerciseItem(question, peak.Force, placed.Force, placed, mistakes.OfPeak(member, carried, key, train, sense, placed)));
                }
            }
        }

        return Checked(items, new LoadCase("none", []), train, [], [], work, ordinates);
    }

    private Outcome<Exercise> Checked(
        List<ExerciseItem> items, LoadCase loads, AxleTrain? train, IReadOnlyList<Reaction> reactions, double[] keyForces, JointWork work, Dictionary<string, IReadOnlyList<double>> ordinates)
    {
        if (Difference(items) is { } differ)
        {
            return differ;
        }

        return new Exercise
        {
            Kind = kind,
            Level = level,
            Seed = seed,
            Measures = measures,
            Truss = truss,
            Loads = loads,
            Train = train,
            Reactions = reactions,
            KeyForces = keyForces,
            Steps = work.Steps,
            KeyOrdinates = ordinates,
            Items = items,
        };
    }

    /// <summary>Where the two routes to an answer differ by more than 1e-9 of the largest; null where they agree.</summary>
    internal static Refusal.RoutesDiffer? Difference(IReadOnlyList<ExerciseItem> items)
    {
        double scale = items.Max(i => Math.Abs(i.Answer));
        foreach (ExerciseItem item in items)
        {
            // An ordinate is compared with 1, a unit load. Written so that NaN counts as a difference.
            double against = item.Question.Quantity == AskedQuantity.Ordinate ? 1 : scale, difference = Math.Abs(item.Answer - item.Key) / against;
            if (!(difference <= ForceSolution.RouteLimit))
            {
                return new Refusal.RoutesDiffer(item.Question.Member ?? item.Question.Joint, difference);
            }
        }

        return null;
    }

    // Easy: of what is found first, from either end. Else: one of each sort of inner member, the top chord first, for its slope.
    private List<int> Asked(JointWork work, Func<int, bool> isWorthAsking)
    {
        if (level == ExerciseLevel.Easy)
        {
            int[] early = [.. work.Steps.SelectMany(s => s.Found).Where(isWorthAsking).Take(4)];
            return [.. Some(early, 2).OrderBy(m => Array.IndexOf(early, m))];
        }

        var asked = new List<int>();
        foreach (string[] roles in (string[][])[["diagonal", "mid-joint diagonal", "short diagonal"], ["top chord"], ["vertical", "sub-vertical", "hanger", "sub-strut", "sub-tie"], ["bottom chord"]])
        {
            int[] candidates = [.. Enumerable.Range(0, truss.Members.Count).Where(m => roles.Contains(truss.Members[m].Role) && isWorthAsking(m))];
            asked.AddRange(Some(candidates, 1));
        }

        int[] rest = [.. Enumerable.Range(0, truss.Members.Count).Where(m => !asked.Contains(m) && isWorthAsking(m))];
        asked.AddRange(Some(rest, Math.Max(0, 3 - asked.Count)));
        return asked;
    }

    private List<int> Some(int[] candidates, int count)
    {
        var left = candidates.ToList();
        var chosen = new List<int>();
        while (chosen.Count < count && left.Count > 0)
        {
            int at = random.Next(left.Count);
            chosen.Add(left[at]);
            left.RemoveAt(at);
        }

        return chosen;
    }

    // Whole loads, each a multiple of the number of panels where that is not too heavy, so that the reactions are whole as well.
    private LoadCase Loads()
    {
        int[] inner = [.. truss.PanelPoints.Skip(1).SkipLast(1)];
        int count = Math.Min(inner.Length, level == ExerciseLevel.Easy ? 1 + random.Next(2) : 2 + random.Next(2));
        int part = measures.Panels * (units.ForceScale >= 60 ? 5 : 1);
        var loads = new List<JointLoad>();
        foreach (int joint in Some(inner, count).Order())
        {
            int times = 1 + random.Next(Math.Max(1, 2 * units.ForceScale / part));
            loads.Add(new JointLoad(truss.Joints[joint].Name, 0, -times * part * units.Force));
        }

        return new LoadCase("exercise", loads);
    }

    private AxleTrain Train()
    {
        int axles = 2 + random.Next(2), step = units.ForceScale >= 60 ? 10 : 2;
        double[] loads = [.. Enumerable.Range(0, axles).Select(i => step * (i == 0 ? 2 + random.Next(3) : 5 + random.Next(4)) * units.Force)];
        double least = Math.Ceiling(1.2 / units.Length), range = Math.Max(1, Math.Floor(3.6 / units.Length));
        return new AxleTrain(loads, [.. Enumerable.Range(1, axles - 1).Select(_ => AxleGap.Fixed((least + random.Next((int)range)) * units.Length))]);
    }

    private IEnumerable<(int Joint, bool Up)> Components() => new EquilibriumSystem(truss).Reactions.Select(r => (r.Joint, r.Y != 0));

    private double[] Vector(LoadCase loads)
    {
        var p = new double[2 * truss.Joints.Count];
        foreach (JointLoad load in loads.Loads)
        {
            p[2 * truss.FindJoint(load.Joint)!.Value] += load.Right;
            p[(2 * truss.FindJoint(load.Joint)!.Value) + 1] += load.Up;
        }

        return p;
    }

    private double[] UnitLoad(int joint)
    {
        var p = new double[2 * truss.Joints.Count];
        p[(2 * joint) + 1] = -1;
        return p;
    }

    private double[] WithUnitLoad(JointRoute route, int joint)
    {
        double[] p = UnitLoad(joint), solved = route.Solve(p);
        (int Joint, bool Up)[] components = [.. Components()];
        for (int r = 0; r < components.Length; r++)
        {
            p[(2 * components[r].Joint) + (components[r].Up ? 1 : 0)] += solved[truss.Members.Count + r];
        }

        return p;
    }

    private static double[] WithReactions(double[] loads, IEnumerable<int> joints, double[] ups)
    {
        double[] carried = [.. loads];
        foreach ((int joint, double up) in joints.Zip(ups))
        {
            carried[(2 * joint) + 1] += up;
        }

        return carried;
    }
}
