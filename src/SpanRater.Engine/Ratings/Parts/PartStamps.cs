namespace SpanRater;

/// <summary>What the ratings of floor and connections assume, or do in place of what was asked.</summary>
internal static class PartStamps
{
    /// <summary>The stamps of the floor and connections of a rating.</summary>
    public static IEnumerable<Stamp> Of(Bridge bridge, RatingMethod method, IReadOnlyList<PartRow> rows)
    {
        if (bridge.Floor is { } floor)
        {
            if (floor is { Components: { } components, WearingSurface: { } wearing })
            {
                yield return new Stamp.FloorWeights(components, wearing, floor.Edge, floor.WeightSource);
            }

            if (floor.Parts.Any(p => p is FloorbeamPart or HangerPart))
            {
                foreach (StringerPart uncounted in floor.Stringers.Where(s => s.Count is null))
                {
                    yield return new Stamp.StringersNotCounted(uncounted.Name);
                }
            }

            if (floor.Parts.OfType<FloorbeamPart>().Where(b => b.Trussed is not null).Select(b => b.Name).ToArray() is { Length: > 0 } trussed)
            {
                yield return new Stamp.TrussedFloorbeams(string.Join(", ", trussed));
            }
        }

        // Of simple floorbeams, whose end takes what lies on it.
        foreach (PartRow end in rows.Where(r => r is { Part: PartKind.Floorbeam, ActsAs: PartEffect.Shear, Dead: { Line: null, Items.Count: > 0 } }).DistinctBy(r => r.At))
        {
            double ofCase = new[] { bridge.Cases, bridge.RightCases ?? [] }.Where(c => c.Count > 0)
                .Min(cases => -cases.Where(c => c.Name == Bridge.ComponentsCase).SelectMany(c => c.Loads).Where(l => l.Joint == end.At).Sum(l => l.Up));
            if (ofCase < end.DeadComponents * (1 - 0.02))
            {
                yield return new Stamp.FloorOutweighsTruss(end.At, end.DeadComponents, ofCase);
            }
        }

        if (rows.Any(r => r.Vehicle.Class == VehicleClass.Emergency && r.Part is not (PartKind.Floorbeam or PartKind.Hanger)) && bridge.Deck.Roadway is { } roadway && bridge.Deck.LanesLoaded(LeverRule.LanesOn(roadway), null) > 1)
        {
            yield return new Stamp.EmergencyAloneOnParts();
        }

        PartResistance[] all = [.. rows.Select(r => r.Resistance).OfType<PartResistance>().Distinct(ReferenceEqualityComparer.Instance).Cast<PartResistance>()];
        foreach (MetalMaterial metal in all.Select(r => r.Material).OfType<MetalMaterial>().DistinctBy(m => m.Name))
        {
            if (metal.Strength?.Origin is StrengthOrigin.ByYear by)
            {
                yield return new Stamp.StrengthByYear(metal.Name, metal.Kind, by.Built, by.Row);
            }
        }

        foreach (Stamp timber in ResistanceStamps.OfTimbers(all.Select(r => r.Material)))
        {
            yield return timber;
        }

        if (all.FirstOrDefault(r => r.PartFactors is { IsConditionAssumed: true })?.PartFactors is { } factors)
        {
            yield return new Stamp.ConditionNotGiven(factors.Condition.Value);
        }

        IEnumerable<Clause> ofStrength = all.SelectMany(r => r.Material is TimberMaterial { Origin: StrengthOrigin.ByGrade } ? r.Clauses.Prepend(TimberClauses.DesignValues) : r.Clauses);
        IEnumerable<Clause> ofLoad = rows.SelectMany(r => r.LiveParts).SelectMany(p => p.Rests);
        foreach (Clause clause in ofStrength.Concat(ofLoad).Where(c => c.ToConfirm).Distinct())
        {
            yield return bridge.Rating.Confirmed.Contains(clause.Name) ? new Stamp.StrengthConfirmedByUser(clause) : new Stamp.StrengthToConfirm(clause);
        }
    }
}
