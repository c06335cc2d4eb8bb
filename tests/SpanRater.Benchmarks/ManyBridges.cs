using System.Globalization;
using System.Text;
using SpanRater.Files;

namespace SpanRater.Benchmarks;

/// <summary>
/// Writes many bridge folders for a survey to be measured on: forms of the program with seeded spans, panels, sections and methods, so that members, and of every third
/// bridge the floor, are rated from what they are made of. Three are broken. The same seed gives the same bytes.
/// </summary>
internal static class ManyBridges
{
    private static readonly string[] Forms = ["pratt", "howe", "warren", "warren-with-verticals", "parker", "k"];
    private static readonly string[] Methods = ["LRFR", "LFR", "ASR"];

    // Fifteen of the shipped vehicles: all that are posted, and what counties ask for beside them.
    private static readonly string[] Vehicles =
    [
        "Type 3", "Type 3S2", "Type 3-3", "SU4", "SU5", "SU6", "SU7", "EV2", "EV3", "NRL", "HS20 truck or lane", "H15 truck or lane", "Sample milk truck", "Sample tractor and hay wagon", "HL-93",
    ];

    /// <summary>Writes them, a hundred to a folder.</summary>
    /// <param name="folder">Where; not there yet, or empty.</param>
    /// <param name="count">How many; at least three.</param>
    /// <param name="seed">The seed.</param>
    public static void Write(string folder, int count, ulong seed)
    {
        if (NewFolder.WhyNot(folder) is { } why)
        {
            throw new IOException(why);
        }

        for (int i = 0; i < count; i++)
        {
            string at = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"district-{i / 100:000}"), string.Create(CultureInfo.InvariantCulture, $"bridge-{i:00000}"));
            Directory.CreateDirectory(at);
            foreach ((string name, string text) in Files(i, new Dice(seed + ((ulong)i * 7919))))
            {
                File.WriteAllBytes(Path.Combine(at, name), Encoding.UTF8.GetBytes(text));
            }

            Break(at, i, count);
        }
    }

    // A joint that is not there, a table that is not there, and a file that is not UTF-8.
    private static void Break(string at, int index, int count)
    {
        if (index == count / 4)
        {
            string members = Path.Combine(at, BridgeFolder.MembersFile);
            File.WriteAllText(members, File.ReadAllText(members).Replace(",L0,", ",L99,", StringComparison.Ordinal));
        }
        else if (index == count / 2)
        {
            File.Delete(Path.Combine(at, BridgeFolder.MembersFile));
        }
        else if (index == count * 3 / 4)
        {
            File.WriteAllBytes(Path.Combine(at, BridgeFolder.BridgeFile), [.. Encoding.UTF8.GetBytes("name = \"Bridge "), 0xE9, .. Encoding.UTF8.GetBytes("\"\n")]);
        }
    }

    private static IEnumerable<(string Name, string Text)> Files(int index, Dice dice)
    {
        string form = Forms[dice.Next(Forms.Length)];
        int panels = 4 + (2 * dice.Next(4)), panel = 14 + dice.Next(7), height = 16 + dice.Next(9);
        string heights = string.Join(", ", Enumerable.Range(1, panels - 1).Select(k => string.Create(CultureInfo.InvariantCulture, $"{height + (2 * Math.Min(k, panels - k))} ft")));
        (NewBridge? bridge, IReadOnlyList<string> faults) = FormOptionsReader.Read(new FormOptions
        {
            Form = form,
            Span = string.Create(CultureInfo.InvariantCulture, $"{panels * panel} ft"),
            Panels = panels.ToString(CultureInfo.InvariantCulture),
            Height = form == "parker" ? null : string.Create(CultureInfo.InvariantCulture, $"{height} ft"),
            Heights = form == "parker" ? heights : null,
            Name = string.Create(CultureInfo.InvariantCulture, $"Bridge {index}"),
            Dead = string.Create(CultureInfo.InvariantCulture, $"0.{30 + dice.Next(20)} klf"),
            Wearing = dice.Next(2) == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"0.{10 + dice.Next(10)} klf"),
        });
        if (bridge is null)
        {
            throw new InvalidOperationException(string.Join('\n', faults));
        }

        bool hasFloor = dice.Next(3) == 0;
        foreach (NewFile file in BridgeFolderWriter.Files(bridge.ToDraft()))
        {
            string text = Encoding.UTF8.GetString(file.Bytes);
            yield return (file.Name, file.Name switch
            {
                BridgeFolder.BridgeFile => Toml(bridge.Name, 1900 + dice.Next(35), Methods[dice.Next(Methods.Length)], hasFloor),
                BridgeFolder.JointsFile => Widened(text, "held sideways", _ => "yes"),
                BridgeFolder.MembersFile => Widened(text, "section,material,ends,shear lag", row => $"{(row.Contains("chord", StringComparison.Ordinal) || row.Contains("end post", StringComparison.Ordinal) ? "chord" : "web")},steel,riveted,0.9"),
                _ => text,
            });
        }

        yield return (BridgeFolder.MaterialsFile, "[[material]]\nname = \"steel\"\nkind = \"steel\"\nstrength = \"by year\"\n");
        double chord = 0.5 + (dice.Next(5) * 0.125), web = 0.3 + (dice.Next(5) * 0.05);
        yield return (BridgeFolder.SectionsFile, string.Create(
            CultureInfo.InvariantCulture,
            $"section,part,shape,count,width [in],depth [in],web [in],flange [in],y [in],holes\nchord,beam,I-beam,1,10,12,{chord},{chord + 0.125},0,0\nweb,beam,I-beam,1,7,8,{web},{web + 0.1},0,0\nstringer,beam,I-beam,1,6,15,0.41,0.62,0,0\nfloorbeam,beam,I-beam,1,8,24,0.5,0.87,0,0\n"));
        if (hasFloor)
        {
            yield return (BridgeFolder.FloorFile, "part,kind,type,section,material,spacing [ft],count,unbraced [ft]\nstringers,stringer,,stringer,steel,2.5,6,0\nfloorbeams,floorbeam,,floorbeam,steel,,,2.5\n");
        }
    }

    private static string Toml(string name, int built, string method, bool hasFloor) => string.Create(
        CultureInfo.InvariantCulture,
        $"name = \"{name}\"\nbuilt = {built}\n\n[deck]\ntruss_spacing = \"16 ft\"\nroadway = \"14 ft\"\n\n[rating]\nmethod = \"{method}\"\nadtt = 80\ncondition = \"fair\"\nvehicles = [{string.Join(", ", Vehicles.Select(v => $"\"{v}\""))}]\n{(hasFloor ? "\n[floor]\ndeck_dc = \"15 psf\"\nwithout = [\"hanger\"]\n" : "")}");

    private static string Widened(string table, string header, Func<string, string> cells)
    {
        string[] lines = table.TrimEnd('\n').Split('\n');
        return string.Join('\n', lines.Select((line, l) => $"{line},{(l == 0 ? header : cells(line))}")) + "\n";
    }

    /// <summary>Numbers that are the same on every machine and with every version of the runtime (splitmix64, a public-domain generator).</summary>
    private sealed class Dice(ulong state)
    {
        private ulong state = state;

        public int Next(int below)
        {
            state += 0x9E3779B97F4A7C15;
            ulong z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return (int)((z ^ (z >> 31)) % (ulong)below);
        }
    }
}
