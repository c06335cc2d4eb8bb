using System.Text;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>What a bridge folder is written from.</summary>
/// <param name="Name">Name of the bridge.</param>
/// <param name="Truss">One of its trusses.</param>
/// <param name="Cases">Static load cases on one truss; none for no table of loads.</param>
/// <param name="Units">The units of the tables.</param>
/// <param name="Remarks">Lines that stand above everything in bridge.toml, each behind a #.</param>
public sealed record BridgeDraft(string Name, Truss Truss, IReadOnlyList<LoadCase> Cases, DisplayUnits Units, IReadOnlyList<string> Remarks);

/// <summary>
/// Writes a bridge folder that <see cref="BridgeFolder"/> reads back as the same bridge, and a spreadsheet opens: the files as
/// bytes, UTF-8, lines ending in LF, the same for the same draft.
/// </summary>
public static class BridgeFolderWriter
{
    /// <summary>The files of the folder.</summary>
    /// <param name="draft">What to write.</param>
    public static IReadOnlyList<NewFile> Files(BridgeDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var files = new List<NewFile>
        {
            new(BridgeFolder.BridgeFile, Encoding.UTF8.GetBytes(Toml(draft))),
            new(BridgeFolder.JointsFile, Joints(draft)),
            new(BridgeFolder.MembersFile, Members(draft)),
        };
        if (draft.Cases.Count > 0)
        {
            files.Add(new(BridgeFolder.LoadsFile, Loads(draft)));
        }

        return files;
    }

    /// <summary>The unit in which a draft's lengths are written.</summary>
    internal static Unit LengthUnit(DisplayUnits units) => Unit.Find(units.Symbol(Quantity.Length))!;

    /// <summary>The unit in which a draft's forces are written.</summary>
    internal static Unit ForceUnit(DisplayUnits units) => Unit.Find(units.Symbol(Quantity.Force))!;

    // Areas of members are read in square centimetres, as section tables have them.
    private static Unit AreaUnit(DisplayUnits units) => Unit.Find(units == DisplayUnits.Us ? "in2" : "cm2")!;

    private static string Toml(BridgeDraft draft)
    {
        bool us = draft.Units == DisplayUnits.Us;
        string length = us ? "ft" : "m";
        var text = new StringBuilder();
        foreach (string remark in draft.Remarks)
        {
            text.Append("# ").Append(remark).Append('\n');
        }

        text.Append("name = ").Append(Quoted(draft.Name)).Append("\n\n");
        text.Append("# To rate the bridge, take away the # and fill in what is between the quotes. The strengths go into members.csv.\n");
        text.Append("[deck]\n");
        text.Append("# truss_spacing = \"… ").Append(length).Append("\"   # centre to centre of the trusses\n");
        text.Append("# roadway = \"… ").Append(length).Append("\"         # clear width between the kerbs\n\n");
        text.Append("[rating]\n");
        text.Append("# method = \"…\"           # LRFR, LFR or ASR\n");
        return text.ToString();
    }

    private static byte[] Joints(BridgeDraft draft)
    {
        Unit length = LengthUnit(draft.Units), degree = Unit.Find("deg")!;
        bool inclined = draft.Truss.Joints.Any(j => j.Support is { Kind: SupportKind.Roller, NormalDegrees: not 90 });
        return Table(
            ["joint", $"x [{length.Symbol}]", $"y [{length.Symbol}]", "support", .. Only(inclined, "roller normal [deg]"), "deck"],
            draft.Truss.Joints.Select(j => (IReadOnlyList<string>)
            [
                j.Name,
                ShortestFigure.Of(j.X, length),
                ShortestFigure.Of(j.Y, length),
                j.Support is null ? "" : j.Support.Kind == SupportKind.Pin ? "pin" : "roller",
                .. Only(inclined, j.Support is { Kind: SupportKind.Roller } roller ? ShortestFigure.Of(roller.NormalDegrees, degree) : ""),
                j.IsPanelPoint ? "yes" : "",
            ]));
    }

    // The columns of the two capacities stand ready, empty: they are what a rating asks for next.
    private static byte[] Members(BridgeDraft draft)
    {
        Unit area = AreaUnit(draft.Units), force = ForceUnit(draft.Units), stress = Unit.Find(draft.Units.Symbol(Quantity.Stress))!;
        IReadOnlyList<Member> members = draft.Truss.Members;
        bool areas = members.Any(m => m.Area is not null), moduli = members.Any(m => m.Modulus is not null), rods = members.Any(m => m.TensionOnly);
        return Table(
            [
                "member", "from", "to", "role", .. Only(areas, $"area [{area.Symbol}]"), .. Only(moduli, $"modulus [{stress.Symbol}]"), .. Only(rods, "tension only"),
                $"tension capacity [{force.Symbol}]", $"compression capacity [{force.Symbol}]",
            ],
            members.Select(m => (IReadOnlyList<string>)
            [
                m.Name, m.From, m.To, m.Role,
                .. Only(areas, m.Area is { } a ? ShortestFigure.Of(a, area) : ""),
                .. Only(moduli, m.Modulus is { } e ? ShortestFigure.Of(e, stress) : ""),
                .. Only(rods, m.TensionOnly ? "yes" : ""),
                "", "",
            ]));
    }

    private static byte[] Loads(BridgeDraft draft)
    {
        Unit force = ForceUnit(draft.Units);
        bool sideways = draft.Cases.Any(c => c.Loads.Any(l => l.Right != 0));
        return Table(
            ["case", "joint", .. Only(sideways, $"right [{force.Symbol}]"), $"up [{force.Symbol}]"],
            draft.Cases.SelectMany(c => c.Loads.Select(l => (IReadOnlyList<string>)
                [c.Name, l.Joint, .. Only(sideways, ShortestFigure.Of(l.Right, force)), ShortestFigure.Of(l.Up, force)])));
    }

    internal static byte[] Table(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows)
    {
        using var stream = new MemoryStream();
        using (CsvWriter writer = CsvWriter.Create(stream, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            foreach (IReadOnlyList<string> row in rows.Prepend(header))
            {
                foreach (string cell in row)
                {
                    writer.WriteField(SpreadsheetText.Write(cell));
                }

                writer.EndRecord();
            }
        }

        return stream.ToArray();
    }

    private static string[] Only(bool wanted, string cell) => wanted ? [cell] : [];

    // A TOML basic string; a name holds no control character.
    private static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
