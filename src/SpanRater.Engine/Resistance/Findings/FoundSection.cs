namespace SpanRater;

/// <summary>One cut through a member, as found.</summary>
/// <param name="Place">Its name.</param>
/// <param name="Observations">The observations that made it, what is slack included, in their order.</param>
/// <param name="AsRead">The section that the readings leave.</param>
/// <param name="Least">The section that is left where each reading is off by its doubt to the bad side.</param>
/// <param name="ShiftX">How far the centroid has moved across, from as built to as read; null where positions are not given [m].</param>
/// <param name="ShiftY">How far it has moved in the plane of the truss [m].</param>
public sealed record FoundCut(string Place, IReadOnlyList<Observation> Observations, MemberSection AsRead, MemberSection Least, double? ShiftX, double? ShiftY);

/// <summary>A section as found, or every fault of the observations.</summary>
/// <param name="Section">The section; null where there are faults.</param>
/// <param name="Faults">Every fault.</param>
public sealed record FoundSectionCheck(FoundSection? Section, IReadOnlyList<ObservationFault> Faults);

/// <summary>What a member is made of, and what was seen on it. Immutable.</summary>
public sealed class FoundSection
{
    private FoundSection(MemberSection asBuilt, MemberSection allAlong, IReadOnlyList<FoundCut> cuts, IReadOnlyList<Observation> observations) =>
        (AsBuilt, AllAlong, Cuts, Observations) = (asBuilt, allAlong, cuts, [.. observations]);

    /// <summary>The section as built.</summary>
    public MemberSection AsBuilt { get; }

    /// <summary>The section away from all cuts: as built, less what is slack.</summary>
    public MemberSection AllAlong { get; }

    /// <summary>The cuts at which something was seen, in the order they were first named; empty where nothing was.</summary>
    public IReadOnlyList<FoundCut> Cuts { get; }

    /// <summary>Everything seen on the member.</summary>
    public IReadOnlyList<Observation> Observations { get; }

    /// <summary>Bows, each with its doubt.</summary>
    public IEnumerable<Observation.Bow> Bows => Observations.OfType<Observation.Bow>();

    /// <summary>Cracks. Where there is one the member is not rated until an engineer has decided.</summary>
    public IEnumerable<Observation.Crack> Cracks => Observations.OfType<Observation.Crack>();

    /// <summary>What is slack.</summary>
    public IEnumerable<Observation.Slack> Slack => Observations.OfType<Observation.Slack>();

    /// <summary>The most lacing bars, or crossed pairs, missing next to each other; 0 where none is.</summary>
    public int LacingMissing => Observations.OfType<Observation.LacingMissing>().Select(o => o.Count).DefaultIfEmpty(0).Max();

    /// <summary>Rust between parts, to be told with the rating.</summary>
    public IEnumerable<Observation.PackRust> PackRust => Observations.OfType<Observation.PackRust>();

    /// <summary>A section on which nothing was seen.</summary>
    /// <param name="asBuilt">The section as built.</param>
    public static FoundSection Sound(MemberSection asBuilt) => new(asBuilt, asBuilt, [], []);

    /// <summary>Puts what was seen on a section, all faults told at once.</summary>
    /// <param name="asBuilt">The section as built.</param>
    /// <param name="observations">What was seen on one member of one truss.</param>
    public static FoundSectionCheck Create(MemberSection asBuilt, IReadOnlyList<Observation> observations)
    {
        ArgumentNullException.ThrowIfNull(asBuilt);
        ArgumentNullException.ThrowIfNull(observations);
        var faults = new List<ObservationFault>();
        int[] whole = [.. Positions(observations, o => o is Observation.Slack)];
        var allAlong = new Wasting(asBuilt, observations, withDoubt: false);
        allAlong.Apply([], whole, faults);

        // Told of the member, a crack or pack rust may name a part; it has to be there.
        foreach (int i in Positions(observations, o => o is Observation.Crack or Observation.PackRust && o.Part.Length > 0))
        {
            allAlong.PartOf(i, faults);
        }

        var cuts = new List<FoundCut>();
        foreach (string place in observations.Where(o => o.IsAtACut).Select(o => o.Place).Distinct())
        {
            int[] here = [.. Positions(observations, o => o.IsAtACut && o.Place == place)];
            var asRead = new Wasting(asBuilt, observations, withDoubt: false);
            var least = new Wasting(asBuilt, observations, withDoubt: true);
            int before = faults.Count;
            asRead.Apply(here, whole, faults);
            if (faults.Count == before)
            {
                least.Apply(here, whole, faults);
            }

            if (faults.Count == before)
            {
                MemberSection read = asRead.Section;
                cuts.Add(new FoundCut(
                    place, [.. here.Concat(whole).Order().Select(i => observations[i])], read, least.Section,
                    read.Properties?.X - asBuilt.Properties?.X, read.Properties?.Y - asBuilt.Properties?.Y));
            }
        }

        return faults.Count > 0
            ? new FoundSectionCheck(null, [.. faults.OrderBy(f => f.Index)])
            : new FoundSectionCheck(new FoundSection(asBuilt, allAlong.Section, cuts, observations), []);
    }

    private static IEnumerable<int> Positions(IReadOnlyList<Observation> observations, Func<Observation, bool> which) =>
        Enumerable.Range(0, observations.Count).Where(i => which(observations[i]));
}
