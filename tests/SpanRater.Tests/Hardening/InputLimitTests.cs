using System.Diagnostics;
using System.Text;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>Absurd input is refused by name, in good time.</summary>
public sealed class InputLimitTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Check_TableOfTwoGigabytes_IsRefusedUnread()
    {
        using (FileStream stream = File.Create(bridge.PathOf("joints.csv")))
        {
            // A file of that length that takes no room.
            stream.SetLength(2L << 30);
        }

        Refused("joints.csv: is larger than 64 MB, which no table of a bridge is: check what it is.");
    }

    [Fact]
    public void Check_SettingsOfMegabytes_AreRefusedUnread()
    {
        bridge.Append("bridge.toml", "#" + new string('x', 2 << 20));
        Refused("bridge.toml: is larger than 1 MB, which no file of settings is: check what it is.");
    }

    [Fact]
    public void Check_MoreRowsThanATableHas_AreNotRead()
    {
        bridge.Append("loads.csv", string.Concat(Enumerable.Repeat("DC,L1,-1\n", InputLimits.MostRows)));
        Refused("loads.csv:20002:1: the table has more than 20,000 rows, and what follows is not read: no table of a bridge is as long. Leave out what does not belong to it.");
    }

    [Fact]
    public void Check_MoreCellsThanARowHas_AreToldInOneFinding()
    {
        bridge.Append("joints.csv", new string(',', 50_000) + "\n");
        Refused("joints.csv:6:1: the row has 50,001 cells, and no table has more than 500: check what the file is.");
    }

    [Fact]
    public void Check_CellOfManyPages_IsRefused()
    {
        bridge.Replace("members.csv", "bottom chord", new string('b', 6000));
        Refused("members.csv:2:12: the cell is 6,000 characters long, and 5,000 are read: shorten it, or close its quotes.", inFirst: true);
    }

    [Fact]
    public void Check_MoreJointsThanATrussHas_AreNotSolved()
    {
        var joints = new StringBuilder(BridgeOnDisk.Joints);
        for (int i = 0; i < InputLimits.MostJoints; i++)
        {
            joints.Append('X').Append(i).Append(',').Append(i).Append(",100,,,\n");
        }

        bridge.Write("joints.csv", joints.ToString());
        Refused("joints.csv: has 1,004 joints, and a truss of at most 1,000 is solved: give one span by itself.");
    }

    [Fact]
    public void Vehicles_CatalogueBeyondTheLimit_IsRefused()
    {
        string path = bridge.PathOf("many.txt");
        File.WriteAllText(path, "vehicle,class,load [kip]\n" + string.Concat(Enumerable.Range(0, InputLimits.MostRows + 1).Select(i => $"V{i},farm,1\n")));
        Run run = Run.Of("vehicles", "--catalogue", path);
        Assert.Equal(1, run.Status);
        Assert.StartsWith($"{path}:20002:1: the table has more than 20,000 rows", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Vehicles_MoreAxlesThanAreRolled_IsRefused()
    {
        string path = bridge.PathOf("long.txt");
        File.WriteAllText(path, "vehicle,class,load [kip],spacing [ft]\nSnake,farm,1,\n" + string.Concat(Enumerable.Repeat("Snake,,1,4\n", InputLimits.MostAxles)));
        Run run = Run.Of("vehicles", "--catalogue", path);
        Assert.Equal((1, $"{path}:2:1: \"Snake\" has 501 axles, and at most 500 are rolled: one row is one axle.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Check_ThousandsOfFaults_AreToldUpToALimitAndCounted()
    {
        bridge.Append("loads.csv", string.Concat(Enumerable.Repeat("DC,L9,-1\n", 3000)));
        Run run = Run.Of("check", bridge.Folder);
        string[] lines = run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal((1, InputLimits.MostErrorsTold + 1), (run.Status, lines.Length));
        Assert.Equal("loads.csv: 2,000 more faults are not listed: mend these first.", lines[^1]);
    }

    [Fact]
    public void Find_NamesOfManyPages_AreNotCompared()
    {
        string name = new('x', 100_000);
        Assert.Null(NearestName.Find(name, [name[1..]]));
        Assert.Equal("L1", NearestName.Find("L11", [name, "L1"]));
    }

    [Fact]
    public void Check_PipeInPlaceOfATable_IsRefusedAndNotWaitedFor()
    {
        Assert.SkipUnless(!OperatingSystem.IsWindows(), "named pipes are files on Unix only");
        File.Delete(bridge.PathOf("joints.csv"));
        using (Process made = Process.Start("mkfifo", bridge.PathOf("joints.csv")))
        {
            made.WaitForExit();
        }

        Refused("joints.csv: is a pipe or a device, not a file: save what it holds as a file.");
    }

    [Fact]
    public void Check_FolderNamedAsATable_IsRefused()
    {
        Directory.CreateDirectory(bridge.PathOf("floor.csv"));
        Refused("floor.csv: is a folder, not a file.");
    }

    private void Refused(string message, bool inFirst = false)
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        if (inFirst)
        {
            Assert.Contains(message, run.Error, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(message + "\n", run.Error);
        }
    }
}
