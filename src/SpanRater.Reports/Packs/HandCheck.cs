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
        (int member, int truss) = Chosen(rating);
        Bridge bridge = rating.Bridge.OfTruss(truss);
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

    // The member that governs; where a rating is withheld, the bar that goes slack; else the first.
    private static (int Member, int Truss) Chosen(BridgeRating rating)
    {
        RatingRow? row = rating.GoverningMember ?? rating.Rows.FirstOrDefault(r => r.Status == RatingStatus.Withheld);
        int truss = row?.Truss is { } named ? Math.Max(0, rating.Bridge.Deck.TrussNames.ToList().IndexOf(named)) : 0;
        return (row switch
        {
            MemberRow { Status: not RatingStatus.Withheld } member => member.MemberIndex,
            { Reason: NotRatedReason.Uncarried reason } => rating.Bridge.Truss.FindMember(reason.Member) ?? 0,
            _ => 0,
        }, truss);
    }
}
