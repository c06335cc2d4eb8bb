using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of the floor as a user meets them: floor.csv, [floor], findings on its parts.</summary>
public sealed class BadFloorTests : IDisposable
{
    private readonly BridgeOnDisk bridge = FlooredKingPost.Make();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Rate_WithoutFaults_RatesEveryPart()
    {
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.DoesNotContain("Not rated:", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("not whole", run.Output, StringComparison.Ordinal);
        Assert.Contains("Truss members, deck, stringers, floorbeams, floorbeam hangers are rated.", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("planks,deck", "planks,dek", "floor.csv:2:8: kind \"dek\" is not known. Did you mean \"deck\"? Write deck, stringer, floorbeam, hanger.")]
    [InlineData("deck,plank,plank", "deck,plnk,plank", "floor.csv:2:13: deck type \"plnk\" is not known. Did you mean \"plank\"? Write plank, nail laminated, glued laminated, concrete, steel grid, corrugated steel.")]
    [InlineData("deck,plank,plank", "deck,,plank", "floor.csv:2:13: what deck is it? Write type: plank, nail laminated, glued laminated, concrete, steel grid, corrugated steel.")]
    [InlineData("stringer,iron,2,7", "stringr,iron,2,7", "floor.csv:3:21: there is no section \"stringr\" in sections.csv. Did you mean \"stringer\"?")]
    [InlineData("stringer,iron,2,7", "stringer,irn,2,7", "floor.csv:3:30: material \"irn\" is not known. Did you mean \"iron\"? Write a name of materials.toml, or leave it blank: then the part is not rated.")]
    [InlineData("stringer,iron,2,7", "stringer,iron,,7", "floor.csv:3:35: stringer \"stringers\" has no spacing: write the distance from one to the next across the deck.")]
    [InlineData("stringer,iron,2,7", "stringer,iron,2,0", "floor.csv:3:37: count = 0: write a whole number from 1 to 200.")]
    [InlineData("iron,2,7,,,0", "iron,2,7,L1,,0", "floor.csv:3:39: at has no meaning for a stringer: clear it.")]
    [InlineData("iron,,,L1,,2", "iron,,,L1,,-2", "floor.csv:4:43: unbraced = -2 is below zero: write a length, 0 where the deck or beams hold it all along.")]
    [InlineData("iron,,,L1,,2", "iron,,,L9,,2", "floor.csv:4:39: \"floorbeam\" is at panel point \"L9\", which joints.csv does not have. Did you mean \"L2\"? Panel points are parted by spaces; a place that is no joint is written under x.")]
    [InlineData("iron,,,L1,,2", "iron,,,U1,,2", "floor.csv:4:39: \"floorbeam\" is at joint \"U1\", which is no panel point: write yes under deck in joints.csv where the floor's load comes onto the truss there.")]
    [InlineData("iron,,,L1,,2", "iron,,,L1 L1,,2", "floor.csv:4:39: \"floorbeam\" names panel point \"L1\" twice: name it once.")]
    [InlineData("iron,,,L1,,2", "iron,,,L1,12,2", "floor.csv:4:42: \"floorbeam\" has both at and x: name its panel points, or give the station of one, not both.")]
    [InlineData("iron,,,L1,,2", "iron,,,,18,2", "floor.csv:4:40: floorbeam at 18.00 ft (5.49 m) stands between panel points L1 (12.00 ft (3.66 m)) and L2 (24.00 ft (7.32 m)): its load bends the chord there, and pin-joint forces alone are not enough, so that this truss is not rated. If the chord is jointed there, add the joint and split the member; if the floorbeam is clamped to a chord that runs through, have the chord rated for bending by an engineer before anything crosses.")]
    [InlineData("iron,,,L1,,2", "iron,,,,30,2", "floor.csv:4:40: floorbeam at 30.00 ft (9.14 m) stands off the deck, which runs from L0 at 0.00 ft (0.00 m) to L2 at 24.00 ft (7.32 m): check x and its unit.")]
    [InlineData("iron,,,L1,,2,,,,", "iron,,,L1,,2,,notchd,6,", "floor.csv:4:46: end \"notchd\" is not known. Did you mean \"notched\"? Write notched, tapered, or leave it blank where the beam has its full depth over the bearing.")]
    [InlineData("iron,,,L1,,2,,,,", "iron,,,L1,,2,,notched,,", "floor.csv:4:46: \"floorbeam\": end and end depth go together: write notched or tapered, and the depth that is left over the bearing.")]
    [InlineData("hangers,hanger", "floorbeam,hanger", "floor.csv:5:1: part \"floorbeam\" is there twice, here and on line 4: give each a name of its own.")]
    [InlineData("hangers,hanger", "L1U1,hanger", "floor.csv:5:1: part \"L1U1\" has the name of a truss member: findings could be of either. Give it another.")]
    public void Check_AFaultOfTheFloor_IsToldWithItsPlace(string old, string with, string error)
    {
        bridge.Replace("floor.csv", old, with);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, error + "\n"), (run.Status, run.Error));
    }

