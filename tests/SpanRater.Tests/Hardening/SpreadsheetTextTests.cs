using System.Text;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>No cell that we write is a formula to a spreadsheet. The characters are those of OWASP's page on CSV injection, from memory.</summary>
public sealed class SpreadsheetTextTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1+cmd", "'+1+cmd")]
    [InlineData("-1+1", "'-1+1")]
    [InlineData("-", "'-")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "'\r=1")]
    [InlineData("＝1+1", "'＝1+1")]
    [InlineData("＋1", "'＋1")]
    [InlineData("－1", "'－1")]
    [InlineData("＠A1", "'＠A1")]
    [InlineData("'=1", "''=1")]
    public void Write_WhatASpreadsheetWouldCompute_StandsBehindAnApostropheAndReadsBack(string cell, string written)
    {
        Assert.Equal(written, SpreadsheetText.Write(cell));
        Assert.Equal(cell, SpreadsheetText.Read(written));
    }

    [Theory]
    [InlineData("-5")]
    [InlineData("-6.75")]
    [InlineData("+5")]
    [InlineData("-1.5e-7")]
    [InlineData("")]
    [InlineData("L0")]
    [InlineData("16'-6\"")]
    [InlineData("'round")]
    public void Write_NumbersAndPlainText_StayAsTheyAre(string cell)
    {
        Assert.Equal(cell, SpreadsheetText.Write(cell));
        Assert.Equal(cell, SpreadsheetText.Read(cell));
    }

    [Fact]
    public void Remark_SeparatorBeforeAFormula_IsFollowedByABlank() =>
        Assert.Equal("Bridge \"a, =1\" ; @b; -c two lines", SpreadsheetText.Remark("Bridge \"a,=1\" ;@b;-c\ntwo lines"));

    [Fact]
    public void Forces_NamesThatAreFormulas_AreTextInTheTableAndNumbersStayNumbers()
    {
        foreach (string file in (string[])["joints.csv", "members.csv", "loads.csv"])
        {
            bridge.Write(file, File.ReadAllText(bridge.PathOf(file)).Replace("U1", "=cmd|x", StringComparison.Ordinal));
        }

        Run run = Run.Of("forces", bridge.Folder, "--case", "DC", "--format", "csv");
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("'=cmd|x", run.Output, StringComparison.Ordinal);
        string[] cells = [.. run.Output.Split('\n').SelectMany(l => l.Split(',')).Select(c => c.Trim('"'))];
        Assert.Contains(cells, c => c.StartsWith('-'));
        Assert.All(cells.Where(c => c.Length > 0 && SpreadsheetText.Beginnings.Contains(c[0], StringComparison.Ordinal)), c => Assert.True(double.TryParse(c, System.Globalization.CultureInfo.InvariantCulture, out _), c));
    }

    [Fact]
    public void Check_NameBehindAnApostrophe_IsTheNameItself()
    {
        foreach (string file in (string[])["joints.csv", "members.csv"])
        {
            bridge.Write(file, File.ReadAllText(bridge.PathOf(file)).Replace(",L1,", file[0] == 'j' ? ",'-L1," : ",-L1,", StringComparison.Ordinal).Replace("\nL1,", "\n'-L1,", StringComparison.Ordinal));
        }

        File.Delete(bridge.PathOf("loads.csv"));
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((0, ""), (run.Status, run.Error));
    }

    [Fact]
    public void Table_FolderOfABridgeWithSuchNames_ReadsBackTheSame()
    {
        byte[] written = BridgeFolderWriter.Table(["joint", "x [ft]"], [["=L0", "-6.75"], ["'@L1", "0"]]);
        Assert.Equal("joint,x [ft]\n'=L0,-6.75\n''@L1,0\n", Encoding.UTF8.GetString(written));
    }
}
