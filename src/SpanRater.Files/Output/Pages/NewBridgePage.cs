using System.Globalization;

namespace SpanRater.Files;

/// <summary>What <c>new</c> says: what was written, and what to type next.</summary>
public static class NewBridgePage
{
    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="folder">Its folder, as it was typed.</param>
    /// <param name="files">Its files.</param>
    public static ResultPage Of(NewBridge bridge, string folder, IReadOnlyList<NewFile> files)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(files);
        string typed = OnCommandLine(folder);
        string picture = OnCommandLine(Path.TrimEndingDirectorySeparator(folder) + ".png");
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading(bridge.Name),
            new ResultBlock.Paragraph(bridge.Description),
        };
        blocks.AddRange(bridge.Remarks.Select(r => new ResultBlock.Paragraph(r)));
        blocks.Add(new ResultBlock.Paragraph(RefusalWording.Count(bridge.Stability)));
        blocks.Add(new ResultBlock.Items($"Written to {folder}:", [.. files.Select(f => f.Name)]));
        bool weighs = bridge.Cases.Any(c => c.Name == Bridge.ComponentsCase);
        string first = !weighs && bridge.Truss.Members.Any(m => m.TensionOnly) ? $", once {BridgeFolder.LoadsFile} has the dead load" : "";
        string[] forces = bridge.Stability.Verdict == StabilityVerdict.Mechanism ? [] :
        [
            $"spanrater influence {typed}{first}",
            $"spanrater roll {typed} --vehicle \"Type 3\"{first}",
        ];
        blocks.Add(new ResultBlock.Items(
            "Next:",
            [
                $"spanrater check {typed} --picture {picture}",
                .. forces,
                .. forces.Length == 0 ? [] : (string[])[string.Create(CultureInfo.InvariantCulture, $"spanrater rate {typed}, once {BridgeFolder.BridgeFile} has the method and the roadway{(weighs ? "" : $", {BridgeFolder.LoadsFile} the dead load")} and {BridgeFolder.MembersFile} the capacities")],
            ]));
        return new ResultPage(blocks, new ResultTable([new("file")], [.. files.Select(f => (IReadOnlyList<object?>)[f.Name])]), [], _ => { });
    }

    /// <summary>A path as it is typed: in quotes where it holds a space.</summary>
    /// <param name="path">The path.</param>
    public static string OnCommandLine(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Any(char.IsWhiteSpace) ? $"\"{path}\"" : path;
    }
}
