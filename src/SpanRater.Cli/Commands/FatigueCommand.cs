using System.CommandLine;
using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>fatigue BRIDGE --member NAME --vehicle NAME --trucks-a-day N --years Y [--detail D]</c>: an indication of fatigue life.</summary>
internal static class FatigueCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "fatigue", "Stress range of a member under one vehicle, and how much of its fatigue life is used: an indication. " + Words.Caution, draws: false, showsEveryTruss: true);
        Option<string?> member = command.MemberOption("The member.");
        member.Required = true;
        var vehicle = new Option<string>("--vehicle") { Description = "The vehicle that stands for the traffic, by its name in a catalogue.", HelpName = "NAME", Required = true };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        var trucks = new Option<string>("--trucks-a-day") { Description = "How many of it cross in a day.", HelpName = "NUMBER", Required = true };
        var years = new Option<string>("--years") { Description = "For how many years they have.", HelpName = "NUMBER", Required = true };
        var detail = new Option<string?>("--detail") { Description = "Detail category: A, B, B', C, C', D, E or E' (\"E prime\"). Unset: all side by side; none is assumed.", HelpName = "CATEGORY" };
        detail.CompletionSources.Add(_ => DetailCategory.All.Select(c => new System.CommandLine.Completions.CompletionItem(c.Name)));
        return command.With([member, vehicle, trucks, years, detail], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            int index = BridgeInput.FindMember(bridge.Truss, parsed.GetValue(member)!);
            LiveLoad load = BridgeInput.Find(reading.Catalogue, parsed.GetRequiredValue(vehicle), "--vehicle");
            Vehicle train = load as Vehicle ?? throw new RefusedException($"--vehicle \"{load.Name}\": fatigue is of a single vehicle on axles, and this is none.");
            var traffic = new FatigueTraffic(Number("--trucks-a-day", parsed.GetRequiredValue(trucks), 100_000), Number("--years", parsed.GetRequiredValue(years), 300));
            DetailCategory? category = parsed.GetValue(detail) is { } asked ? Category(asked) : null;
            return answer.Deliver(InputWarnings.On(FatiguePage.Of(FatigueNote.Of(bridge, index, train, traffic), bridge, index, category, units), reading.Findings), units);
        });
    }

    private static double Number(string option, string text, double most) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value > 0 && value <= most
            ? value
            : throw new RefusedException($"{option} {text}: must be a number above 0 and at most {most.ToString("0", CultureInfo.InvariantCulture)}.");

    private static DetailCategory Category(string asked) => DetailCategory.Find(asked)
        ?? throw new RefusedException($"--detail \"{asked}\": no such category; they are {string.Join(", ", DetailCategory.All.Select(c => c.Name))}. {FatigueWording.NoCategory}");
}
