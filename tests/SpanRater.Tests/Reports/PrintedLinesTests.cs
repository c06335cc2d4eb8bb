using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>What is printed can be followed with a pocket calculator: every number put in was found above, every result follows.</summary>
public class PrintedLinesTests
{
    [Theory]
    [InlineData("garrow-landing", "us", 44, "--case", "DC")]
    [InlineData("garrow-landing", "si", 44, "--case", "DW")]
    [InlineData("garrow-landing", "us", 44, "--unit-load", "L3")]
    [InlineData("tansy-weir", "si", 24, "--case", "crowd")]
    [InlineData("tansy-weir", "us", 24, "--case", "DC")]
    [InlineData("tansy-weir", "si", 24, "--unit-load", "U2")]
    public void Joints_OfASample_CanBeFollowedLineByLine(string sample, string units, int forces, params string[] load)
    {
        Run run = Run.Of(["joints", Repository.Sample(sample), "--units", units, .. load]);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Equal(forces, PrintedLines.Follow(run.Output).Results);
    }

    [Fact]
    public void Joints_OfACompoundTruss_CanBeFollowedLineByLine()
    {
        using var disk = FinkOnDisk.Make();
        Assert.Equal(30, PrintedLines.Follow(Run.Of("joints", disk.Folder, "--case", "roof").Output).Results);
    }

    [Theory]
    [InlineData("M2U3", 5)]
    [InlineData("U2U3", 4)]
    [InlineData("U2M2", 5)]
    [InlineData("L0U1", 4)]
    public void Section_OfAMember_CanBeFollowedLineByLine(string member, int results) =>
        Assert.Equal(results, PrintedLines.Follow(Run.Of("section", Repository.Sample("garrow-landing"), "--case", "DC", "--member", member).Output).Results);
}
