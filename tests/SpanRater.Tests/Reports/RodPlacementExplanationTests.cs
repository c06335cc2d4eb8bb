using System.Text.Json;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>roll --explain on trusses with rods.</summary>
public sealed class RodPlacementExplanationTests
{
    [Fact]
    public void Explain_ChordOfAQueenPost_TellsThatBothRodsAreAtZero()
    {
        Run run = Run.Of("roll", Repository.Sample("mossback-lane"), "--vehicle", "H10", "--explain", "L1L2");
        Assert.Equal(0, run.Status);
        Assert.Contains(
            "L1L2: 11.68 kip tension with the front axle at 31.43 ft, driving to the right. Slack there: L1U2. Of the pair U1L2 and L1U2 both rods are just at zero: moved one way the one wakes, moved the other way the other.",
            run.Output,
            StringComparison.Ordinal);
        Assert.Contains("it falls whichever way the vehicle moves, which is the mark of a peak.", run.Output, StringComparison.Ordinal);
        Assert.Contains("No placement of H10 adds compression to L1L2.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_EyebarThatGoesSlack_TellsOfTensionLost()
    {
        Run run = Run.Of("roll", Repository.Sample("hollis-fork"), "--vehicle", "Type 3", "--explain", "U2L3");
        Assert.Contains("Most tension lost", run.Output, StringComparison.Ordinal);
        Assert.Contains("U2L3: 4.92 kip tension lost with the front axle at 18.90 ft, driving to the right.", run.Output, StringComparison.Ordinal);
        Assert.Contains("to the left it falls; to the right it stays the same for a while, so placements there are as good.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_Candidates_AreRankedAndTheFirstIsThePeak()
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("roll", Repository.Sample("hollis-fork"), "--vehicle", "Type 3", "--explain", "L2U3", "--format", "json").Output);
        JsonElement tension = json.RootElement.GetProperty("tension");
        double[] forces = [.. tension.GetProperty("candidates").EnumerateArray().Select(c => c.GetProperty("force").GetDouble())];
        Assert.Equal(tension.GetProperty("force").GetDouble(), forces[0], 9);
        Assert.Equal(forces.OrderDescending(), forces);

        // The axles on the lines of the acting set, and the shift of the dead load, make up the force.
        double axles = tension.GetProperty("axles").EnumerateArray().Sum(a => a.GetProperty("force").GetDouble());
        Assert.Equal(forces[0], axles + tension.GetProperty("deadShift").GetDouble(), 9);
    }

    [Fact]
    public void Explain_VehicleThatNothingCarries_SaysWhy()
    {
        Run run = Run.Of("roll", Repository.Sample("wrenfield-ferry"), "--vehicle", "Type 3", "--explain", "U3L4");
        Assert.Equal(3, run.Status);
        Assert.Contains("Uncarried compression in U2L3", run.Output, StringComparison.Ordinal);
    }
}
