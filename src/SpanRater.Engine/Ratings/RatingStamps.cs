namespace SpanRater;

/// <summary>Collects what a rating assumed, or did in place of what was asked.</summary>
internal sealed class RatingStamps(Bridge bridge, RatingMethod method)
{
    private readonly List<Stamp> stamps = [];

    public IReadOnlyList<Stamp> All => stamps;

    private double DeckLength => bridge.Truss.Stations[^1] - bridge.Truss.Stations[0];

    /// <summary>What holds for the whole rating.</summary>
    public void AddForBridge(IReadOnlyList<LiveLoad> vehicles, bool hasWearingSurface)
    {
        if (!hasWearingSurface)
        {
            stamps.Add(new Stamp.NoWearingSurface());
        }

        if (bridge.Capacities.Any(c => Enum.GetValues<GivenCapacity>().Any(kind => c[kind] is not null)))
        {
            stamps.Add(new Stamp.GivenCapacities(method.GivenCapacityMeaning));
        }

        if (bridge.Deck.TrussShare is { } share)
        {
            stamps.Add(new Stamp.GivenShare(share, bridge.Deck.TrussShareReason));
        }
        else if (Math.Abs(bridge.Deck.WheelToKerb - Deck.UsualWheelToKerb) > 1e-9)
        {
            stamps.Add(new Stamp.GivenWheelToKerb(bridge.Deck.WheelToKerb));
        }

        AddImpact(vehicles);
        if (bridge.Rating.TruckTraffic is null
            && vehicles.FirstOrDefault(v => method.UsesTruckTraffic(v.Class)) is { } first
            && method.LevelsOf(first.Class, bridge.Rating)[0].LiveFactor is { } factor)
        {
            stamps.Add(new Stamp.UnknownTruckTraffic(factor));
        }

        AddToConfirm(vehicles);
        if (DeckLength > method.LaneTypeLegalLoadAbove
            && vehicles.Any(v => v.Class == VehicleClass.Legal)
            && !vehicles.Any(v => v is Loading { Class: VehicleClass.Legal, Lane: not null }))
        {
            stamps.Add(new Stamp.NoLaneTypeLegalLoad(DeckLength));
        }
    }

    /// <summary>What holds for the shares of one vehicle.</summary>
    public void AddForShares(string vehicle, double gauge, ClassRule rule, ShareOutcome.Found shares)
    {
        if (bridge.Deck is not { TrussShare: null, Roadway: { } roadway })
        {
            return;
        }

        double nearest = Math.Min(shares.Left.WheelToKerb, shares.Right.WheelToKerb);
        if (nearest < bridge.Deck.WheelToKerb)
        {
            Add(new Stamp.NearerToKerb(vehicle, nearest));
        }

        int lanes = bridge.Deck.LanesLoaded(LeverRule.LanesOn(roadway), rule.MostLanes);
        int abreast = LeverRule.MostAbreast(bridge.Deck, gauge);
        if (abreast < lanes)
        {
            Add(new Stamp.FewerAbreast(vehicle, lanes, abreast));
        }
    }

    /// <summary>What holds for the capacities of the rows, all of them made.</summary>
    public void AddForCapacities(IReadOnlyList<MemberRow> rows)
    {
        if (!rows.Any(r => r is { Capacity: not null, Resistance: null, Status: RatingStatus.Rated or RatingStatus.DeadExceeds }))
        {
            stamps.RemoveAll(s => s is Stamp.GivenCapacities);
        }

        foreach (Stamp stamp in ResistanceStamps.Of(bridge, rows))
        {
            Add(stamp);
        }
    }

    /// <summary>Adds a stamp that is not there yet.</summary>
    public void Add(Stamp stamp)
    {
        if (!stamps.Contains(stamp))
        {
            stamps.Add(stamp);
        }
    }

    private void AddToConfirm(IReadOnlyList<LiveLoad> vehicles)
    {
        foreach (LiveLoad load in vehicles)
        {
            if (method.DoubtOf(load) is { } clause && method.LevelsOf(load.Class, bridge.Rating)[0].LiveFactor is { } factor)
            {
                Add(clause == FactorClauses.Emergency && bridge.Rating.EmergencyFactor is { } given ? new Stamp.GivenEmergencyFactor(given, LoadAndResistanceFactorRating.EmergencyFactor)
                    : bridge.Rating.Confirmed.Contains(clause.Name) ? new Stamp.ConfirmedByUser(clause, factor) : new Stamp.DefaultToConfirm(clause, factor));
            }
        }
    }

    private void AddImpact(IReadOnlyList<LiveLoad> vehicles)
    {
        RatingSettings settings = bridge.Rating;
        if (settings.Impact is { } impact)
        {
            stamps.Add(new Stamp.GivenImpact(impact, method.Impact(0)));
        }
        else if (settings.CrawlSpeed is { } enforced)
        {
            stamps.Add(new Stamp.CrawlSpeed(enforced));
        }
        else if (settings.Surface is { } surface && method.ImpactOn(surface) is { } bySurface && DeckLength > method.SurfaceCountsAbove)
        {
            stamps.Add(new Stamp.RidingSurfaceCounts(surface, bySurface));
        }

        if (settings.Surface is { } given and not RidingSurface.Rough && !stamps.OfType<Stamp.RidingSurfaceCounts>().Any())
        {
            stamps.Add(new Stamp.RidingSurfaceWithoutEffect(given));
        }

        if (bridge.Truss.Members.Any(m => m.IsTimber))
        {
            stamps.Add(new Stamp.NoImpactOnTimber());
        }

        // A crowd of another class, as of cattle, takes none either.
        stamps.AddRange(vehicles.Select(v => v is Crowd ? VehicleClass.Crowd : v.Class).Distinct()
            .Where(c => !method.RuleOf(c).HasImpact && (settings.Impact is null || c == VehicleClass.Crowd)).Select(c => new Stamp.NoImpact(c)));
    }
}
