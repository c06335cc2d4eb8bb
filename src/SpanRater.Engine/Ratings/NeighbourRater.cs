namespace SpanRater;

/// <summary>
/// Rates an emergency vehicle with a legal one in the next lane, which stays as it is while the emergency vehicle is scaled:
/// <c>RF = (C − gDC DC − gDW DW − gN N (1 + IM)) / (gLL L (1 + IM))</c>. Source: FHWA memo of 3 November 2016 (emergency vehicles with
/// other vehicles on the bridge), from memory.
/// </summary>
internal sealed class NeighbourRater
{
    private readonly (Vehicle Vehicle, LiveLoadPlan Plan)[] legal;
    private readonly Bridge bridge;
    private readonly RatingMethod method;
    private readonly ImpactPolicy impact;
    private readonly InfluenceLines lines;
    private readonly Dictionary<(int Legal, int Member, Sense Sense), LivePart.Axles?> brought = [];

    /// <summary>Prepares the neighbours.</summary>
    /// <param name="asked">All vehicles asked for.</param>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="impact">Dynamic allowances.</param>
    /// <param name="lines">Influence lines of the truss.</param>
    public NeighbourRater(IReadOnlyList<Vehicle> asked, Bridge bridge, RatingMethod method, ImpactPolicy impact, InfluenceLines lines)
    {
        this.bridge = bridge;
        this.method = method;
        this.impact = impact;
        this.lines = lines;
        legal = [.. asked.Where(v => v is { Class: VehicleClass.Legal, LaneLoading: null }).Select(v => (v, new LiveLoadPlan(bridge.Truss.Stations, v)))];
    }

    /// <summary>
    /// One row for each of the vehicle's rows that have a factor and that a neighbour loads as well: the lowest over the legal
    /// vehicles asked for, and over which of the two stands nearer to the truss. Empty where two vehicles do not fit.
    /// </summary>
    /// <param name="emergency">The emergency vehicle.</param>
    /// <param name="alone">The emergency vehicle's rows, alone on the bridge.</param>
    public IEnumerable<MemberRow> Rows(Vehicle emergency, IReadOnlyList<MemberRow> alone)
    {
        string[] trusses = [.. bridge.Deck.TrussNames];
        foreach (MemberRow row in alone.Where(r => r is { Status: RatingStatus.Rated, Peak: not null }))
        {
            int truss = Math.Max(0, Array.IndexOf(trusses, row.Truss));
            (MemberRow Row, double Unclipped)? lowest = null;
            for (int l = 0; l < legal.Length; l++)
            {
                foreach (bool isNearer in (bool[])[true, false])
                {
                    // Whether the two fit comes first: on a narrow roadway nothing has to be sought.
                    if (PairOf(emergency, legal[l].Vehicle, isNearer, truss) is { } pair && On(l, row) is { } neighbour
                        && Beside(row, neighbour, isNearer, pair) is { } candidate && !(candidate.Unclipped >= lowest?.Unclipped))
                    {
                        lowest = candidate;
                    }
                }
            }

            if (lowest is not null)
            {
                yield return lowest.Value.Row;
            }
        }
    }

    // What a neighbour brings to a member is the same for every emergency vehicle and level.
    private LivePart.Axles? On(int neighbour, MemberRow row)
    {
        (int, int, Sense) key = (neighbour, row.MemberIndex, row.Sense);
        if (!brought.TryGetValue(key, out LivePart.Axles? axles))
        {
            axles = legal[neighbour].Plan.MostOn(lines.Members[row.MemberIndex].Line, row.Sense)?.Parts[0] as LivePart.Axles;
            brought.Add(key, axles);
        }

        return axles;
    }

    private (LateralShare Near, LateralShare Far)? PairOf(Vehicle emergency, Vehicle neighbour, bool isNearer, int truss)
    {
        (double near, double far) = isNearer ? (emergency.Gauge, neighbour.Gauge) : (neighbour.Gauge, emergency.Gauge);
        return LeverRule.Pair(bridge.Deck, truss, near, far, method.Presence(2));
    }

    // With the factor before it is held at 0, so that of two neighbours that leave no capacity the one that takes more is told.
    private (MemberRow Row, double Unclipped)? Beside(MemberRow row, LivePart.Axles neighbour, bool isNearer, (LateralShare Near, LateralShare Far) pair)
    {
        if (method.LevelsOf(VehicleClass.Legal, bridge.Rating).FirstOrDefault(l => l.Governance == row.Level.Governance)?.LiveFactor is not { } factor)
        {
            return null;
        }

        (LateralShare own, LateralShare others) = isNearer ? pair : (pair.Far, pair.Near);
        SharedPart Of(LivePart part, LateralShare share, VehicleClass vehicleClass) =>
            new(part, share.Value, impact.Of(vehicleClass, row.Member, part)) { Lateral = share };
        var effect = new SharedEffect([Of(row.Effect!.Parts[0].Part, own, VehicleClass.Emergency)]);
        var beside = new Neighbour(neighbour.Vehicle, factor, Of(neighbour, others, VehicleClass.Legal));
        double taken = row.FactoredDead + beside.Factored, factored = row.Level.LiveFactor!.Value * Math.Abs(effect.WithImpact);
        double unclipped = (row.Capacity!.Value - taken) / factored;
        return (row with
        {
            Beside = beside,
            Effect = effect,
            Share = own,
            Live = effect.Force,
            Impact = effect.Impact,
            Factor = Math.Max(0, unclipped),
            FactorAt = capacity => Math.Max(0, capacity - taken) / factored,
        }, unclipped);
    }
}
