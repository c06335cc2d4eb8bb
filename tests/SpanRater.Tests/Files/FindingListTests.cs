using SpanRater.Files;

namespace SpanRater.Tests.Files;

/// <summary>The order in which findings are told.</summary>
public sealed class FindingListTests
{
    [Fact]
    public void All_FoundInAnyOrder_StandErrorsFirstThenByFileLineAndColumn()
    {
        var findings = new FindingList();
        findings.Warning(new Place("b.csv", 9, 1), "late");
        findings.Error(new Place("a.csv", 3, 7), "third");
        findings.Error(new Place("b.csv", 2, 1), "other file, found first");
        findings.Error(new Place("a.csv", 3, 2), "second");
        findings.Error(new Place("a.csv", 3), "whole line");
        findings.Error(new Place("a.csv"), "whole file");
        findings.Warning(new Place("b.csv", 1, 4), "early");

        Assert.Equal(
            ["b.csv:2:1: other file, found first", "a.csv: whole file", "a.csv:3: whole line", "a.csv:3:2: second", "a.csv:3:7: third", "b.csv:1:4: warning: early", "b.csv:9:1: warning: late"],
            findings.All.Select(f => f.ToString()));
    }
}
