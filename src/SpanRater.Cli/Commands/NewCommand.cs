using System.CommandLine;
using SpanRater.Cli.Terminal;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>new FOLDER --form NAME</c>: writes the bridge folder of a form of truss from its measures.</summary>
internal static class NewCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder to write: one that is not there yet, or an empty one. Nothing is overwritten.", HelpName = "FOLDER" };
        Option<string?> form = FormOption(), centre = Text("--centre", "one|crossed|open", "How the centre panel is braced where the panels are odd, or what runs across midspan of a double-intersection truss: one diagonal, two crossed rods that only pull, or nothing.");
        Option<string?> deck = Text("--deck", "bottom|top", "The chord that carries the deck: bottom, a through truss, or top, a deck truss. Unset: bottom.");
        Option<string?> sub = Text("--sub-diagonal", "strut|tie", "What holds the middle of a diagonal of a Baltimore truss. Unset: strut.");
        centre.CompletionSources.Add(_ => FormWords.Centres.Select(c => new System.CommandLine.Completions.CompletionItem(c.Word)));
        deck.CompletionSources.Add("bottom", "top");
        sub.CompletionSources.Add("strut", "tie");
        Option<string?> span = Text("--span", "LENGTH", "Distance between the supports, such as \"96 ft\" or \"29.3 m\". Give this or --panel; the files take its units.");
        Option<string?> panel = Text("--panel", "LENGTH", "Length of a panel, such as \"16 ft\" or 16'-6\".");
        Option<string?> panels = Text("--panels", "N", "Number of panels of the chord that carries the deck.");
        Option<string?> height = Text("--height", "LENGTH", "Height between the chords.");
        Option<string?> heights = Text("--heights", "LENGTHS", "Parker: height at each of U1, U2 and so on, such as \"22 ft, 27 ft, 27 ft, 22 ft\".");
        var pony = new Option<bool>("--pony") { Description = "Call it a pony truss: a low through truss without bracing overhead. The same statics, with a remark." };
        Option<string?> area = Text("--area", "AREA", "Area of every member, such as \"12 in2\". A redundant form asks for it.");
        Option<string?> name = Text("--name", "TEXT", "Name of the bridge. Unset: its form and panels.");
        Option<string?> dead = Text("--dead", "LOAD", "Dead load of the components on one truss per length, such as \"0.32 klf\": case DC.");
        Option<string?> wearing = Text("--wearing", "LOAD", "Dead load of the wearing surface on one truss per length: case DW.");
        var command = new Command("new", "Write the bridge folder of a form of truss from its measures.")
        {
            folder, form, span, panel, panels, height, heights, deck, pony, centre, sub, area, name, dead, wearing,
        };
        command.SetAction(parsed =>
        {
            string where = parsed.GetRequiredValue(folder);
            (NewBridge? bridge, IReadOnlyList<string> faults) = FormOptionsReader.Read(new FormOptions
            {
                Form = parsed.GetValue(form),
                Span = parsed.GetValue(span),
                Panel = parsed.GetValue(panel),
                Panels = parsed.GetValue(panels),
                Height = parsed.GetValue(height),
                Heights = parsed.GetValue(heights),
                Deck = parsed.GetValue(deck),
                Pony = parsed.GetValue(pony),
                Centre = parsed.GetValue(centre),
                SubDiagonal = parsed.GetValue(sub),
                Area = parsed.GetValue(area),
                Name = parsed.GetValue(name),
                Dead = parsed.GetValue(dead),
                Wearing = parsed.GetValue(wearing),
            });
            string[] all = [.. faults, .. WhyNot(where)];
            if (all.Length > 0)
            {
                throw new RefusedException(all);
            }

            IReadOnlyList<NewFile> files = BridgeFolderWriter.Files(bridge!.ToDraft());
            surroundings.Stop.ThrowIfCancellationRequested();
            WriteFolder(where, files);
            surroundings.Print(TextPage.Write(NewBridgePage.Of(bridge, where, files), bridge.Units, surroundings.TerminalWidth, surroundings.Colour));
            return ExitStatus.Done;
        });
        return command;
    }

    /// <summary>The option that names a form.</summary>
    public static Option<string?> FormOption()
    {
        Option<string?> form = Text("--form", "NAME", $"The form of the truss: {string.Join(", ", FormKind.All.Select(k => k.Key))}.");
        form.CompletionSources.Add(_ => NamesToComplete.Forms().Select(f => new System.CommandLine.Completions.CompletionItem(f)));
        return form;
    }

    /// <summary>Why a folder cannot be written: one message, or none.</summary>
    public static IEnumerable<string> WhyNot(string folder) => NewFolder.WhyNot(folder) is { } why ? [$"{folder}: {why}"] : [];

    /// <summary>Writes the folder, or ends the command.</summary>
    public static void WriteFolder(string folder, IReadOnlyList<NewFile> files)
    {
        try
        {
            NewFolder.Write(folder, files);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new RefusedException($"{folder}: cannot be written: {(e is UnauthorizedAccessException ? "access is denied" : e.Message.TrimEnd('.'))}. Nothing was written.");
        }
    }

    private static Option<string?> Text(string name, string help, string description) => new(name) { Description = description, HelpName = help };
}
