using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests;

/// <summary>Two hundred and more exercises over all forms, levels and units, each key solved again here with equations of its own.</summary>
public class ExerciseMakerTests
{
    private const int Seeds = 7;

    private static readonly Lazy<Exercise[]> Made = new(() =>
    [
        .. from kind in FormKind.All
           from level in Enum.GetValues<ExerciseLevel>()
           from seed in Enumerable.Range(1, Seeds)
           select ExerciseMaker.Make(kind, level, seed, int.IsEvenInteger(seed) ? ExerciseUnits.Si : ExerciseUnits.Us).Value!,
    ]);

    /// <summary>Every form, level and seed; the units alternate.</summary>
    internal static IEnumerable<Exercise> All(int seeds = Seeds) => Made.Value.Where(e => e.Seed <= seeds);

    [Fact]
    public void Make_EveryFormLevelAndSeed_KeyAgreesWithADenseSolutionOfItsOwn()
    {
        Exercise[] exercises = [.. All()];
        Assert.Equal(210, exercises.Length);
        Assert.All(exercises, exercise =>
        {
            Assert.NotNull(exercise);
            foreach (ExerciseItem item in exercise.Items)
            {
                double expected = Solve(exercise, item.Question);
                Assert.True(Math.Abs(expected - item.Key) <= 1e-9 * Math.Max(1, Math.Abs(expected)), $"{exercise.Kind.Name} {exercise.Level} {exercise.Seed} {item.Question}: {item.Key} against {expected}");
                Assert.Equal(item.Answer, item.Key, 1e-9 * Math.Max(1, Math.Abs(expected)));
            }
        });
    }

    // Whole measures and loads, and a sloping member whose run and rise are sides of a right triangle with whole sides.
    [Fact]
    public void Make_EveryExercise_HasFriendlyNumbers() => Assert.All(All(), exercise =>
    {
        ExerciseUnits units = int.IsEvenInteger(exercise.Seed) ? ExerciseUnits.Si : ExerciseUnits.Us;
        Assert.Equal(0, Math.IEEERemainder(exercise.Measures.PanelLength / units.Length, units.LengthStep), 1e-9);
        Assert.All(exercise.Loads.Loads, l => Assert.Equal(0, Math.IEEERemainder(l.Up / units.Force, 1), 1e-9));
        Assert.All(exercise.Train?.Loads ?? [], l => Assert.Equal(0, Math.IEEERemainder(l / units.Force, 1), 1e-9));
        Truss truss = exercise.Truss;
        Assert.Contains(Enumerable.Range(0, truss.Members.Count), m =>
        {
            double run = Math.Abs(truss.Joints[truss.FromJoint(m)].X - truss.Joints[truss.ToJoint(m)].X), rise = Math.Abs(truss.Joints[truss.FromJoint(m)].Y - truss.Joints[truss.ToJoint(m)].Y);
            double[] slopes = [1, 3.0 / 4, 4.0 / 3, 5.0 / 12, 12.0 / 5, 8.0 / 15, 15.0 / 8];
            return run > 0 && rise > 0 && slopes.Any(s => Math.Abs((rise / run) - s) < 1e-9);
        });
    });

    [Fact]
    public void Make_EveryLevel_AsksWhatItSays() => Assert.All(All(), exercise =>
    {
        AskedQuantity[] asked = [.. exercise.Items.Select(i => i.Question.Quantity)];
        if (exercise.Level == ExerciseLevel.Hard)
        {
            Assert.Contains(AskedQuantity.Ordinate, asked);
            Assert.Contains(AskedQuantity.Peak, asked);
            return;
        }

        Assert.Equal(2, asked.Count(q => q == AskedQuantity.Reaction));
        Assert.InRange(asked.Count(q => q == AskedQuantity.MemberForce), exercise.Level == ExerciseLevel.Easy ? 2 : 3, 4);
        Assert.All(exercise.Items, i => Assert.NotEqual(0, i.Key));
    });

    [Fact]
    public void Make_ParkerAtMediumLevel_AsksForAnInclinedChord() =>
        Assert.Contains(Enumerable.Range(1, Seeds), seed =>
        {
            Exercise exercise = ExerciseMaker.Make(FormKind.Find("parker")!, ExerciseLevel.Medium, seed, ExerciseUnits.Us).Value!;
            return exercise.Items.Any(i => i.Question.Member is { } name && exercise.Truss.Members[exercise.Truss.FindMember(name)!.Value] is { Role: "top chord" } chord
                && exercise.Truss.Joints[exercise.Truss.FindJoint(chord.From)!.Value].Y != exercise.Truss.Joints[exercise.Truss.FindJoint(chord.To)!.Value].Y);
        });

    [Fact]
    public void Make_SameSeed_SameExerciseAndAnotherSeedAnother()
    {
        FormKind pratt = FormKind.Find("pratt")!;
        string Of(int seed) => string.Join(' ', ExerciseMaker.Make(pratt, ExerciseLevel.Medium, seed, ExerciseUnits.Us).Value!.Items.Select(i => FormattableString.Invariant($"{i.Question} {i.Key:R}")));
        Assert.Equal(Of(4), Of(4));
        Assert.Equal(20, Enumerable.Range(0, 20).Select(Of).Distinct().Count());
    }

