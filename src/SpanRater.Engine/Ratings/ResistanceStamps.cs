namespace SpanRater;

/// <summary>What the capacities of a rating assume, or do in place of what was asked.</summary>
internal static class ResistanceStamps
{
    /// <summary>The stamps of rows whose capacity follows from section and material.</summary>
    public static IEnumerable<Stamp> Of(Bridge bridge, IReadOnlyList<MemberRow> rows)
    {
        MemberRow[] counted = [.. rows.Where(r => r.Resistance is not null)];
        IEnumerable<MemberResistance> resistances = counted.Select(r => r.Resistance!).Distinct(ReferenceEqualityComparer.Instance).Cast<MemberResistance>();
        MemberResistance[] all = [.. resistances];
        foreach (MetalMaterial metal in all.Select(r => r.Make.Material).OfType<MetalMaterial>().DistinctBy(m => m.Name))
        {
            if (metal.Strength!.Origin is StrengthOrigin.ByYear by)
            {
                yield return new Stamp.StrengthByYear(metal.Name, metal.Kind, by.Built, by.Row);
            }
        }

        foreach (Stamp timber in OfTimbers(all.Select(r => r.Make.Material)))
        {
            yield return timber;
        }

        if (all.FirstOrDefault(r => r.Factors is { IsConditionAssumed: true })?.Factors is { } factors)
        {
            yield return new Stamp.ConditionNotGiven(factors.Condition.Value);
        }

        foreach (Clause clause in all.SelectMany(InDoubt).Distinct())
        {
            yield return bridge.Rating.Confirmed.Contains(clause.Name) ? new Stamp.StrengthConfirmedByUser(clause) : new Stamp.StrengthToConfirm(clause);
        }

        string[] heads = [.. ByMember(counted.Where(r => r.Resistance!.HeadsNotMeasured)).Select(r => r.Member.Name).Distinct()];
        if (heads.Length > 0)
        {
            yield return new Stamp.HeadsNotMeasured(string.Join(", ", heads));
        }

        foreach (IGrouping<MemberDuty, MemberRow> alike in ByMember(counted.Where(r => r.Resistance!.Slender is not null)).GroupBy(r => r.Resistance!.Slender!.Duty))
        {
            yield return new Stamp.TooSlender(string.Join(", ", alike.Select(r => r.Member.Name).Distinct()), alike.Select(r => r.Resistance!.Slender!).MaxBy(s => s.Slenderness)!);
        }

        if (all.Any(r => r.Make.Pony is not null))
        {
            yield return new Stamp.PonyFramesNotRated();
        }

        foreach (Stamp seen in Seen(counted))
        {
            yield return seen;
        }
    }

    /// <summary>The timbers that have values of their own.</summary>
    public static IEnumerable<Stamp> OfTimbers(IEnumerable<Material?> materials) =>
        materials.OfType<TimberMaterial>().Where(t => t.Origin is not StrengthOrigin.ByGrade).DistinctBy(t => t.Name).Select(t => new Stamp.OwnTimberValues(t.Name, t.Use.IsWet));

    private static IOrderedEnumerable<MemberRow> ByMember(IEnumerable<MemberRow> rows) => rows.OrderBy(r => r.MemberIndex).ThenByDescending(r => r.Resistance!.Slender?.Slenderness ?? 0);

    // What the mode that governs rests on; of timber also the values themselves. Of heads that are not measured no proportion is asked.
    private static IEnumerable<Clause> InDoubt(MemberResistance resistance)
    {
        MemberStrength strength = resistance.Governing.Strength;
        IEnumerable<Clause> own = strength.Clauses.Concat(strength.Factors.Select(f => f.Clause));
        return (resistance.Make.Material is TimberMaterial { Origin: StrengthOrigin.ByGrade } ? own.Prepend(TimberClauses.DesignValues) : own)
            .Where(c => c.ToConfirm && !(resistance.HeadsNotMeasured && c == ResistanceClauses.Eyebars));
    }

    private static IEnumerable<Stamp> Seen(IEnumerable<MemberRow> rows)
    {
        foreach (MemberRow row in rows.DistinctBy(r => (r.MemberIndex, r.Truss)).OrderBy(r => r.MemberIndex))
        {
            FoundSection section = row.Resistance!.Make.Section;
            foreach (Observation.PackRust rust in section.PackRust)
            {
                yield return new Stamp.PackRust(row.Member.Name, row.Truss, rust.Place);
            }

            if (section.Slack.Sum(s => s.Count) is > 0 and var slack)
            {
                yield return new Stamp.SlackPieces(row.Member.Name, row.Truss, slack);
            }
        }
    }
}
