using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>What spoiled inputs brought to light, each in its smallest form: it once ended with a fault of the program.</summary>
public sealed class FoundFaultTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("an argument", "check", "")]
    [InlineData("an argument", "exercise", "check", "")]
    [InlineData("--out", "check", "bridge", "--out", "")]
    [InlineData("--picture", "check", "bridge", "--picture", "")]
    [InlineData("--catalogue", "check", "bridge", "--catalogue", "")]
    [InlineData("--key", "exercise", "check", "answers.csv", "--key", "")]
    public void Run_BlankArgument_IsRefusedByItsPlace(string place, params string[] args)
    {
        Run run = Run.Of(args);
        Assert.Equal((1, $"spanrater: {place} \"\" is blank: give it a value, or leave it out. In a script, is a variable not set?\n", ""), (run.Status, run.Error, run.Output));
    }

    [Fact]
    public void Check_BracketsWithinBrackets_AreRefusedByName()
    {
        bridge.Append("bridge.toml", $"deep = {new string('[', 65)}\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains("bridge.toml", run.Error, StringComparison.Ordinal);
        Assert.Contains("brackets stand within brackets more than 64 deep, and no value is read so: close them.", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("１２")]
    [InlineData("٣")]
    public void Check_DigitsOfAnotherScript_AreNoNumber(string digits)
    {
        Assert.Equal($"joints.csv:3:4: \"{digits}\" is not a number.\n", RefusalOf("joints.csv", "L1,12,", $"L1,{digits},"));
    }

    [Fact]
    public void Check_DigitsOfAnotherScriptAsATapeReadsThem_AreNoLength()
    {
        Assert.Equal("joints.csv:3:4: \"１２'\" is not a length: write feet and inches as 16 ft 6 in or 16'-6\", or a number in the unit of the heading.\n", RefusalOf("joints.csv", "L1,12,", "L1,１２',"));
    }

    [Fact]
    public void Check_DigitsOfAnotherScriptInTheNameOfAShape_AreNoShape()
    {
        bridge.Write("sections.csv", "section,part,shape,count\ntop,,L4x٣x1/2,1\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains("L4x٣x1/2", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("fault of the program", run.Error, StringComparison.Ordinal);
    }

    // Seen on a terminal it would colour it, or hide what stands before it.
    [Theory]
    [InlineData("name = \"a\\u001B[31mb\"", "name holds a control character (\\u001B), which is no text: delete it.")]
    [InlineData("name = \"a\u001B[31mb\"", "holds a control character here (U+001B), which is no text: delete it.")]
    [InlineData("name = \"a\\u0000\"", "name holds a control character (\\u0000), which is no text: delete it.")]
    public void Check_ControlCharacterInATextOfToml_IsRefusedByItsPlace(string line, string said)
    {
        string refusal = RefusalOf("bridge.toml", "name = \"Test bridge\"", line);
        Assert.Contains(said, refusal, StringComparison.Ordinal);
        Assert.DoesNotContain(refusal, c => char.IsControl(c) && c != '\n');
    }

    [Fact]
    public void Check_ControlCharacterInACell_IsRefusedByItsPlace()
    {
        Assert.Equal("joints.csv:3:2: holds a control character here (U+0007), which is no text: delete it.\n", RefusalOf("joints.csv", "L1,12,", "L\u00071,12,"));
    }

    [Fact]
    public void Rate_StringersCloserThanTheyAreWide_AreRefusedWithBothNumbers()
    {
        using BridgeOnDisk kingPost = BridgeOnDisk.OfFolder(Path.Combine(Repository.Root, "tests", "SpanRater.Fuzz", "starts", "king-post"));
        kingPost.Replace("floor.csv", "stringers,stringer,,stringer,iron,2,7", "stringers,stringer,,stringer,iron,2E-11,7");
        Run run = Run.Of("rate", kingPost.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains("floor.csv:3:35: stringer \"stringers\" has a spacing of 2E-11, not more than its own width (5.0 in, 127 mm)", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_TapeWithMoreDigitsThanADoubleHolds_IsTooLarge()
    {
        string digits = new('9', 400);
        Assert.Equal($"joints.csv:3:4: \"{digits}'\" is too large to be true: check the number and its unit.\n", RefusalOf("joints.csv", "L1,12,", $"L1,{digits}',"));
    }

    [Fact]
    public void Check_QuantityThatOverflowsInItsUnit_IsTooLarge()
    {
        Assert.Contains("\"1e300 ft\" is too large to be true: check the number and its unit.", RefusalOf("bridge.toml", "roadway = \"12 ft\"", "roadway = \"1e300 ft\""), StringComparison.Ordinal);
    }

    [Fact]
    public void Post_LacingOfNoThickness_IsRefusedAsTooSmall()
    {
        using BridgeOnDisk laced = LacedKingPost.Make();
        laced.Replace("lacing.csv", "9,2,0.25,1", "9,2,1e-308,1");
        Run run = Run.Of("post", laced.Folder);
        Assert.Equal((1, "lacing.csv:2:28: \"1e-308\" is too small to be true: check the number and the unit in the heading.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Check_LinkThatLeadsNowhere_IsNotPassedOver()
    {
        File.CreateSymbolicLink(bridge.PathOf("floor.csv"), "nowhere.csv");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "floor.csv: cannot be read (it is not there): check that it is there and that you may read it.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Check_LinkThatLeadsToItself_IsRefused()
    {
        File.CreateSymbolicLink(bridge.PathOf("floor.csv"), "floor.csv");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "floor.csv: cannot be read (it could not be opened): check that it is there and that you may read it.\n"), (run.Status, run.Error));
    }

    // What check says of the bridge with one piece spoiled; it must refuse it.
    private string RefusalOf(string file, string old, string with)
    {
        bridge.Replace(file, old, with);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        return run.Error;
    }
}
