using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Files;

public sealed class BridgeFolderTests : IDisposable
{
    private readonly BridgeOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public void Read_TheTestBridge_IsInSi()
    {
        Bridge bridge = Read();
        Assert.Equal("Test bridge", bridge.Name);
        Assert.Equal(1908, bridge.Built);
        Assert.Equal(24 * 0.3048, bridge.Truss.Joints[2].X, 1e-12);
        Assert.Equal([0, 1, 2], bridge.Truss.PanelPoints);
        Assert.Equal(Support.Pin, bridge.Truss.Joints[0].Support);
        Assert.Equal(Support.Roller(), bridge.Truss.Joints[2].Support);
        Assert.Equal(14 * 0.3048, bridge.Deck.TrussSpacing!.Value, 1e-12);
        Assert.Equal(2 * 0.3048, bridge.Deck.WheelToKerb, 1e-12);
        Assert.Equal("LRFR", bridge.Rating.Method!.Name);
        Assert.Equal(40 * 4448.2216152605, bridge.Capacities[0][GivenCapacity.Tension]!.Value, 1e-6);
        Assert.Null(bridge.Capacities[0][GivenCapacity.Compression]);
        Assert.Equal(-4 * 4448.2216152605, bridge.FindCase("DC")!.TotalUp, 1e-6);
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    public void Read_OtherSeparators_GiveTheSameBridge(char separator)
    {
        disk.Write("joints.csv", BridgeOnDisk.Joints.Replace(',', separator));
        Assert.Equal(24 * 0.3048, Read().Truss.Joints[2].X, 1e-12);
    }

    [Fact]
    public void Read_DecimalCommasBetweenSemicolons_AreRead()
    {
        disk.Write("loads.csv", "case;joint;up [kN]\nDC;L1;-2,5\nDW;L1;-0,25\n");
        Assert.Equal(-2500, Read().FindCase("DC")!.TotalUp);
    }

    [Fact]
    public void Read_CommentsBlankLinesAndNamelessEmptyColumns_ArePassedOver()
    {
        disk.Write("joints.csv", """
            # taped on a wet Tuesday

              # indented
            Joint , X [ft],Y [m] ,support,deck,,note
            ,,,,,,
            L0,0,0,pin,yes,,"north, by the oak"
            L1,12'-0",0,,yes,,
            L2,24,0,roller,yes,,
            U1,12,2.4384,,,,
            """);
        Bridge bridge = Read();
        Assert.Equal(4, bridge.Truss.Joints.Count);
        Assert.Equal(12 * 0.3048, bridge.Truss.Joints[1].X, 1e-12);
        Assert.Equal(8 * 0.3048, bridge.Truss.Joints[3].Y, 1e-12);
    }

    [Fact]
    public void Read_CellUnderANamelessColumn_IsRefused()
    {
        disk.Replace("joints.csv", "normal [deg],deck", "normal [deg],deck,").Replace("joints.csv", "L1,12,0,,,yes", "L1,12,0,,,yes,lost");
        Assert.Equal("joints.csv:3:15: the column of \"lost\" has no name: name it in the header (line 1), or clear the cell.", Assert.Single(Findings()));
    }

    [Fact]
    public void Read_ColumnsAfterAccentedText_CountCharactersAndNotBytes()
    {
        disk.Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,Hängeträger,4x,");
        Assert.Equal("members.csv:6:24: \"4x\" is not a number.", Assert.Single(Findings()));
    }

    [Fact]
    public void Read_QuoteLeftOpen_IsNamedWithItsLine()
    {
        disk.Replace("members.csv", "L1U1,L1,U1,hanger", "L1U1,L1,U1,\"hanger");
        Assert.Contains("members.csv:6:1: a quoted cell does not end on its line: close the quotes; a cell holds no line break.", Findings());
    }

    [Fact]
    public void Read_InclinedRoller_KeepsItsNormal()
    {
        disk.Replace("joints.csv", "L2,24,0,roller,,yes", "L2,24,0,roller,60,yes");
        Assert.Equal(60, Read().Truss.Joints[2].Support!.NormalDegrees);
    }

    [Fact]
    public void Read_NormalOnAPin_IsRefused()
    {
        disk.Replace("joints.csv", "L0,0,0,pin,,yes", "L0,0,0,pin,60,yes");
        Assert.Equal("joints.csv:2:12: a roller normal belongs to a roller: write roller under support, or clear it.", Assert.Single(Findings()));
    }

    [Fact]
    public void Read_UnitsOfTheFolder_AreThoseOfX()
    {
        Assert.Equal("us", BridgeFolder.Read(disk.Folder, []).Units.Name);
        disk.Replace("joints.csv", "x [ft]", "x [m]");
        Assert.Equal("si", BridgeFolder.Read(disk.Folder, []).Units.Name);
    }

    private Bridge Read()
    {
        BridgeReading reading = BridgeFolder.Read(disk.Folder, []);
        Assert.Empty(reading.Findings.All);
        return reading.Bridge!;
    }

    private string[] Findings() => [.. BridgeFolder.Read(disk.Folder, []).Findings.All.Select(f => f.ToString())];
}
