namespace SpanRater;

/// <summary>
/// The crossing of a truss with members that only pull. Which rods act depends on dead and live load together, so that
/// effects do not add up: the vehicle is rolled with the dead load on, and peaks are sought where an axle stands on a panel
/// point, a gap is at a limit or a rod is at zero. Each pair must decide by itself.
/// </summary>
internal sealed class RodCrossing : TrussCrossing
{
    private readonly RodTruss system;
    private readonly PairedRods rods;
    private readonly KinkedResponse response;
    private readonly double[] deadComponents;
    private readonly double[] deadWearing;
    private readonly double[][] ordinates;
    private readonly Dictionary<string, ActingSet> sets = new(StringComparer.Ordinal);
    private readonly LoadCase components;
    private readonly LoadCase? wearingSurface;

    private RodCrossing(
        RodTruss system, LoadCase components, LoadCase? wearingSurface, InfluenceLines baseLines, double[] baseComponents, double[] baseWearing, ActingSet deadSet, string deadCode)
        : base(deadSet.Lines, deadSet.Components, deadSet.WearingSurface)
    {
        this.system = system;
        this.components = components;
        this.wearingSurface = wearingSurface;
        rods = system.Paired!;
        sets[deadCode] = deadSet;
        ordinates = [.. baseLines.Members.Select(m => m.Line.Ordinates.ToArray())];
        response = new KinkedResponse(ordinates, [.. rods.Pairs.Select((p, i) => TakeOver(i, ordinates[p.First]))], rods.SelfStresses);
        deadComponents = WithTakeOvers(baseComponents);
        deadWearing = WithTakeOvers(baseWearing);
    }

    public override IReadOnlyList<CrossedPair> Pairs => rods.Pairs;

    // A member outside the self-stress of every crossed pair has one line, whichever of them act.
    public override bool DependsOnRods(int member) => rods.SelfStresses.Any(s => Math.Abs(s[member]) > PairedRods.ZeroForce);

    /// <summary>The members that only pull and are in no pair: nothing takes over from them.</summary>
    public IReadOnlyList<int> Unpaired => rods.Unpaired;

    public static Outcome<TrussCrossing> Of(RodTruss system, LoadCase? components, LoadCase? wearingSurface)
    {
        if (system.Paired is not { AreApart: true } rods)
        {
            return new Refusal.RodsNotApart([.. system.Truss.Members.Where(m => m.TensionOnly).Select(m => m.Name)]);
        }

        if (components is null)
        {
            return new Refusal.NoDeadLoad();
        }

        LoadCase dead = LoadCase.Sum(wearingSurface is null ? components.Name : $"{components.Name} + {wearingSurface.Name}", [(components, 1), (wearingSurface, 1)]);
        ForceSolution? baseWearing = null;
        if (!system.Solve(dead).TryGet(out ForceSolution? under, out Refusal? refusal)
            || !rods.Base.Lines().TryGet(out InfluenceLines? lines, out refusal)
            || !rods.Base.Solve(components).TryGet(out ForceSolution? baseComponents, out refusal)
            || (wearingSurface is not null && !rods.Base.Solve(wearingSurface).TryGet(out baseWearing, out refusal)))
        {
            return refusal!;
        }

        string code = CodeOf([.. rods.Pairs.Select(p => under.Rods!.Acting.Contains(p.Second))]);
        return ActingSet.Of(system, components, wearingSurface, code).TryGet(out ActingSet? set, out refusal)
            ? new RodCrossing(
                system, components, wearingSurface, lines, [.. baseComponents.MemberForces], [.. baseWearing?.MemberForces ?? new double[system.Truss.Members.Count]], set, code)
            : refusal;
    }

    /// <summary>A vehicle, ready to be rolled at any dead load and scale.</summary>
    public Outcome<KinkedPlan> PlanOf(Vehicle vehicle) => vehicle.Train.RelievingAxles == RelievingAxles.LeftOut
        ? new Refusal.RelievingAxlesWithRods(vehicle.Name)
        : new KinkedPlan(system.Truss.Stations, vehicle.Train, response);