    // The closed forms of a Pratt end: reaction over the sine in the end post, reaction times the cotangent in the chord. Left out
    // the reaction, both are nothing; sine and cosine exchanged, reaction over the cosine and reaction times the tangent.
    [Fact]
    public void Mistakes_AtTheFirstJoint_AreTheClosedForms()
    {
        Exercise exercise = Enumerable.Range(0, 50).Select(seed => ExerciseMaker.Make(FormKind.Find("pratt")!, ExerciseLevel.Easy, seed, ExerciseUnits.Si).Value!)
            .First(e => e.Items.Any(i => i.Question.Member == "L0U1") && e.Measures.PanelLength != e.Measures.Heights[0]);
        double reaction = exercise.Items[0].Key, p = exercise.Measures.PanelLength, h = exercise.Measures.Heights[0], length = Math.Sqrt((p * p) + (h * h));
        ExerciseItem post = exercise.Items.Single(i => i.Question.Member == "L0U1");
        Assert.Equal(-reaction * length / h, post.Key, 1e-6);
        Assert.Contains(post.Mistakes, m => m.Mistake == Mistake.SineForCosine && Math.Abs(m.Value + (reaction * length / p)) < 1e-6);
        Assert.Contains(post.Mistakes, m => m is { Mistake: Mistake.ReactionLeftOut, Where: "L0", Value: 0 });
        Assert.Contains(post.Mistakes, m => m.Mistake == Mistake.SenseFlipped && m.Value == -post.Key);
    }

    [Theory]
    [InlineData(1e-10, false)]
    [InlineData(1e-8, true)]
    [InlineData(double.NaN, true)]
    public void Difference_OfTheTwoRoutes_RefusesTheExercise(double difference, bool refused)
    {
        var question = new ExerciseQuestion(AskedQuantity.MemberForce, "U1L2", null, null);
        Refusal.RoutesDiffer? differ = ExerciseMaker.Difference([new(question, 1_000, 1_000 * (1 + difference), null, [])]);
        Assert.Equal(refused ? "U1L2" : null, differ?.Member);
    }

    private static double Solve(Exercise exercise, ExerciseQuestion question)
    {
        Truss truss = exercise.Truss;
        if (question.Quantity is AskedQuantity.Reaction or AskedQuantity.MemberForce)
        {
            return Unknown(truss, exercise.Loads.Loads, question);
        }

        double[] line = [.. truss.PanelPoints.Select(p => Unknown(truss, [new JointLoad(truss.Joints[p].Name, 0, -1)], question))];
        if (question.Quantity == AskedQuantity.Ordinate)
        {
            return line[truss.PanelPoints.ToList().FindIndex(p => truss.Joints[p].Name == question.Joint)];
        }

        // A sweep by hand's rule: every axle on every panel point, both ways round.
        double sign = question.Sense == Sense.Tension ? 1 : -1, worst = 0;
        AxleTrain train = exercise.Train!;
        foreach (int way in (int[])[1, -1])
        {
            double[] offsets = [.. Enumerable.Range(0, train.Loads.Count).Select(i => -way * train.Gaps.Take(i).Sum(g => g.Least))];
            foreach (double front in truss.Stations.SelectMany(s => offsets.Select(o => s - o)))
            {
                double force = offsets.Select((o, i) => train.Loads[i] * Interpolate(truss.Stations, line, front + o)).Sum();
                worst = Math.Max(worst, sign * force);
            }
        }

        return sign * worst;
    }

    private static double Interpolate(IReadOnlyList<double> x, double[] y, double at)
    {
        int right = Enumerable.Range(1, x.Count - 1).FirstOrDefault(i => at >= x[i - 1] - 1e-9 && at <= x[i] + 1e-9);
        return right == 0 ? 0 : y[right - 1] + ((y[right] - y[right - 1]) * (at - x[right - 1]) / (x[right] - x[right - 1]));
    }

    // All equations at once by QR: two a joint, from the coordinates alone; pin at the left support, upright roller at the right.
    private static double Unknown(Truss truss, IReadOnlyList<JointLoad> loads, ExerciseQuestion question)
    {
        int members = truss.Members.Count, rows = 2 * truss.Joints.Count;
        int[] supports = [.. Enumerable.Range(0, truss.Joints.Count).Where(j => truss.Joints[j].Support is not null)];
        Matrix<double> a = Matrix<double>.Build.Dense(rows, rows);
        Vector<double> b = Vector<double>.Build.Dense(rows);
        for (int m = 0; m < members; m++)
        {
            int from = truss.FindJoint(truss.Members[m].From)!.Value, to = truss.FindJoint(truss.Members[m].To)!.Value;
            double dx = truss.Joints[to].X - truss.Joints[from].X, dy = truss.Joints[to].Y - truss.Joints[from].Y, length = Math.Sqrt((dx * dx) + (dy * dy));
            a[2 * from, m] = dx / length;
            a[(2 * from) + 1, m] = dy / length;
            a[2 * to, m] = -dx / length;
            a[(2 * to) + 1, m] = -dy / length;
        }

        a[(2 * supports[0]) + 1, members] = 1;
        a[(2 * supports[1]) + 1, members + 1] = 1;
        a[2 * supports[0], members + 2] = 1;
        foreach (JointLoad load in loads)
        {
            b[(2 * truss.FindJoint(load.Joint)!.Value) + 1] -= load.Up;
        }

        Vector<double> solved = a.QR().Solve(b);
        return question.Quantity == AskedQuantity.Reaction ? solved[members + Array.IndexOf(supports, truss.FindJoint(question.Joint!)!.Value)] : solved[truss.FindMember(question.Member!)!.Value];
    }
}
