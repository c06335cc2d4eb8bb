using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Says in a letter what the posting review proposes: never more than a proposal, and who is to stay off meanwhile.</summary>
internal static class ProposalWording
{
    /// <summary>The heading and what stands under it.</summary>
    public static IEnumerable<ResultBlock> Blocks(ReviewedBridge reviewed)
    {
        yield return new ResultBlock.Heading("What is proposed, for the decision of the responsible engineer");
        if (reviewed.IsToBeKeptOff)
        {
            yield return new ResultBlock.Paragraph(OwnerLetter.KeepOff, Strong: true);
        }

        if (reviewed.Posting is not { } posting)
        {
            yield return new ResultBlock.Paragraph(PostingWording.NoRule(reviewed.Rating.Method));
            yield break;
        }

        SignFace face = reviewed.Sign;
        if (posting.Closure)
        {
            yield return new ResultBlock.Paragraph($"Proposed: to close the bridge until it has been reviewed. {WhyClosed(posting)}", Strong: true);
        }
        else
        {
            yield return new ResultBlock.Paragraph(PostingWording.Answer(posting));
            if (face.Lines.Count > 0)
            {
                yield return new ResultBlock.Items("Proposed, by kind of vehicle:", [.. face.Lines.Select(l => $"{l.What}: {l.Says}")]);
                yield return new ResultBlock.Paragraph(string.Join(' ', face.Remarks));
            }
        }

        if (!posting.IsClosureKnown)
        {
            yield return new ResultBlock.Paragraph($"Whether the bridge is under 3 US tons is not known{(posting.Legal.Count == 0 ? ", since no legal type was asked for" : "")}.");
        }

        foreach (string sentence in Others(posting))
        {
            yield return new ResultBlock.Paragraph(sentence, Strong: true);
        }

        yield return new ResultBlock.Paragraph("No limit is in force by this letter. The authority decides, and its own sign applies: sign.svg is a generic drawing.");
    }

    private static string WhyClosed(Posting posting) => posting.DeadExceeds is { } dead
        ? $"The weight of the bridge alone exceeds what {RatingWording.NameAt(dead)} carries in {RatingWording.ActsIn(dead)}, as entered: check the input first."
        : $"The smallest safe load of the legal types is {PostingWording.Tons(posting.Smallest!.SafeLoad)} US tons, for {posting.Smallest.Vehicle.Name}: under 3 US tons.";

    /// <summary>Which loads are to stay off that no limit covers: too heavy, or without a rating.</summary>
    public static IEnumerable<string> Others(Posting posting)
    {
        string[] heavy = [.. posting.Others.Where(o => o.Verdict == OtherVerdict.TooHeavy).Select(o => $"{o.Vehicle.Name} (rating factor {PostingWording.Factor(o.Deciding!.Factor)}{Passes(o)})")];
        if (heavy.Length > 0)
        {
            yield return $"Too heavy as entered, though no limit covers {(heavy.Length == 1 ? "it" : "them")}: {string.Join("; ", heavy)}. Keep {(heavy.Length == 1 ? "it" : "them")} off until the responsible engineer has decided.";
        }

        string[] unknown = [.. posting.NotGiven.Select(r => r.Vehicle.Name).Concat(posting.Others.Where(o => o.Verdict == OtherVerdict.NotGiven).Select(o => o.Vehicle.Name))];
        if (unknown.Length > 0)
        {
            yield return $"Without a rating, and to be kept off until there is one: {string.Join(", ", unknown)}.";
        }
    }

    private static string Passes(OtherLoad load) => SafeLoad.EquivalentLoad(load.Deciding!) is { } passes and > 0 ? $"; scaled as a whole {PostingWording.TenthsOfTons(passes)} US tons of it pass" : "";
}