    [Theory]
    [InlineData("without = [\"hangr\"]", "bridge.toml:18:12: without: \"hangr\" is no part of a floor. Did you mean \"hanger\"? Write deck, stringer, floorbeam, hanger: what this bridge does not have.")]
    [InlineData("without = [\"hanger\"]", "bridge.toml:18:11: without names hanger, and floor.csv gives one: remove one of the two.")]
    [InlineData("edg_dc = \"20 plf\"", "bridge.toml:18:1: unknown key \"edg_dc\". Did you mean \"edge_dc\"?")]
    public void Check_AFaultInTheTable_IsToldWithItsPlace(string line, string error)
    {
        bridge.Append("bridge.toml", line + "\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.StartsWith(error, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AWeightWithASign_IsRefused()
    {
        bridge.Replace("bridge.toml", "deck_dw = \"10 psf\"", "deck_dw = \"-10 psf\"");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "bridge.toml:16:11: deck_dw = -10 psf: a weight is written without a sign, 0 where there is none.\n"), (run.Status, run.Error));
    }

    // Each datum by itself, so that the reader sees what to write.
    [Theory]
    [InlineData("floor.csv", "planks,deck,plank,plank,wood", "planks,deck,plank,,wood", "planks in bending and shear: No section. Name one of sections.csv under section in floor.csv")]
    [InlineData("floor.csv", "planks,deck,plank,plank,wood,,,,,,,,,\n", "", "stringers in bending and shear: What the deck is decides how much of a wheel one stringer takes, and floor.csv has no row of kind deck. Write one with its type")]
    [InlineData("floor.csv", "deck,plank,plank,wood", "deck,concrete,plank,wood", "planks in bending and shear: The program has no rule for a deck of concrete or steel: it counts for what stringers take, and is not rated itself")]
    [InlineData("floor.csv", "stringers,stringer,,stringer,iron,2,7,,,0,,,,\n", "", "planks in bending and shear: What carries the deck is not given, and with it its span. Write a row of kind stringer, or span in the row of the deck")]
    [InlineData("bridge.toml", "deck_dw = \"10 psf\"\n", "", "planks, stringers, floorbeam in bending and shear: What the deck weighs is missing. Write deck_dw under [floor] in bridge.toml, or the layers in dead.csv")]
    [InlineData("bridge.toml", "truss_spacing = \"14 ft\"", "truss_share = 0.6\ntruss_share_reason = \"a test\"", "floorbeam in bending and shear: Where wheels stand across the deck is not known. Write truss_spacing under [deck] in bridge.toml")]
    public void Rate_ADatumMissing_IsNotRatedAndSaysWhich(string file, string old, string with, string reason)
    {
        bridge.Replace(file, old, with);
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains($"  - {reason}\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_AKindNeitherGivenNorSaidNotToBeThere_IsToldOnTop()
    {
        bridge.Replace("floor.csv", "hangers,hanger,,hanger,iron,,1,L1,,,,,,\n", "");
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Contains("The floor is not whole: floorbeam hangers are not given.", run.Output, StringComparison.Ordinal);

        bridge.Append("bridge.toml", "without = [\"hanger\"]\n");
        Assert.DoesNotContain("not whole", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AFloorTableWithoutFloor_SaysThatItHasNoEffect()
    {
        File.Delete(bridge.PathOf("floor.csv"));
        Assert.Contains("bridge.toml:14:1: warning: [floor] says what the floor bears, and there is no floor.csv: it has no effect.", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
        Assert.Contains("Truss members only.", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stringers,,mid,beam,remaining,thickness,", "findings.csv:2:21: remaining needs remaining: write it.")]
    [InlineData("stringers,left,mid,beam,remaining,web,0.25", "findings.csv:2:11: truss \"left\": a part of the floor belongs to no truss: clear the cell, and say under place where on the deck it is.")]
    [InlineData("stringrs,,mid,beam,remaining,web,0.25", "findings.csv:2:1: finding on member \"stringrs\", which members.csv does not have, nor floor.csv. Did you mean \"stringers\"?")]
    public void Check_AFaultOfAFindingOnTheFloor_IsToldWithItsPlace(string row, string error)
    {
        bridge.Write("findings.csv", $"member,truss,place,part,what,dimension,remaining [in]\n{row}\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.StartsWith(error, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_LossOnAPart_LowersItsFactorAndNoOther()
    {
        double Factor(string part)
        {
            using JsonDocument json = JsonDocument.Parse(Run.Of("rate", bridge.Folder, "--format", "json").Output);
            return json.RootElement.GetProperty("ratings").EnumerateArray()
                .First(r => r.GetProperty("member").GetString() == part && r.GetProperty("effect").GetString() == "moment").GetProperty("factor").GetDouble();
        }

        (double stringers, double beam) before = (Factor("stringers"), Factor("floorbeam"));
        bridge.Write("findings.csv", "member,truss,place,part,what,dimension,remaining [in]\nstringers,,mid,beam,remaining,bottom flange,0.4\n");
        (double stringers, double beam) after = (Factor("stringers"), Factor("floorbeam"));
        Assert.True(after.stringers < before.stringers);
        Assert.Equal(before.beam, after.beam);
    }
}
