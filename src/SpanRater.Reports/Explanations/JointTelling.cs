using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells of a line that comes from the balance of one joint, or from no single equation.</summary>
internal static class JointTelling
{
    /// <summary>The joint alone gives the line.</summary>
    public static IEnumerable<ResultBlock> Alone(InfluenceNarration narration, Truss truss)
    {
        JointTie tie = narration.Tie!;
        string name = truss.Members[narration.Member].Name, joint = truss.Joints[tie.Joint].Name;
        string others = Told.List(OthersAt(tie.Joint, narration.Member, truss, narration.Lines.Slack));
        yield return new ResultBlock.Heading($"The joint {joint}");
        if (tie.OwnLoad == 0)
        {
            yield return new ResultBlock.Paragraph($"At {joint} the other members ({others}) lie in one line, and no load of the deck reaches the joint across it: nothing is there to balance a force in {name}. So it is zero wherever the load stands. {name} is not useless for that: it keeps {joint} in its place.");
            yield return new ResultBlock.Equation($"F({name}) = 0", $"F_{{{Told.Tex(name)}}} = 0");
            yield break;
        }

        yield return new ResultBlock.Paragraph($"At panel point {joint} the other members ({others}) lie in one line and can hold nothing across it: {name} alone holds what stands there. A load at any other panel point brings it nothing, so a vehicle reaches it only from the two panels beside {joint}.");
        yield return new ResultBlock.Equation(
            $"F({name}) = {Told.Number(tie.OwnLoad)} × load at {joint}",
            $"F_{{{Told.Tex(name)}}} = {Told.Number(tie.OwnLoad)} \\times P_{{{Told.Tex(joint)}}}");
    }

    /// <summary>No one equation gives the line; a joint may still tie it to another.</summary>
    public static IEnumerable<ResultBlock> Otherwise(InfluenceNarration narration, Truss truss)
    {
        string name = truss.Members[narration.Member].Name;
        yield return new ResultBlock.Heading("No single cut");
        yield return new ResultBlock.Paragraph($"No section was found that cuts {name} and leaves a single unknown in one equation, so its line does not follow from one moment or one shear.{(narration.Tie is null ? " It comes from the equations of all joints together." : "")}");
        if (narration.Tie is not { } tie)
        {
            yield break;
        }

        foreach (ResultBlock block in Tied(narration.Member, tie, truss, narration.Lines.Slack))
        {
            yield return block;
        }

        yield return new ResultBlock.Paragraph($"So its line is that of {truss.Members[tie.Other!.Value].Name} at another scale{(tie.OwnLoad == 0 ? "" : $", with {truss.Joints[tie.Joint].Name}'s own load on top")}: explain that one to see where it comes from.");
    }

    /// <summary>A joint ties the member to one other.</summary>
    public static IEnumerable<ResultBlock> Tied(int member, JointTie tie, Truss truss, IReadOnlyList<int>? slack)
    {
        string name = truss.Members[member].Name, joint = truss.Joints[tie.Joint].Name, other = truss.Members[tie.Other!.Value].Name;
        string[] inLine = [.. OthersAt(tie.Joint, member, truss, slack).Where(o => o != other)];
        string own = tie.OwnLoad == 0 ? "" : $", and {Told.Number(tie.OwnLoad)} for a unit load at {joint} itself";
        yield return new ResultBlock.Paragraph($"At joint {joint}, {Told.List(inLine)} {(inLine.Length == 1 ? "holds" : "hold")} nothing across {(inLine.Length == 1 ? "its" : "their")} line; across it there {(tie.OwnLoad == 0 ? "are" : "are, beside the load,")} only {name} and {other}, which balance one another: {Told.Number(tie.Ratio)} in {name} for one in {other}{own}.");
        yield return new ResultBlock.Equation(
            $"F({name}) = {Told.Number(tie.Ratio)} × F({other}){(tie.OwnLoad == 0 ? "" : $" + {Told.Number(tie.OwnLoad)} × load at {joint}")}",
            $"F_{{{Told.Tex(name)}}} = {Told.Number(tie.Ratio)} \\times F_{{{Told.Tex(other)}}}{(tie.OwnLoad == 0 ? "" : $" + {Told.Number(tie.OwnLoad)} \\times P_{{{Told.Tex(joint)}}}")}");
    }

    private static IEnumerable<string> OthersAt(int joint, int member, Truss truss, IReadOnlyList<int>? slack) =>
        Enumerable.Range(0, truss.Members.Count).Where(m => m != member && slack?.Contains(m) != true && (truss.FromJoint(m) == joint || truss.ToJoint(m) == joint)).Select(m => truss.Members[m].Name);
}
