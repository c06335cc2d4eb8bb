namespace SpanRater;

/// <summary>A truss, its slack rods taken out, every member of which has an area.</summary>
internal sealed class FlexibleTruss
{
    private const double RoundOff = 1e-12;

    private readonly LinearTruss acting;

    private FlexibleTruss(LinearTruss acting) => this.acting = acting;

    /// <param name="system">The truss.</param>
    /// <param name="forces">Forces that say which rods are slack; without meaning in a truss without rods.</param>
    public static Outcome<FlexibleTruss> Of(SolvableTruss system, ForceSolution? forces)
    {
        LinearTruss? acting = system as LinearTruss;
        if (system is RodTruss rods)
        {
            if (!ActingTruss.Of(rods.Truss, rods.SlackUnder(forces!)).TryGet(out ActingTruss? without, out Refusal? refusal))
            {
                return refusal;
            }

            acting = without.Reduced;
        }

        string[] missing = [.. Enumerable.Range(0, acting!.Truss.Members.Count).Where(m => acting.Truss.Flexibility(m) is null).Select(m => acting.Truss.Members[m].Name)];
        return missing.Length > 0 ? new Refusal.NoAreasForDeflection(missing) : new FlexibleTruss(acting);
    }

    /// <summary>Downward deflections of joints under a case, by virtual work and held against those of the stiffness route [m].</summary>
    public Outcome<double[]> Under(LoadCase loads, IReadOnlyList<int> joints)
    {
        Truss truss = acting.Truss;
        if (!acting.Solve(loads).TryGet(out ForceSolution? forces, out Refusal? refusal))
        {
            return refusal;
        }

        IReadOnlyList<Outcome<ForceSolution>> units = acting.SolveUnitLoads(joints);
        double[] displacements = acting.Displacements(loads);
        var downward = new double[joints.Count];
        double largest = displacements.Max(Math.Abs), difference = 0;
        for (int i = 0; i < joints.Count; i++)
        {
            if (!units[i].TryGet(out ForceSolution? unit, out refusal))
            {
                return refusal;
            }

            for (int m = 0; m < truss.Members.Count; m++)
            {
                downward[i] += unit.MemberForces[m] * forces.MemberForces[m] * truss.Flexibility(m)!.Value;
            }

            foreach (SupportMovement movement in loads.Movements)
            {
                Reaction reaction = unit.Reactions.First(r => truss.Joints[r.Joint].Name == movement.Joint);
                downward[i] -= (reaction.Right * movement.Right) + (reaction.Up * movement.Up);
            }

            difference = Math.Max(difference, Math.Abs(downward[i] + displacements[(2 * joints[i]) + 1]));
        }

        // Where a load stands on a support and nothing deflects, what is left of its round-off is no difference.
        double roundOff = RoundOff * loads.Loads.Select(l => double.Hypot(l.Right, l.Up)).Append(0).Max() * Enumerable.Range(0, truss.Members.Count).Sum(m => truss.Flexibility(m)!.Value);
        double scale = Math.Max(largest, roundOff / Deflections.RouteLimit);
        return difference <= Deflections.RouteLimit * scale ? downward : new Refusal.DeflectionsDiffer(difference / scale);
    }
}
