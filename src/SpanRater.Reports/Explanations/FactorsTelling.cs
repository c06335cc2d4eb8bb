using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Where condition and system factor of a resistance come from: what was given and where, and the clause that makes a factor of it.</summary>
internal static class FactorsTelling
{
    /// <summary>Both factors, and the least of their product.</summary>
    public static ResultBlock.Items Of(MemberFactors factors) => new("From:",
    [
        $"φc = {SheetUnits.Plain(factors.Condition.Value)}, {Condition(factors)}: {Source(factors.Condition.Clause)}",
        $"φs = {SheetUnits.Plain(factors.System.Value)}, system: {Kind(factors.Kind)}: {Source(factors.System.Clause)}",
        $"their product at least {SheetUnits.Plain(MemberFactors.Least)}: {Source(StrengthClauses.LeastOfBoth)}",
    ]);

    private static string Condition(MemberFactors factors) => factors.Given switch
    {
        null => "condition not given, that of a poor one assumed (condition under [rating] in bridge.toml)",
        SpanRater.Condition.Good => "condition good (bridge.toml, [rating], condition = \"good\")",
        SpanRater.Condition.Fair => "condition fair (bridge.toml, [rating], condition = \"fair\")",
        _ => "condition poor (bridge.toml, [rating], condition = \"poor\")",
    };

    private static string Kind(SystemKind kind) => kind switch
    {
        SystemKind.RivetedTrussMember => "as a riveted member of a truss (by ends in members.csv; a bolted or pinned end, and a connection, counts as riveted)",
        SystemKind.WeldedTrussMember => "as a welded member of a truss (by ends in members.csv)",
        SystemKind.MultipleEyebars => "as a member of several eyebars (by its pieces in sections.csv)",
        SystemKind.OtherTrussMember => "as a member that the table does not name: a single bar or rod, a timber, or one whose ends are not given (by its section, its material and its ends in members.csv)",
        SystemKind.WideFloorbeam => "as a floorbeam over 12 ft from the next (by the panels of joints.csv)",
        SystemKind.OtherFloorPart => "as a floorbeam at most 12 ft from the next (by the panels of joints.csv)",
        _ => "as a stringer or deck between floorbeams (by its part in floor.csv)",
    };

    private static string Source(Clause clause) => clause.Mark == ClauseMark.Practice ? "common practice" : clause.CitationWithMark;
}
