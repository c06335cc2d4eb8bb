namespace SpanRater;

/// <summary>
/// What stringers take: the exact moving-load effects of the whole load on one span, shared to one stringer by the published table for the deck or by
/// the lever rule, and the dead load on its strip of deck.
/// </summary>
internal sealed class StringerLoading(Bridge bridge, Floor floor, RatingMethod method)
{
    private readonly ImpactPolicy impact = ImpactPolicy.Of(bridge, method);

    public IEnumerable<PartDemand> DemandsOf(StringerPart part, LiveLoad load) => FloorCapacity.EffectsOf(part).Select(effect => DemandOf(part, load, effect));

    private PartDemand DemandOf(StringerPart part, LiveLoad load, PartEffect effect)
    {
        var missing = new List<MissingDatum>(DeckWeights.Missing(floor));
        DeckPart? deck = floor.Parts.OfType<DeckPart>().FirstOrDefault();
        if (deck is null && load is not Crowd)
        {
            missing.Add(new MissingDatum.DeckType());
        }

        if (bridge.Deck.Roadway is null && load is not Crowd)
        {
            missing.Add(new MissingDatum.PlaceAcross(new ShareOutcome.NotGiven(false, true)));
        }

        if (missing.Count > 0)
        {
            return PartDemand.Lacking(part, effect, missing);
        }

        bool isTimber = part.Make?.Material is TimberMaterial;
        double span = part.Span, section = effect == PartEffect.Shear && isTimber ? TimberShear.Distance(DepthOf(part), span) : 0;
        FloorDead dead = new FloorDead(effect, span) { Section = section }
            .With(FloorWeight.Deck, floor.Components!.Value * part.Spacing, part.Spacing, 0, span)
            .With(FloorWeight.Own, part.OwnWeight, 0, 0, span)
            .With(FloorWeight.WearingSurface, floor.WearingSurface!.Value * part.Spacing, part.Spacing, 0, span);
        return new PartDemand(part, effect, "", dead, [.. WaysOf(part, load, effect, section, deck, isTimber)], []) { LoadedLength = span };
    }

    private static double DepthOf(StringerPart part) => part.Make!.Section.AsBuilt.Parts.SelectMany(p => p.Carrying).Max(p => p.Shape.AsBuilt(ShapeDimension.Depth) ?? 0);

    private IEnumerable<IReadOnlyList<PartLive>> WaysOf(StringerPart part, LiveLoad load, PartEffect effect, double section, DeckPart? deck, bool isTimber)
    {
        if (load is Crowd or TrackedVehicle)
        {
            foreach (LiveEffect strip in OnStrip(part, load, effect))
            {
                yield return [.. strip.Parts.Select(p => new PartLive.OnStrip(
                    p, load is Crowd ? part.Spacing : TakeOf(part, load, effect, 1, ((TrackedVehicle)load).Gauge, deck!, isTimber).Share, impact.Of(load.Class, isTimber, false, p)))];
            }

            yield break;
        }

        foreach (SpanLive live in SpanLive.Ways(load, part.Span, effect == PartEffect.Moment ? SpanEffect.Moment : SpanEffect.Shear, section))
        {
            double gauge = live.Vehicle?.Gauge ?? Vehicle.StandardGauge;
            int lanes = bridge.Deck.LanesLoaded(LeverRule.LanesOn(bridge.Deck.Roadway!.Value), method.RuleOf(load.Class).MostLanes);
            StringerTake take = Enumerable.Range(1, lanes).Select(n => TakeOf(part, load, effect, n, gauge, deck!, isTimber)).MaxBy(t => t.Share)!;
            var parts = new List<PartLive>();
            if (live.Axles is { } axles)
            {
                double across = effect == PartEffect.Moment ? take.Share : take.OfShear(axles, isTimber && effect == PartEffect.Shear);
                parts.Add(new PartLive.OnStringer(live, take, false, axles.Effect, across, impact.Of(load.Class, isTimber, false, part.Span)));
            }

            if (live.Lane is { } lane)
            {
                parts.Add(new PartLive.OnStringer(live, take, true, live.LaneEffect, take.Share, impact.OfLane(load.Class, isTimber, lane, part.Span)));
            }

            yield return parts;
        }
    }

    // A patch bends a simple span most in its middle; a crowd covers all of it.
    private static IEnumerable<LiveEffect> OnStrip(StringerPart part, LiveLoad load, PartEffect effect)
    {
        double l = part.Span;
        var line = new InfluenceLine([0, l / 2, l], effect == PartEffect.Moment ? [0, l / 4, 0] : [1, 0.5, 0]);
        return new LiveLoadPlan(line.Stations, load).EffectsOn(line, Sense.Tension, width: part.Spacing);
    }

    private StringerTake TakeOf(StringerPart part, LiveLoad load, PartEffect effect, int lanes, double gauge, DeckPart deck, bool isTimber)
    {
        ClassRule rule = method.RuleOf(load.Class);
        double presence = rule.HasPresence ? method.Presence(lanes) : 1;
        StringerMaterial beam = isTimber ? StringerMaterial.Timber : StringerMaterial.Steel;
        double lever = presence * StringerDistribution.InteriorByLever(part.Spacing, gauge, lanes);

        // The table is for wheel lines 6 ft apart, and holds for wider ones; narrower ones crowd onto one stringer.
        StringerShare? table = gauge < Vehicle.StandardGauge - 1e-9 ? null : StringerDistribution.Of(deck.Type, ThicknessOf(deck), beam, part.Spacing, lanes, method.Distribution);
        if (table is null)
        {
            return new StringerTake(lever, lever, lanes, presence, null);
        }

        double share = !table.PresenceInIt ? presence * table.Lanes : rule.HasPresence ? table.Lanes : table.WithoutPresence;
        return new StringerTake(share, Math.Max(lever, share), lanes, presence, table);
    }

    private static double? ThicknessOf(DeckPart deck) =>
        deck.Make?.Section.AsBuilt.Parts is [{ Pieces: [{ Shape: var shape }] }] ? shape.AsBuilt(ShapeDimension.Depth) : null;
}

/// <summary>What one stringer takes of a vehicle.</summary>
/// <param name="Share">Of its moment: vehicles' worth, presence in it [-].</param>
/// <param name="AtSupport">The same of an axle over the support, by the lever rule [-].</param>
/// <param name="Lanes">Lanes loaded.</param>
/// <param name="Presence">Presence factor of so many lanes [-].</param>
/// <param name="Table">Row of the published table; null where the share is by the lever rule.</param>
public sealed record StringerTake(double Share, double AtSupport, int Lanes, double Presence, StringerShare? Table)
{
    /// <summary>
    /// What of the whole shear one stringer takes: of timber half of (0.60 of one wheel line, undistributed, and the distributed shear); else the axle over the
    /// support by the lever rule, and the others as for moment.
    /// </summary>
    /// <param name="axles">The axles that give the shear.</param>
    /// <param name="byTimberRule">Whether the rule for timber holds.</param>
    public double OfShear(SpanPeak axles, bool byTimberRule)
    {
        ArgumentNullException.ThrowIfNull(axles);
        if (byTimberRule)
        {
            return TimberShear.Share(Presence / 2, Share);
        }

        double atSupport = axles.Axles.MaxBy(a => a.Effect)!.Effect;
        return ((AtSupport * atSupport) + (Share * (axles.Effect - atSupport))) / axles.Effect;
    }
}
