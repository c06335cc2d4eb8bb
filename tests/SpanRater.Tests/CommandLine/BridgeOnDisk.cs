using System.Text;

namespace SpanRater.Tests.CommandLine;

/// <summary>A bridge folder in a temporary place: a small king post truss, until a test spoils a file of it.</summary>
public sealed class BridgeOnDisk : IDisposable
{
    public const string Joints = """
        joint,x [ft],y [ft],support,roller normal [deg],deck
        L0,0,0,pin,,yes
        L1,12,0,,,yes
        L2,24,0,roller,,yes
        U1,12,8,,,

        """;

    public const string Members = """
        member,from,to,role,tension capacity [kip],compression capacity [kip]
        L0L1,L0,L1,bottom chord,40,
        L1L2,L1,L2,bottom chord,40,
        L0U1,L0,U1,end post,,40
        U1L2,U1,L2,end post,,40
        L1U1,L1,U1,hanger,40,

        """;

    public const string Loads = """
        case,joint,up [kip]
        DC,L0,-1
        DC,L1,-2
        DC,L2,-1
        DW,L1,-0.5

        """;

    public const string Toml = """
        name = "Test bridge"
        built = 1908

        [deck]
        truss_spacing = "14 ft"
        roadway = "12 ft"

        [rating]
        method = "LRFR"
        adtt = 80
        vehicles = ["Type 3"]

        """;

    public BridgeOnDisk()
    {
        Folder = Path.Combine(Path.GetTempPath(), "span-" + Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(Folder);
        Write("joints.csv", Joints);
        Write("members.csv", Members);
        Write("loads.csv", Loads);
        Write("bridge.toml", Toml);
    }

    public string Folder { get; }

    /// <summary>A copy of a sample, without its variants.</summary>
    public static BridgeOnDisk OfSample(string sample) => OfFolder(Repository.Sample(sample));

    /// <summary>A copy of a bridge folder, without what lies below it.</summary>
    public static BridgeOnDisk OfFolder(string folder)
    {
        var copy = new BridgeOnDisk();
        File.Delete(copy.PathOf("loads.csv"));
        foreach (string file in Directory.EnumerateFiles(folder))
        {
            copy.Write(Path.GetFileName(file), File.ReadAllText(file));
        }

        return copy;
    }

    /// <summary>The truss of a sample alone, without its floor and connections.</summary>
    public static BridgeOnDisk TrussOfSample(string sample)
    {
        BridgeOnDisk copy = OfSample(sample);
        foreach (string file in (string[])["floor.csv", "connections.csv", "packing.csv"])
        {
            File.Delete(copy.PathOf(file));
        }

        string toml = File.ReadAllText(copy.PathOf("bridge.toml"));
        int floor = toml.IndexOf("[floor]", StringComparison.Ordinal);
        return floor < 0 ? copy : copy.Write("bridge.toml", toml[..floor]);
    }

    public string PathOf(string file) => Path.Combine(Folder, file);

    public BridgeOnDisk Write(string file, string text)
    {
        File.WriteAllBytes(PathOf(file), Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\n")));
        return this;
    }

    public BridgeOnDisk Write(string file, byte[] bytes)
    {
        File.WriteAllBytes(PathOf(file), bytes);
        return this;
    }

    /// <summary>Replaces a piece of a file; the piece must be there.</summary>
    public BridgeOnDisk Replace(string file, string old, string with)
    {
        string text = File.ReadAllText(PathOf(file));
        Assert.Contains(old, text, StringComparison.Ordinal);
        return Write(file, text.Replace(old, with, StringComparison.Ordinal));
    }

    public BridgeOnDisk Append(string file, string text) => Write(file, File.ReadAllText(PathOf(file)) + text);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
