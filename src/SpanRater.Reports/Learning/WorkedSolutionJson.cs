using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Writes a worked solution for scripts: kN, m and kN·m, or plain numbers under a unit load.</summary>
internal static class WorkedSolutionJson
{
    public static void Write(Utf8JsonWriter json, Bridge bridge, LoadAsked asked, WorkedSolution worked)
    {
        var writer = new BalanceJson(worked, asked);
        WriteHead(json, bridge, asked);
        json.WriteStartObject("count");
        json.WriteNumber("members", worked.Stability.MemberCount);
        json.WriteNumber("reactions", worked.Stability.ReactionCount);
        json.WriteNumber("equations", worked.Stability.EquationCount);
        json.WriteNumber("rank", worked.Stability.Rank);
        json.WriteEndObject();
        json.WriteStartArray("slack");
        foreach (string rod in worked.Slack)
        {
            json.WriteStringValue(rod);
        }

        json.WriteEndArray();
        json.WriteStartArray("reactions");
        for (int f = worked.Truss.Members.Count; f < worked.Forces.Count; f++)
        {
            json.WriteStartObject();
            json.WriteString("name", worked.Names[f]);
            json.WriteNumber("force", writer.Force(worked.Forces[f]));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("zeroMembers");
        foreach (ZeroMember zero in worked.ZeroMembers)
        {
            json.WriteStartObject();
            json.WriteString("member", worked.Truss.Members[zero.Member].Name);
            json.WriteString("joint", worked.Truss.Joints[zero.Joint].Name);
            json.WriteString("rule", RuleOf(zero.Rule));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("steps");
        foreach (WorkedStep step in worked.Steps)
        {
            WriteStep(json, worked, step, writer);
        }

        json.WriteEndArray();
        json.WriteStartArray("leftOver");
        foreach (ClosingEquation closing in worked.LeftOver)
        {
            json.WriteStartObject();
            writer.WriteEquation(json, closing.Balance);
            json.WriteNumber("residual", writer.Force(closing.Residual));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("order");
        foreach (WorkedStep step in worked.Steps)
        {
            json.WriteStringValue(WorkedSolutionPage.Place(worked, step));
        }

        json.WriteEndArray();
        json.WriteNumber("residual", worked.LargestResidual);
    }

    public static void WriteRefused(Utf8JsonWriter json, Bridge bridge, LoadAsked asked, Refusal refusal)
    {
        WriteHead(json, bridge, asked);
        json.WriteStartArray("steps");
        json.WriteEndArray();
        json.WriteRefusal(refusal, bridge.Truss);
    }

    public static void WriteHead(Utf8JsonWriter json, Bridge bridge, LoadAsked asked)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("case", asked.UnitLoadAt is null ? asked.Loads.Name : null);
        json.WriteString("unitLoad", asked.UnitLoadAt);
    }

    private static void WriteStep(Utf8JsonWriter json, WorkedSolution worked, WorkedStep step, BalanceJson writer)
    {
        json.WriteStartObject();
        json.WriteString("kind", step.Kind switch
        {
            StepKind.WholeTruss => "wholeTruss",
            StepKind.Joint => "joint",
            StepKind.Section => "section",
            _ => "group",
        });
        writer.WriteJoints(json, "joints", step.Joints);
        json.WriteBoolean("afresh", step.IsAfresh);
        json.WriteStartArray("waiting");
        foreach (WaitingJoint waiting in step.Waiting)
        {
            json.WriteStartObject();
            json.WriteString("joint", worked.Truss.Joints[waiting.Joint].Name);
            json.WriteStartArray("unknown");
            foreach (int force in waiting.Forces)
            {
                json.WriteStringValue(worked.Names[force]);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("equations");
        foreach (Balance balance in step.Equations.SelectMany(e => e.Balances))
        {
            json.WriteStartObject();
            writer.WriteEquation(json, balance);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("results");
        foreach (int force in step.Found)
        {
            json.WriteStartObject();
            json.WriteString("name", worked.Names[force]);
            json.WriteNumber("force", writer.Force(worked.Forces[force]));
            json.WriteString("sense", worked.Names.IsMember(force) ? WorkedSolutionPage.SenseOf(worked, force) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string RuleOf(ZeroRule rule) => rule switch
    {
        ZeroRule.OneBar => "oneBar",
        ZeroRule.TwoBars => "twoBars",
        ZeroRule.TwoBarsLoadInLine => "twoBarsLoadInLine",
        _ => "threeBars",
    };
}