    /// <summary>Dead values of the effects and take-overs, factored.</summary>
    public double[] Dead(double onComponents, double onWearing) =>
        [.. deadComponents.Zip(deadWearing, (c, w) => (onComponents * c) + (onWearing * w))];

    public override Outcome<IReadOnlyList<PeakPair>> Roll(Vehicle vehicle, double scale = 1)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        if (!PlanOf(vehicle).TryGet(out KinkedPlan? plan, out Refusal? refusal))
        {
            return refusal;
        }

        return Roll(vehicle, plan.With(Dead(1, 1)), scale);
    }

    /// <summary>The peaks under the dead load as it is.</summary>
    public Outcome<IReadOnlyList<PeakPair>> Roll(Vehicle vehicle, KinkedRays rays, double scale)
    {
        (KinkedPeak? Tension, KinkedPeak? Compression)[] found = rays.Peaks(scale);
        if (UncarriedUnder(vehicle, rays, found, scale) is { } uncarried)
        {
            return uncarried;
        }

        var peaks = new List<PeakPair>();
        for (int m = 0; m < found.Length; m++)
        {
            if (!PeakOf(m, found[m].Tension, 1, rays, vehicle).TryGet(out FoundPeak? tension, out Refusal? refusal)
                || !PeakOf(m, found[m].Compression, -1, rays, vehicle).TryGet(out FoundPeak? compression, out refusal))
            {
                return refusal;
            }

            peaks.Add(new PeakPair(tension.Peak, compression.Peak));
        }

        return peaks;
    }

    /// <summary>The rods' line of a member where a ray stands, for the set that acts there; where a rod is just at zero, both sets are given.</summary>
    public Outcome<IReadOnlyList<ActingSet>> SetsAt(Ray ray, double scale)
    {
        var straight = new double[response.Lines.Length];
        ray.At(scale, straight);
        bool[] second = [.. rods.Pairs.Select((_, k) => straight[response.Effects + k] > 0)];
        var found = new List<ActingSet>();
        foreach (bool zeroOnesAct in ray.Family.ZeroKinks.Count > 0 ? (bool[])[false, true] : [false])
        {
            foreach (int k in ray.Family.ZeroKinks)
            {
                second[k] = zeroOnesAct;
            }

            if (!SetOf(CodeOf(second)).TryGet(out ActingSet? set, out Refusal? refusal))
            {
                return refusal;
            }

            found.Add(set);
        }

        return found;
    }

    /// <summary>The position of a ray at a scale, as a peak that changes a member's force by so much.</summary>
    public Peak Describe(int member, Ray ray, double scale, double change, ActingSet set)
    {
        List<AxleEffect> axles = ray.Axles([.. set.Lines.Members[member].Line.Ordinates], scale);
        return new Peak(change, axles[0].Station, ray.Family.Arrangement.Direction, ray.Gaps(scale), axles, ray.Family.Approach)
        {
            Rods = new PeakRods(set.Lines.Slack!, set.Dead(member) - DeadAlone(member), ray.Family.ZeroKinks),
        };
    }

    /// <summary>The best placements for a member in a sense, and how many there are; the vehicle at a scale, the dead load as it is.</summary>
    public Outcome<PlacementCandidates> CandidatesOf(Vehicle vehicle, double scale, int member, Sense sense, int count)
    {
        if (!PlanOf(vehicle).TryGet(out KinkedPlan? plan, out Refusal? refusal))
        {
            return refusal;
        }

        double sign = sense == Sense.Tension ? 1 : -1;
        IReadOnlyList<KinkedPeak> ranked = plan.With(Dead(1, 1)).Ranked(member, sign, scale, out int positions);
        var told = new Dictionary<Direction, List<Peak>> { [Direction.Right] = [], [Direction.Left] = [] };
        foreach (KinkedPeak placed in ranked)
        {
            List<Peak> here = told[placed.Ray.Family.Arrangement.Direction];
            double[] axles = placed.Ray.AxleStations(scale);
            if (here.Count == count || here.Any(p => p.Axles.Zip(axles).All(a => Math.Abs(a.First.Station - a.Second) <= 1e-6)))
            {
                continue;
            }

            if (!SetsAt(placed.Ray, scale).TryGet(out IReadOnlyList<ActingSet>? acting, out refusal))
            {
                return refusal;
            }

            here.Add(Describe(member, placed.Ray, scale, sign * placed.Change, acting[0]));
        }

        return new PlacementCandidates(positions, told[Direction.Right], told[Direction.Left]);
    }

    /// <summary>Change of a member's force from that of the dead load alone, with axles of such loads at such stations [N].</summary>
    public double ChangeUnder(IEnumerable<(double Load, double Station)> axles, int member)
    {
        double[] straight = Dead(1, 1);
        double alone = response.Total(member, straight);
        foreach ((double load, double station) in axles)
        {
            for (int line = 0; line < straight.Length; line++)
            {
                straight[line] += load * new InfluenceLine(system.Truss.Stations, response.Lines[line]).OrdinateAt(station);
            }
        }

        return response.Total(member, straight) - alone;
    }

    public override InfluenceLines LinesAt(Peak peak)
    {
        ArgumentNullException.ThrowIfNull(peak);
        return peak.Rods is { } at ? sets.Values.First(s => s.Lines.Slack!.SequenceEqual(at.Slack)).Lines : Lines;
    }

    private double DeadAlone(int member) => Components!.MemberForces[member] + (WearingSurface?.MemberForces[member] ?? 0);

    // A peak is found once with take-overs and once more with the lines of the set that acts there; the two must agree.
    private Outcome<FoundPeak> PeakOf(int member, KinkedPeak? found, double sign, KinkedRays rays, Vehicle vehicle)
    {
        if (found is null)
        {
            return new FoundPeak(null);
        }

        if (!SetsAt(found.Ray, found.Scale).TryGet(out IReadOnlyList<ActingSet>? acting, out Refusal? refusal))
        {
            return refusal;
        }

        Peak peak = Describe(member, found.Ray, found.Scale, sign * found.Change, acting[0]);
        double second = peak.Axles.Sum(a => a.Effect) + peak.Rods!.DeadShift;
        double scale = (vehicle.Train.Weight * found.Scale) + Math.Abs(rays.DeadAlone(member));
        return Math.Abs(second - peak.Force) <= ForceSolution.RouteLimit * 10 * scale
            ? new FoundPeak(peak)
            : new Refusal.RoutesDiffer(system.Truss.Members[member].Name, Math.Abs(second - peak.Force) / scale);
    }

    private Refusal.UncarriedCompression? UncarriedUnder(Vehicle vehicle, KinkedRays rays, (KinkedPeak? Tension, KinkedPeak? Compression)[] found, double scale)
    {
        Refusal.UncarriedCompression? worst = null;
        foreach (int rod in rods.Unpaired)
        {
            double force = rays.DeadAlone(rod) - (found[rod].Compression?.Change ?? 0);
            if (force >= -PairedRods.ZeroForce * vehicle.Train.Weight * scale || force >= worst?.Force)
            {
                continue;
            }

            Ray? at = found[rod].Compression?.Ray;
            worst = new Refusal.UncarriedCompression(
                system.Truss.Members[rod].Name,
                force,
                new UncarriedUnder(vehicle.Name, at?.AxleStations(scale)[0], at?.Family.Arrangement.Direction, scale));
        }

        return worst;
    }

    private Outcome<ActingSet> SetOf(string code)
    {
        if (sets.TryGetValue(code, out ActingSet? known))
        {
            return known;
        }

        if (ActingSet.Of(system, components, wearingSurface, code).TryGet(out ActingSet? set, out Refusal? refusal))
        {
            return sets[code] = set;
        }

        return refusal;
    }

    private static string CodeOf(bool[] secondActs) => string.Concat(secondActs.Select(acts => acts ? '1' : '0'));

    private double[] WithTakeOvers(double[] forces) =>
        [.. forces, .. rods.Pairs.Select((p, i) => -rods.TakeOver(i) * forces[p.First])];

    private double[] TakeOver(int pair, double[] line) => [.. line.Select(y => -rods.TakeOver(pair) * y)];

    private sealed record FoundPeak(Peak? Peak);
}
