namespace SpanRater;

/// <summary>
/// The equilibrium equations of all joints at once: <c>A q = −p</c>, two rows a joint (x, then y), one column a member
/// (tension positive), then one column a reaction component. The columns are kept in their few entries, so that a
/// result can be multiplied back without the factored matrix.
/// </summary>
internal sealed class EquilibriumSystem
{
    private readonly Truss truss;
    private readonly (double X, double Y)[] directions;

    public EquilibriumSystem(Truss truss)
    {
        this.truss = truss;
        directions = new (double, double)[truss.Members.Count];
        for (int m = 0; m < directions.Length; m++)
        {
            Joint from = truss.Joints[truss.FromJoint(m)], to = truss.Joints[truss.ToJoint(m)];
            double length = truss.Length(m);
            directions[m] = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        }

        var reactions = new List<ReactionComponent>();
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            switch (truss.Joints[j].Support)
            {
                case { Kind: SupportKind.Pin }:
                    reactions.Add(new ReactionComponent(j, 1, 0));
                    reactions.Add(new ReactionComponent(j, 0, 1));
                    break;
                case { Kind: SupportKind.Roller } roller:
                    reactions.Add(new ReactionComponent(j, roller.NormalX, roller.NormalY));
                    break;
            }
        }

        Reactions = reactions;
    }

    /// <summary>The unknown reaction components, one column each after the members'.</summary>
    public IReadOnlyList<ReactionComponent> Reactions { get; }

    /// <summary>Number of equations: two a joint.</summary>
    public int Rows => 2 * truss.Joints.Count;

    /// <summary>Number of unknowns: members and reaction components.</summary>
    public int Columns => directions.Length + Reactions.Count;

    /// <summary>The unknowns that act at a joint, each with its unit vector there.</summary>
    public IEnumerable<(int Unknown, double X, double Y)> TermsAt(int joint)
    {
        for (int m = 0; m < directions.Length; m++)
        {
            if (truss.FromJoint(m) == joint)
            {
                yield return (m, directions[m].X, directions[m].Y);
            }
            else if (truss.ToJoint(m) == joint)
            {
                yield return (m, -directions[m].X, -directions[m].Y);
            }
        }

        for (int r = 0; r < Reactions.Count; r++)
        {
            if (Reactions[r].Joint == joint)
            {
                yield return (directions.Length + r, Reactions[r].X, Reactions[r].Y);
            }
        }
    }

    /// <summary>The matrix A, dense, row by row.</summary>
    public double[,] ToMatrix()
    {
        var matrix = new double[Rows, Columns];
        for (int m = 0; m < directions.Length; m++)
        {
            int from = truss.FromJoint(m), to = truss.ToJoint(m);
            (double x, double y) = directions[m];
            matrix[2 * from, m] = x;
            matrix[(2 * from) + 1, m] = y;
            matrix[2 * to, m] = -x;
            matrix[(2 * to) + 1, m] = -y;
        }

        for (int r = 0; r < Reactions.Count; r++)
        {
            matrix[2 * Reactions[r].Joint, directions.Length + r] = Reactions[r].X;
            matrix[(2 * Reactions[r].Joint) + 1, directions.Length + r] = Reactions[r].Y;
        }

        return matrix;
    }

    /// <summary>Largest force left over at a joint, over the largest load: |A q + p| / |p|; where nothing is loaded, over the largest force.</summary>
    public double Residual(ReadOnlySpan<double> unknowns, ReadOnlySpan<double> loads)
    {
        double[] left = loads.ToArray();
        for (int m = 0; m < directions.Length; m++)
        {
            int from = truss.FromJoint(m), to = truss.ToJoint(m);
            left[2 * from] += directions[m].X * unknowns[m];
            left[(2 * from) + 1] += directions[m].Y * unknowns[m];
            left[2 * to] -= directions[m].X * unknowns[m];
            left[(2 * to) + 1] -= directions[m].Y * unknowns[m];
        }

        for (int r = 0; r < Reactions.Count; r++)
        {
            left[2 * Reactions[r].Joint] += Reactions[r].X * unknowns[directions.Length + r];
            left[(2 * Reactions[r].Joint) + 1] += Reactions[r].Y * unknowns[directions.Length + r];
        }

        double imbalance = LargestAtAJoint(left), load = LargestAtAJoint(loads);
        double measure = load > 0 ? load : LargestOf(unknowns);
        return measure == 0 ? imbalance : imbalance / measure;
    }

    private static double LargestOf(ReadOnlySpan<double> values)
    {
        double largest = 0;
        foreach (double value in values)
        {
            largest = Math.Max(largest, Math.Abs(value));
        }

        return largest;
    }

    private static double LargestAtAJoint(ReadOnlySpan<double> components)
    {
        double largest = 0;
        for (int i = 0; i < components.Length; i += 2)
        {
            double size = double.Hypot(components[i], components[i + 1]);

            // Written so that NaN is kept: a result that is not a number must never look balanced.
            largest = size <= largest ? largest : size;
        }

        return largest;
    }

    /// <summary>One unknown reaction: at a joint, along a unit vector.</summary>
    public readonly record struct ReactionComponent(int Joint, double X, double Y);
}
