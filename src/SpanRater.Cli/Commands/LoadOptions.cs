using System.CommandLine;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary>The options that ask for a load: a case of loads.csv, or a load of 1 at a joint; exactly one of the two.</summary>
internal sealed class LoadOptions
{
    private readonly Option<string?> caseName = new("--case") { Description = "The load case: DC, DW or one of loads.csv.", HelpName = "NAME" };
    private readonly Option<string?> unitLoad = new("--unit-load") { Description = "In place of a case: a load of 1 downward at this joint.", HelpName = "JOINT" };

    public LoadOptions(Argument<string> bridge)
    {
        caseName.CompletionSources.Add(context => NamesToComplete.Cases(context.ParseResult.GetValue(bridge)));
        unitLoad.CompletionSources.Add(context => NamesToComplete.Joints(context.ParseResult.GetValue(bridge)));
    }

    public IReadOnlyList<Option> All => [caseName, unitLoad];

    /// <summary>The load asked for.</summary>
    public LoadAsked In(ParseResult parsed, Bridge bridge) => (parsed.GetValue(caseName), parsed.GetValue(unitLoad)) switch
    {
        ({ } name, null) => LoadAsked.Case(BridgeInput.FindCase(bridge, name)),
        (null, { } joint) => LoadAsked.UnitLoad(BridgeInput.FindJoint(bridge.Truss, joint, "--unit-load")),
        (null, null) => throw new RefusedException("What load? Give --case NAME, a load case, or --unit-load JOINT, a load of 1 downward at that joint."),
        _ => throw new RefusedException("--case and --unit-load: give one of the two, not both."),
    };
}
