namespace SpanRater;

/// <summary>A panel point at which an influence line bends.</summary>
/// <param name="PanelPoint">By position in <see cref="Truss.PanelPoints"/>.</param>
/// <param name="SlopeLeft">Slope of the line on its left [1/m].</param>
/// <param name="SlopeRight">Slope of the line on its right [1/m].</param>
public readonly record struct LineBend(int PanelPoint, double SlopeLeft, double SlopeRight);

/// <summary>
/// What there is to tell a learner about the influence line of a member: the section or the joint that gives it, and where
/// it bends. Whatever is told has been worked out beside the line and found equal to it within 1e-9; what was not is left out.
/// </summary>
public sealed class InfluenceNarration
{
    /// <summary>A rule that misses an ordinate by more than this part of the largest ordinate is not told [-].</summary>
    public const double Agreement = 1e-9;

    private InfluenceNarration(InfluenceLines lines, int member)
    {
        Lines = lines;
        Member = member;
        InfluenceLine line = lines.Members[member].Line;
        IsSlack = lines.Slack?.Contains(member) == true;
        Bends = BendsOf(line);
        if (IsSlack)
        {
            return;
        }

        Tie = LineSectionSearch.TiesOf(lines, member) is [var first, ..] ? first : null;
        IsJointAlone = Tie is { Other: null };
        Section = IsJointAlone ? null : LineSectionSearch.Of(lines, member);
    }

    /// <summary>The lines of the truss.</summary>
    public InfluenceLines Lines { get; }

    /// <summary>The member, by position in <see cref="Truss.Members"/>.</summary>
    public int Member { get; }

    /// <summary>Its influence line.</summary>
    public InfluenceLine Line => Lines.Members[Member].Line;

    /// <summary>True for a member that only pulls and is slack while these lines hold.</summary>
    public bool IsSlack { get; }

    /// <summary>The balance of a joint that ties the member to at most one other; null where no joint does.</summary>
    public JointTie? Tie { get; }

    /// <summary>True where the balance of one joint alone gives the line: a hanger, or a member that carries nothing.</summary>
    public bool IsJointAlone { get; }

    /// <summary>The section that gives the line by one equation; null where there is none, or the joint alone does.</summary>
    public LineSection? Section { get; }

    /// <summary>Where the line bends, within the deck.</summary>
    public IReadOnlyList<LineBend> Bends { get; }

    /// <summary>True where every load to the left of the section stands on one straight piece and every load to its right on another.</summary>
    public bool BendsOnlyAtTheSection => Section is { } s && Bends.All(b => b.PanelPoint == s.PanelLeft || b.PanelPoint == s.PanelLeft + 1);

    /// <summary>The facts about one member.</summary>
    /// <param name="lines">The lines of its truss.</param>
    /// <param name="member">The member, by position.</param>
    public static InfluenceNarration Of(InfluenceLines lines, int member)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentOutOfRangeException.ThrowIfNegative(member);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(member, lines.Members.Count);
        return new InfluenceNarration(lines, member);
    }

    private static LineBend[] BendsOf(InfluenceLine line)
    {
        double[] slopes = [.. Enumerable.Range(1, line.Stations.Count - 1).Select(i => (line.Ordinates[i] - line.Ordinates[i - 1]) / (line.Stations[i] - line.Stations[i - 1]))];
        double least = Agreement * line.Ordinates.Max(Math.Abs) / (line.Stations[^1] - line.Stations[0]) * line.Stations.Count;
        return [.. Enumerable.Range(1, slopes.Length - 1).Where(i => Math.Abs(slopes[i] - slopes[i - 1]) > least).Select(i => new LineBend(i, slopes[i - 1], slopes[i]))];
    }
}
