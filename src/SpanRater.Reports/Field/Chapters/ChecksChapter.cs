using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>What the solutions leave over, and one member checked by hand: by cutting the truss in two, as a pocket calculator works it.</summary>
internal static class ChecksChapter
{
    /// <summary>The chapter.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="checkedRow">The row whose member is checked by hand; null where no member has a row.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(BridgeRating rating, MemberRow? checkedRow, DisplayUnits units)
    {
        Bridge bridge = OfTruss(rating.Bridge, checkedRow?.Truss);
        LoadAsked dead = LoadAsked.Case(bridge.DeadLoad!);
        Outcome<WorkedSolution> outcome = WorkedSolution.Of(bridge.Truss, dead.Loads);
        return new ReportChapter("checks", "Residuals and hand check",
        [
            new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Every solution is put back into the equilibrium of all joints. {RatingPage.LargestResidual(rating)[..^1]} of the largest load, over all solutions that this rating rests on; above {ForceSolution.ResidualLimit:0e+0} nothing would be rated.")),
        ])
        {
            Parts =
            [
                .. LeftOver(bridge, dead, outcome, units),
                .. checkedRow is null ? (ReportPart[])[] : [.. ByHand(bridge, dead, checkedRow, units), .. OrdinateByHand(rating, bridge, checkedRow, units)],
            ],
        };
    }

    /// <summary>The bridge with the dead loads of the truss of that name; as it is where the trusses are alike.</summary>
    public static Bridge OfTruss(Bridge bridge, string? truss) =>
        bridge.RightCases is null ? bridge : bridge.OfTruss(truss is not null && bridge.Deck.TrussNames[1] == truss ? 1 : 0);

    private static IEnumerable<ReportPart> LeftOver(Bridge bridge, LoadAsked dead, Outcome<WorkedSolution> outcome, DisplayUnits units)
    {
        if (outcome.Value is not { } worked)
        {
            yield return new ReportPart.Said([new ResultBlock.Paragraph($"No equations are left over to close by themselves. {RefusalWording.Sentence(outcome.Refusal!, bridge.Truss, units)}")]);
            yield break;
        }

        yield return new ReportPart.Said([new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Joint by joint under {dead.Title}, {worked.LeftOver.Count} equations are left over once every force is found; the largest of them leaves {worked.LargestResidual:0.0e+0} of the largest force."))]);
        yield return new ReportPart.Fold("left-over", $"The equations left over under {dead.Title}", [new ReportPart.Said([.. WorkedSolutionPage.Closing(worked, dead.Notation(worked, units)).Skip(1)])]);
    }

    private static IEnumerable<ReportPart> ByHand(Bridge bridge, LoadAsked dead, MemberRow row, DisplayUnits units)
    {
        Outcome<SectionCheck> outcome = SectionCheck.Of(bridge.Truss, dead.Loads, row.MemberIndex);
        string name = ReportPart.Brief(row.Member.Name);
        yield return new ReportPart.Said([new ResultBlock.Heading($"{name} by hand: the dead load"), new ResultBlock.Paragraph($"The force of {name} under the dead load{(bridge.OnlyTruss is { } t ? $" on the {bridge.Deck.TrussNames[t]} truss" : "")} {(outcome.Refusal is null ? "a second time, by cutting the truss in two." : "is not found by a cut:")}")]);
        foreach (ReportPart part in Cut(bridge, dead, row, outcome, "hand", units))
        {
            yield return part;
        }
    }

    // The line that a vehicle is rolled over rests on its ordinates: the largest is found by hand as well.
    private static IEnumerable<ReportPart> OrdinateByHand(BridgeRating rating, Bridge bridge, MemberRow row, DisplayUnits units)
    {
        InfluenceLine line = rating.Crossing.Lines.Members[row.MemberIndex].Line;
        string name = ReportPart.Brief(row.Member.Name);
        int at = Enumerable.Range(0, line.Ordinates.Count).MaxBy(i => Math.Abs(line.Ordinates[i]));
        yield return new ReportPart.Said([new ResultBlock.Heading($"{name} by hand: its largest ordinate")]);
        if (rating.Crossing.Lines.Slack is not null)
        {
            yield return new ReportPart.Said([new ResultBlock.Paragraph("Rods only pull here: which of them act hangs on dead and live load together, so that a load of 1 by itself is no check of an ordinate.")]);
            yield break;
        }

        if (line.Ordinates[at] == 0)
        {
            yield return new ReportPart.Said([new ResultBlock.Paragraph($"No load on the deck brings a force into {name}: there is no ordinate to check.")]);
            yield break;
        }

        LoadAsked unit = LoadAsked.UnitLoad(bridge.Truss.Joints[bridge.Truss.PanelPoints[at]].Name);
        yield return new ReportPart.Said([new ResultBlock.Paragraph($"With {unit.Title}, the table of ordinates has {Told.Number(line.Ordinates[at]).Replace('-', '−')} for {name}.")]);
        foreach (ReportPart part in Cut(bridge, unit, row, SectionCheck.Of(bridge.Truss, unit.Loads, row.MemberIndex), "hand-ordinate", units))
        {
            yield return part;
        }
    }

    private static IEnumerable<ReportPart> Cut(Bridge bridge, LoadAsked asked, MemberRow row, Outcome<SectionCheck> outcome, string id, DisplayUnits units)
    {
        ResultBlock[] blocks = [.. SectionPage.Of(bridge, asked, row.Member.Name, outcome, units).Blocks.Skip(1)];
        if (outcome.Value is not { Cuts.Count: > 0 } check)
        {
            yield return new ReportPart.Said(blocks);
            yield break;
        }

        // What comes of it first, then the work.
        ForceNotation notation = asked.Notation(check.Worked, units);
        yield return new ReportPart.Said([blocks[^1]]);
        yield return new ReportPart.Fold(
            id,
            $"The cut and the sum, under {asked.Title}",
            [
                .. check.Cuts.Select((c, i) => new ReportPart.Sketch(
                    FreeBodyPicture.DrawingOfCut(check, i, notation),
                    $"Cut {(i + 1).ToString(CultureInfo.InvariantCulture)}, for {ReportPart.Brief(check.Worked.Truss.Members[c.Member].Name)}. {FreeBodyPicture.SignsOf(StepKind.Section, notation)}",
                    $"Part of the truss that the cut leaves, with the forces on it; the text below names them all.")),
                new ReportPart.Said(blocks[..^1]),
            ],
            IsOpen: true);
    }
}
