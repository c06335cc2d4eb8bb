using System.Globalization;
using System.Text.RegularExpressions;

namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of trussed floorbeams in floor.csv, and what is missing of them, as a user meets them.</summary>
public sealed class BadTrussedTests : IDisposable
{
    private const string Columns = "rods,iron,1,18,,";

    private readonly BridgeOnDisk bridge = TrussedKingPost.Make();

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("floorbeam,trussed", "floorbeam,trused", "floor.csv:4:21: floorbeam type \"trused\" is not known. Did you mean \"trussed\"? Write trussed where a rod over posts stiffens it from below, or leave it blank.")]
    [InlineData(Columns, "rodz,iron,1,18,,", "floor.csv:4:49: there is no section \"rodz\" in sections.csv. Did you mean \"rods\"?")]
    [InlineData(Columns, "rods,irn,1,18,,", "floor.csv:4:54: material \"irn\" is not known. Did you mean \"iron\"? Write a name of materials.toml, or leave it blank: then the part is not rated.")]
    [InlineData(Columns, "rods,iron,3,18,,", "floor.csv:4:59: posts = 3: write a whole number from 1 to 2.")]
    [InlineData(Columns, "rods,iron,1.5,18,,", "floor.csv:4:59: posts = 1.5: write a whole number from 1 to 2.")]
    [InlineData(Columns, "rods,iron,1,0,,", "floor.csv:4:61: drop = 0: it must be above zero.")]
    [InlineData(Columns, "rods,iron,1,-18,,", "floor.csv:4:61: drop = -18: it must be above zero.")]
    [InlineData(Columns, "rods,iron,1,168,,", "floor.csv:4:61: drop = 168 is not less than the span of the floorbeam, truss_spacing, 14.00 ft (4.27 m): the rod cannot be so deep. Check it and its unit.")]
    [InlineData(Columns, "rods,iron,1,18,5,", "floor.csv:4:64: post spacing has no meaning for one post, which stands in the middle: clear it, or write posts = 2.")]
    [InlineData(Columns, "rods,iron,2,18,14,", "floor.csv:4:64: post spacing = 14 is not less than the span of the floorbeam, truss_spacing, 14.00 ft (4.27 m): posts stand between the trusses. Check it and its unit.")]
    [InlineData(Columns, "rods,iron,2,18,-5,", "floor.csv:4:64: post spacing = -5: it must be above zero.")]
    [InlineData(Columns, "rods,iron,1,18,,-1", "floor.csv:4:65: unbraced below = -1 is below zero: write a length, 0 where its lower side is held all along.")]
    [InlineData("2,7,,0,,,,,,,,", "2,7,,0,,,,,,18,,", "floor.csv:3:47: drop has no meaning for a stringer: clear it.")]
    public void Check_AFault_IsToldWithItsPlace(string old, string with, string error)
    {
        bridge.Replace("floor.csv", old, with);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, error + "\n"), (run.Status, run.Error));
    }

    // All in one go: every column that is filled in for nothing, and both impossible measures.
    [Fact]
    public void Check_SeveralFaults_AreToldAtOnce()
    {
        bridge.Replace("floor.csv", "floorbeam,floorbeam,trussed,", "floorbeam,floorbeam,,");
        Assert.Equal(
            string.Concat(new[] { ("42", "rod"), ("47", "rod material"), ("52", "posts"), ("54", "drop") }.Select(c => $"floor.csv:4:{c.Item1}: {c.Item2} has no meaning for a floorbeam that is not trussed: write trussed under type, or clear it.\n")),
            Run.Of("check", bridge.Folder).Error);

        bridge.Write("floor.csv", TrussedKingPost.Floor).Replace("floor.csv", Columns, "rods,iron,2,200,20,-1");
        Assert.Equal(3, Run.Of("check", bridge.Folder).Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void Check_APartWithTheNameOfTheRod_IsRefused()
    {
        bridge.Replace("floor.csv", "hangers,hanger", "floorbeam rod,hanger");
        Assert.Equal("floor.csv:5:1: part \"floorbeam rod\" has the name that findings give the rod of a trussed floorbeam: give it another.\n", Run.Of("check", bridge.Folder).Error);
    }

    [Theory]
    [InlineData(",iron,1,18,,", "bending and tension and shear", "The rod of the trussed floorbeam is not given, and what beam and rod share goes by it. Write rod and rod material in floor.csv")]
    [InlineData("rods,,1,18,,", "bending and tension and shear", "The material of the rod of the trussed floorbeam is not given, and what beam and rod share goes by it. Write rod material in floor.csv")]
    [InlineData("rods,iron,,18,,", "bending and shear and tension", "The trussed floorbeam lacks posts: ")]
    [InlineData("rods,iron,1,,,", "bending and shear and tension", "The trussed floorbeam lacks drop: ")]
    [InlineData("rods,iron,2,,,", "bending and shear and tension", "The trussed floorbeam lacks drop, post spacing: ")]
    public void Rate_ADatumMissing_IsNotRatedAndSaysWhich(string cells, string effects, string reason)
    {
        bridge.Replace("floor.csv", Columns, cells);
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains(reason, run.Output, StringComparison.Ordinal);
        Assert.All(effects.Split(" and "), effect => Assert.Matches($@"not rated  floorbeam +{effect} ", run.Output));
        Assert.Matches("floorbeam at L1  bearing ", run.Output);
    }

    [Fact]
    public void Rate_ABeamNotSaidToBeHeld_AsksForIt()
    {
        bridge.Replace("floor.csv", "wood,,,L1,2,6,", "wood,,,L1,,6,");
        Assert.Contains("What holds the trussed floorbeam sideways is not given, and its rod presses it. Write unbraced in floor.csv, 0 where the deck holds it all along", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_ATrussedFloorbeam_NamesItsPostsAsNotRatedAndSaysWhatIsAssumed()
    {
        string output = Run.Of("rate", bridge.Folder).Output;
        Assert.Contains("  - floorbeam in compression: Posts of a trussed floorbeam, their seats under the beam and on the rod, and the ends of its rod have no rule in the program.", output, StringComparison.Ordinal);
        Assert.Contains("assumed of trussed floorbeams (floorbeam): the rod is snug without load", output, StringComparison.Ordinal);
        Assert.Matches("floorbeam at L1  bending .*bending and compression ", output);
        Assert.Matches("floorbeam at L1  tension .*rod: gross yield ", output);
    }

    [Fact]
    public void Rate_LossOnTheRod_LowersTheRodAlone()
    {
        static double Of(string output, string effect) => double.Parse(Regex.Match(output, $@"\n +([0-9.]+)  floorbeam at L1  {effect} ").Groups[1].Value, CultureInfo.InvariantCulture);
        string before = Run.Of("rate", bridge.Folder).Output;
        bridge.Write("findings.csv", "member,truss,place,part,what,dimension,remaining [in]\nfloorbeam rod,,mid,bars,remaining,diameter,0.9\n");
        string after = Run.Of("rate", bridge.Folder).Output;
        Assert.True(Of(after, "tension") < Of(before, "tension"));
        Assert.Equal(Of(before, "bending"), Of(after, "bending"));
    }

    [Fact]
    public void Explain_ATrussedFloorbeam_ShowsBothAtOnce()
    {
        string output = Run.Of("explain", bridge.Folder, "--part", "floorbeam", "--vehicle", "Type 3").Output;
        Assert.Contains("M + 2·(Mc/Nc)·N ≤ Mc, 2·Mc/Nc = 2·47.967 kip·ft/254.66 kip = 0.37672 ft", output, StringComparison.Ordinal);
        Assert.Contains("Capacity of the rod of floorbeam in tension", output, StringComparison.Ordinal);
        Assert.Contains("Wheel lines at 4.00 ft, 10.00 ft from that truss, each with half of the reaction of its vehicle, 1 lane loaded, presence factor 1.20 in it: the tension of the rod is largest", output, StringComparison.Ordinal);
    }
}
