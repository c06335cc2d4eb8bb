namespace SpanRater.Files;

/// <summary>Says which members carry nothing wherever the deck is loaded.</summary>
public static class ZeroMemberWording
{
    /// <summary>The members whose line is zero at every panel point, each with its rule where one shows it; null where there are none.</summary>
    /// <param name="lines">The influence lines.</param>
    public static ResultBlock.Items? UnderEveryDeckLoad(InfluenceLines lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Truss truss = lines.Truss;
        if (truss.Members.Any(m => m.TensionOnly))
        {
            // A rod that is slack in these lines may pull under another load.
            return null;
        }

        IReadOnlyList<ZeroMember> byRule = ZeroMembers.UnderEveryDeckLoad(truss);
        string[] entries =
        [
            .. lines.Members.Select((effect, m) => (effect, m)).Where(e => e.effect.Line.Ordinates.All(y => y == 0))
                .Select(e => byRule.FirstOrDefault(z => z.Member == e.m) is { } zero ? Rule(truss, zero) : $"{e.effect.Name}: no rule of two or three bars shows it; its line does"),
        ];
        return entries.Length == 0 ? null : new ResultBlock.Items("Zero under every panel-point load; such a member may still brace others:", entries);
    }

    /// <summary>Why a member is zero at a glance.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="zero">The member and its rule.</param>
    public static string Rule(Truss truss, ZeroMember zero)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(zero);
        string joint = truss.Joints[zero.Joint].Name, member = truss.Members[zero.Member].Name;
        string after = zero.After.Count == 0 ? "" : $"with {string.Join(", ", zero.After.Select(m => truss.Members[m].Name))} zero, ";
        string left = after.Length == 0 ? "" : " that are left";
        return zero.Rule switch
        {
            ZeroRule.OneBar => $"{member}: {after}it is the only bar left at {joint}, and no load acts there",
            ZeroRule.TwoBars => $"{member}: {after}two bars{left} meet at {joint}, not in one line, and no load acts there",
            ZeroRule.TwoBarsLoadInLine => $"{member}: {after}two bars{left} meet at {joint}, and the load lies in line with the other one",
            ZeroRule.ThreeBars => $"{member}: {after}three bars{left} meet at {joint}, the other two in one line, and no load acts there",
            _ => throw new ArgumentOutOfRangeException(nameof(zero), zero, "Every rule has a sentence."),
        };
    }
}
