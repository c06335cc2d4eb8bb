using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What a checker can follow with a pocket calculator: what the solutions leave unbalanced, the equations left over, and one member by a cut.</summary>
internal static class HandCheck
{
    /// <summary>The blocks.</summary>
    public static IEnumerable<ResultBlock> Of(ReviewedBridge reviewed)
    {
        BridgeRating rating = reviewed.Rating;
        MemberRow? followed = FieldReport.Followed(rating);
        int member = followed?.MemberIndex ?? 0;
        Bridge bridge = ChecksChapter.OfTruss(rating.Bridge, followed?.Truss);
        string name = bridge.Truss.Members[member].Name;
        var asked = LoadAsked.Case(bridge.FindCase(Bridge.ComponentsCase)!);
        Outcome<SectionCheck> outcome = SectionCheck.Of(bridge.Truss, asked.Loads, member);
        yield return new ResultBlock.Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"Every solution was put back into the equations of its joints: the largest imbalance is {rating.Residual:0.0e+0} of the largest load. Above {ForceSolution.ResidualLimit:0e+0} no result would be given."));
        yield return new ResultBlock.Paragraph($"By hand, {name} under {asked.Title}{(bridge.OnlyTruss is { } only ? $" of the {bridge.Deck.TrussNames[only]} truss" : "")}. Live load is opened axle by axle in the chapters before.");
        if (outcome.Value is { Worked: var worked })
        {
            foreach (ResultBlock block in WorkedSolutionPage.Closing(worked, asked.Notation(worked, reviewed.Units)))
            {
                yield return block;
            }
        }

        yield return new ResultBlock.Heading($"{name} by sections");
        foreach (ResultBlock block in FieldReport.Body(SectionPage.Of(bridge, asked, name, outcome, reviewed.Units)))
        {
            yield return block is ResultBlock.Heading { Level: 2 } part ? part with { Level = 3 } : block;
        }
    }
}
