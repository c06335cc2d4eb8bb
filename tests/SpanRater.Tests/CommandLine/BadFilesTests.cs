using System.Text;

namespace SpanRater.Tests.CommandLine;

/// <summary>Things that are no bridge: a clear sentence, exit status 1, and never a stack trace.</summary>
public sealed class BadFilesTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Check_FolderThatIsNoBridge_SaysWhatIsMissing()
    {
        string empty = Directory.CreateDirectory(Path.Combine(bridge.Folder, "empty")).FullName;
        Refused(empty, $"{empty}: is not a bridge folder: it holds no bridge.toml, no joints.csv and no members.csv.");
    }

    [Fact]
    public void Check_NoSuchFolder_SaysSo() =>
        Refused("/no/such/bridge", "/no/such/bridge: is not there: name a bridge folder, one that holds bridge.toml, joints.csv and members.csv.");

    [Fact]
    public void Check_AFileForAFolder_SaysSo() =>
        Refused(bridge.PathOf("joints.csv"), $"{bridge.PathOf("joints.csv")}: is a file: name the bridge folder, the one that holds bridge.toml.");

    [Fact]
    public void Check_MissingTable_IsNamed()
    {
        File.Delete(bridge.PathOf("members.csv"));
        Refused(bridge.Folder, $"members.csv: is missing from the bridge folder {bridge.Folder}.");
    }

    [Fact]
    public void Check_EmptyFile_SaysSo()
    {
        bridge.Write("joints.csv", "");
        Refused(bridge.Folder, "joints.csv: is empty.");
    }

    [Fact]
    public void Check_LineOfTenMegabytes_IsNoRow()
    {
        bridge.Write("joints.csv", "joint,x [ft],y [ft]\n" + new string('a', 10_000_000));
        Refused(bridge.Folder, "joints.csv:2:1: the line is 10,000,000 characters long; no row of a table is. Check what the file is.");
    }

    [Fact]
    public void Check_BinaryFile_IsNotText()
    {
        bridge.Write("joints.csv", [0x50, 0x4B, 3, 4, 0, 0, 9]);
        Refused(bridge.Folder, "joints.csv: is not text: it holds zero bytes, as pictures, spreadsheets and archives do. Save the table as CSV, UTF-8.");
    }

    [Fact]
    public void Check_Utf16_IsRefusedByName()
    {
        bridge.Write("joints.csv", [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(BridgeOnDisk.Joints)]);
        Refused(bridge.Folder, "joints.csv: is UTF-16 text: save it as UTF-8.");
    }

    [Fact]
    public void Check_Latin1_IsRefusedWhereItIsSeen()
    {
        bridge.Write("joints.csv", Encoding.Latin1.GetBytes("joint,x [ft],y [ft]\nLé,1,2\n"));
        Refused(bridge.Folder, "joints.csv:2:2: is not UTF-8 (byte E9), rather Windows-1252 or Latin-1: save it as UTF-8.");
    }

    [Fact]
    public void Check_FileThatCannotBeRead_SaysSo()
    {
        // A folder in a file's place cannot be read by anybody, an administrator included.
        File.Delete(bridge.PathOf("loads.csv"));
        Directory.CreateDirectory(bridge.PathOf("loads.csv"));
        Refused(bridge.Folder, "loads.csv: is a folder, not a file.");
    }

    [Fact]
    public void Check_CatalogueThatIsNotThere_SaysSo() =>
        Refused(bridge.Folder, "/no/such.csv: cannot be read (it is not there): check that it is there and that you may read it.", "--catalogue", "/no/such.csv");

    [Fact]
    public void Check_ByteOrderMark_IsWelcome()
    {
        bridge.Write("joints.csv", [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(BridgeOnDisk.Joints)]);
        Assert.Equal(0, Run.Of("check", bridge.Folder).Status);
    }

    private static void Refused(string folder, string line, params string[] options)
    {
        Run run = Run.Of(["check", folder, .. options]);
        Assert.Equal(line + "\n", run.Error);
        Assert.Equal("", run.Output);
        Assert.Equal(1, run.Status);
    }
}
