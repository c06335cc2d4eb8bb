using SpanRater.Reports;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>The letter to the owner and the sign: a proposal in plain words, never an order, and never a leave to cross.</summary>
public sealed class OwnerLetterTests
{
    public static TheoryData<string> Samples => CalculationPackTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Letter_OfASample_OrdersNothing_CallsNothingSafe_AndLeavesBlanks(string sample)
    {
        using var pack = new PackOnDisk(Repository.Sample(sample));
        string letter = pack.Read("letter.md");
        Assert.Contains("DRAFT", letter, StringComparison.Ordinal);
        Assert.Contains("for the decision of the responsible engineer", letter, StringComparison.Ordinal);
        Assert.Contains("No limit is in force by this letter.", letter, StringComparison.Ordinal);
        Assert.All((string[])["[name and address of the owner]", "[authority in charge of the road]", "[date]", "[decision and its date]"], blank => Assert.Contains(blank, letter, StringComparison.Ordinal));
        Assert.All((string[])["is safe", "is ordered", "hereby", "--", "explain"], words => Assert.DoesNotContain(words, letter.Replace("| ---", "", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.InRange(letter.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Length, 150, 540);
    }

    [Theory]
    [InlineData("garrow-landing")]
    [InlineData("hollis-fork")]
    public void Letter_AndSign_HoldTheLimitsThatPostGives(string sample)
    {
        using var pack = new PackOnDisk(Repository.Sample(sample));
        string[][] limits =
        [
            .. Run.Of("post", Repository.Sample(sample), "--format", "markdown").Output.Split('\n')
                .SkipWhile(l => l != "## Limits by silhouette").Skip(4).TakeWhile(l => l.StartsWith('|')).Select(l => l.Split('|', StringSplitOptions.TrimEntries)[1..3]),
        ];
        Assert.Equal(3, limits.Length);
        string letter = pack.Read("letter.md"), sign = pack.Sign();
        Assert.Contains("WEIGHT LIMIT", sign, StringComparison.Ordinal);
        Assert.All(limits, limit =>
        {
            string says = limit[1].StartsWith("none", StringComparison.Ordinal) ? "no limit proposed by what is rated" : $"{limit[1]} tons";
            Assert.Contains($"- {limit[0]}: {says}\n", letter, StringComparison.Ordinal);
            Assert.Contains($"{limit[0].ToUpperInvariant()} {says.ToUpperInvariant()}", sign, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Letter_WithheldRating_SaysToKeepOff_AndNamesTheBar()
    {
        using var pack = new PackOnDisk(Repository.Sample("wrenfield-ferry"));
        string letter = pack.Read("letter.md");
        Assert.Equal(3, pack.Run.Status);
        Assert.Contains(OwnerLetter.KeepOff, letter, StringComparison.Ordinal);
        Assert.Contains("Ratings are withheld: U2L3 goes slack", letter, StringComparison.Ordinal);
        Assert.Contains("single unit: keep off", letter, StringComparison.Ordinal);
        Assert.Contains("NO LIMIT PROPOSED SINGLE UNIT KEEP OFF", pack.Sign(), StringComparison.Ordinal);
        Assert.DoesNotContain("WEIGHT LIMIT", pack.Sign(), StringComparison.Ordinal);
        Assert.Contains("## Why ratings are withheld: U2L3\n", pack.Read("calculation.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void LetterAndSign_LoadsThatNoLimitCovers_SayToKeepThemOff()
    {
        using var pack = new PackOnDisk(Repository.Sample("mossback-lane"));
        const string Off = "Too heavy as entered, though no limit covers them: Feed truck (rating factor 0.605; scaled as a whole 6.0 US tons of it pass); Sample tractor and hay wagon (rating factor 0.894; scaled as a whole 10.7 US tons of it pass). Keep them off until the responsible engineer has decided.";
        Assert.Contains(Off, pack.Read("letter.md"), StringComparison.Ordinal);
        Assert.Contains(Off, pack.Sign(), StringComparison.Ordinal);
        Assert.Contains("Whether the bridge is under 3 US tons is not known, since no legal type was asked for.", pack.Read("letter.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Letter_UnderThreeTons_SaysToKeepOffAndToClose()
    {
        using var disk = new BridgeOnDisk();
        disk.Replace("members.csv", "40", "9");
        using var pack = new PackOnDisk(disk.Folder);
        Assert.Equal((4, 4), (pack.Run.Status, Run.Of("post", disk.Folder).Status));
        string letter = pack.Read("letter.md");
        Assert.Contains(OwnerLetter.KeepOff, letter, StringComparison.Ordinal);
        Assert.Contains("Proposed: to close the bridge until it has been reviewed.", letter, StringComparison.Ordinal);
        Assert.Contains("BRIDGE CLOSED", pack.Sign(), StringComparison.Ordinal);
        Assert.DoesNotContain("TONS", pack.Sign(), StringComparison.Ordinal);
    }

    [Fact]
    public void Letter_DeadLoadAboveCapacity_SaysToKeepOff()
    {
        using var disk = new BridgeOnDisk();
        disk.Replace("members.csv", "40", "1");
        using var pack = new PackOnDisk(disk.Folder);
        Assert.Equal(4, pack.Run.Status);
        Assert.Contains(OwnerLetter.KeepOff, pack.Read("letter.md"), StringComparison.Ordinal);
        Assert.Contains("The weight of the bridge alone exceeds what", pack.Read("letter.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Letter_NoLimitNeeded_ProposesNone_AndKeepsNobodyOff()
    {
        using var disk = new BridgeOnDisk();
        disk.Replace("members.csv", "40", "400");
        using var pack = new PackOnDisk(disk.Folder);
        Assert.Equal(0, pack.Run.Status);
        Assert.DoesNotContain("eep", pack.Read("letter.md").Split("## What was not rated")[0].Split("## What is proposed")[1], StringComparison.Ordinal);
        Assert.Contains("NO LIMIT PROPOSED", pack.Sign(), StringComparison.Ordinal);
        Assert.Contains("No legal type asked for needs a posting", pack.Sign(), StringComparison.Ordinal);
    }

    [Fact]
    public void Letter_MethodWithoutPostingRule_ProposesNoLimit()
    {
        using var disk = new BridgeOnDisk();
        disk.Write("factors.toml", FactorsFileTests.Factors).Replace("bridge.toml", "method = \"LRFR\"\nadtt = 80\n", "method = \"partial factors\"\n");
        using var pack = new PackOnDisk(disk.Folder);
        Assert.Equal("", pack.Run.Error);
        Assert.Contains("no posting rule belongs to the method partial factors", pack.Read("letter.md"), StringComparison.Ordinal);
        Assert.Contains("NO LIMIT PROPOSED", pack.Sign(), StringComparison.Ordinal);
    }
}
