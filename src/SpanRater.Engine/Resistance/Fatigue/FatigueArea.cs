namespace SpanRater;

/// <summary>The least area of a member that its force range is spread over: net of holes, at the worst cut found.</summary>
/// <param name="Value">The area [m²].</param>
/// <param name="Place">The cut; null away from all cuts.</param>
/// <param name="IsNet">Whether it is less than the gross area there.</param>
/// <param name="HeadsNotMeasured">Whether eyebars without measured heads are counted by their bodies.</param>
internal sealed record FatigueArea(double Value, string? Place, bool IsNet, bool HeadsNotMeasured)
{
    /// <summary>What stands in the way of a member's area, and of the categories for it.</summary>
    public static IEnumerable<FatigueObstacle> Obstacles(Member member, MemberMake? make)
    {
        if (make?.Material is TimberMaterial || member.IsTimber)
        {
            yield return new FatigueObstacle.NotSteel(make?.Material?.Name ?? "", MaterialKind.Timber);
            yield break;
        }

        if (make is null)
        {
            yield return new FatigueObstacle.NoSection();
            yield break;
        }

        if (make.Material is null)
        {
            yield return new FatigueObstacle.NoMaterial();
        }
        else if (make.Material.Kind == MaterialKind.WroughtIron)
        {
            yield return new FatigueObstacle.NotSteel(make.Material.Name, make.Material.Kind);
        }

        if (make.Section.Cracks.FirstOrDefault() is { } crack)
        {
            yield return new FatigueObstacle.Cracked(crack.Place);
        }

        MemberSection built = make.Section.AsBuilt;
        if (!MemberCapacity.IsOfBars(built) && built.PartsWithoutNetArea.Count > 0)
        {
            yield return new FatigueObstacle.Holes(built.Name, string.Join(", ", built.PartsWithoutNetArea));
        }
        else if (Of(make.Section) is { Value: <= 0 } none)
        {
            yield return new FatigueObstacle.NothingLeft(none.Place);
        }
    }

    /// <summary>The least area, away from all cuts and at each of them.</summary>
    public static FatigueArea Of(FoundSection section) =>
        section.Cuts.Select(c => At(c.Place, c.AsRead)).Prepend(At(null, section.AllAlong)).MinBy(a => a.Value)!;

    // An eyebar may be thinner in its body than across its pin hole, so that neither is more than the other.
    private static FatigueArea At(string? place, MemberSection section)
    {
        double net = section.Parts.Sum(p => Math.Min(p.NetArea ?? p.Area, p.Area));
        return new FatigueArea(
            net, place, net < section.Area * (1 - 1e-9),
            MemberCapacity.Carrying(section).Any(p => p.Shape.Kind == ShapeKind.Eyebar) && section.Parts.Any(p => p.NetArea is null));
    }
}
