using System.Globalization;

namespace SpanRater.Files;

/// <summary>What <c>forces</c> says: member forces and reactions for one load case.</summary>
public static class ForcesPage
{
    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="loads">The case.</param>
    /// <param name="outcome">The forces, or why there are none.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, LoadCase loads, Outcome<ForceSolution> outcome, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        var title = new ResultBlock.Heading($"{bridge.Name}: forces under case {loads.Name}");
        ResultColumn[] columns = [new("kind"), new("name"), new("role"), new("force", Quantity.Force), new("sense"), new("right", Quantity.Force), new("up", Quantity.Force)];
        if (!outcome.TryGet(out ForceSolution? solution, out Refusal? refusal))
        {
            return new ResultPage(
                [title, new ResultBlock.Paragraph(RefusalWording.Sentence(refusal, truss, units), Strong: true)],
                new ResultTable(columns, []),
                [RefusalWording.Sentence(refusal, truss, units)],
                json =>
                {
                    WriteHead(json, bridge, loads);
                    json.WriteStartArray("members");
                    json.WriteEndArray();
                    json.WriteStartArray("reactions");
                    json.WriteEndArray();
                    json.WriteNull("residual");
                    json.WriteRefusal(refusal, truss);
                },
                IsAnswer: false);
        }

        IReadOnlyList<object?>[] members =
        [
            .. truss.Members.Select((m, i) => (IReadOnlyList<object?>)["member", m.Name, m.Role, solution.MemberForces[i], SenseOf(solution.MemberForces[i]), null, null]),
        ];
        IReadOnlyList<object?>[] reactions =
        [
            .. solution.Reactions.Select(r => (IReadOnlyList<object?>)["reaction", truss.Joints[r.Joint].Name, "", null, "", r.Right, r.Up]),
        ];
        string[] rods = solution.Rods is { } state ? [.. RodWording.Of(state, truss)] : [];
        return new ResultPage(
            [
                title,
                .. rods.Select(r => new ResultBlock.Paragraph(r)),
                new ResultBlock.Grid(new ResultTable(
                    [new("member"), new("role"), new("force", Quantity.Force), new("sense")],
                    [.. members.Select(m => (IReadOnlyList<object?>)[m[1], m[2], m[3], m[4]])])),
                new ResultBlock.Grid(new ResultTable(
                    [new("reaction at"), new("right", Quantity.Force), new("up", Quantity.Force)],
                    [.. reactions.Select(r => (IReadOnlyList<object?>)[r[1], r[5], r[6]])])),
                new ResultBlock.Paragraph(string.Create(
                    CultureInfo.InvariantCulture,
                    $"Tension is positive, compression negative. Largest joint imbalance over largest load: {solution.Residual:0.0e+0} (refused above {ForceSolution.ResidualLimit:0e+0}). Found twice, {Routes(truss)}; the two agree within {ForceSolution.RouteLimit:0e+0} of the largest force.")),
            ],
            new ResultTable(columns, [.. members, .. reactions]),
            rods,
            json =>
            {
                WriteHead(json, bridge, loads);
                json.WriteStartArray("members");
                for (int m = 0; m < truss.Members.Count; m++)
                {
                    json.WriteStartObject();
                    json.WriteString("member", truss.Members[m].Name);
                    json.WriteForce("force", solution.MemberForces[m]);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteStartArray("reactions");
                foreach (Reaction reaction in solution.Reactions)
                {
                    json.WriteStartObject();
                    json.WriteString("joint", truss.Joints[reaction.Joint].Name);
                    json.WriteForce("right", reaction.Right);
                    json.WriteForce("up", reaction.Up);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                if (solution.Rods is { } acting)
                {
                    json.WriteRods(acting, truss);
                }

                json.WriteNumber("residual", solution.Residual);
            });
    }

    // A truss is solved without its slack rods; what is left is determinate in most cases, and redundant in some.
    private static string Routes(Truss truss) => Stability.Of(truss).Verdict == StabilityVerdict.Redundant && !truss.Members.Any(m => m.TensionOnly)
        ? "by forces that fit together and by the stiffness of the whole truss"
        : truss.Members.Any(m => m.TensionOnly) ? "by two routes for the rods that act" : "for the whole truss at once and joint by joint";

    private static void WriteHead(System.Text.Json.Utf8JsonWriter json, Bridge bridge, LoadCase loads)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("case", loads.Name);
    }

    private static string SenseOf(double force) => force == 0 ? "zero" : Words.Of(force > 0 ? Sense.Tension : Sense.Compression);
}
