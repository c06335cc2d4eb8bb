namespace SpanRater.Tests.CommandLine;

/// <summary>The sheets of parts as a user meets them, and what is said to a name that fits nothing.</summary>
public sealed class ExplainPartTests : IDisposable
{
    private readonly BridgeOnDisk bridge = PinnedKingPost.Make();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Explain_WithNothing_AsksForAllThatIsMissingAtOnce()
    {
        Run run = Run.Of("explain", bridge.Folder);

        Assert.Equal(1, run.Status);
        Assert.Contains("name what is to be explained: --member NAME for a truss member, --part NAME", run.Error, StringComparison.Ordinal);
        Assert.Contains("name the vehicle: --vehicle NAME. The bridge asks for: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_APinOfAnotherJoint_ListsTheParts_AndMeansNoOtherPin()
    {
        Run run = Run.Of("explain", Repository.Sample("hollis-fork"), "--part", "pin L9", "--vehicle", "EV3");

        Assert.Equal(1, run.Status);
        Assert.Contains("--part \"pin L9\": the bridge has no such part. Its parts are: planks, stringers, floorbeams, beam hangers, pin L1, pin U1.", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Did you mean", run.Error, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Explain_APartThatIsAMember_SaysSo() => Assert.Contains(
        "that is a truss member: write --member L0L1.", Run.Of("explain", Repository.Sample("hollis-fork"), "--part", "L0L1", "--vehicle", "EV3").Error, StringComparison.Ordinal);

    [Fact]
    public void Explain_APartAsTablesNameIt_IsFound() => Assert.Equal(
        Run.Of("explain", Repository.Sample("garrow-landing"), "--part", "floorbeams", "--vehicle", "Type 3"),
        Run.Of("explain", Repository.Sample("garrow-landing"), "--part", "Floorbeams at L1", "--vehicle", "Type 3"));

    // By hand, EV3 with its tandem at L1 and one panel on (16 ft panels, driving to the right, front axle at 35 ft): the line of the hip vertical is 1 at L1, so it takes
    // 31 + 31·12/16 = 54.25 kip, half on each bar, up; the chord L0L1 pulls 52.5 kip, half on each bar, to the left.
    [Fact]
    public void Pin_TellsWearAndSource_AndWhatEachBarPushes()
    {
        string output = Run.Of("explain", Repository.Sample("hollis-fork"), "--part", "pin L1", "--vehicle", "EV3").Output;

        Assert.Contains("Diameter as built 2.25 in, of which 2.125 in is left; source: callipered at one end; worn under the hip vertical.", output, StringComparison.Ordinal);
        Assert.Contains("Worst at floor, bars 4 and 5, along 129.42° from horizontal, counter-clockwise as seen in elevation", output, StringComparison.Ordinal);

        // Along, by hand: 7.68·cos(180° − 129.42°) = 4.876, 3.84·cos(90° − 129.42°) = 2.967; arms are middles less 7.875 in.
        Assert.Matches(@"1 +L0L1 +7\.68 +180\.0 +4\.876 +26\.25 +180\.0 +16\.667 +7\.500", output);
        Assert.Matches(@"3 +L1U1 +3\.84 +90\.0 +2\.967 +27\.13 +90\.0 +20\.956 +5\.375", output);
        Assert.Matches(@"4 +floor +3\.84 +270\.0 +-2\.967 +27\.13 +270\.0 +-20\.956 +4\.125", output);
        Assert.Contains("over the bars before it: dead 0.63919 kip·ft, live 3.3114 kip·ft", output, StringComparison.Ordinal);
    }

    // By hand: contact √(0.01·8992 lb·2.5) in = 14.99 in = 0.381 m; 0.8·40·(0.55/4 − 0.381/8) = 2.88 kN·m.
    [Fact]
    public void Planks_TellTheMomentOfTheWheel()
    {
        string output = Run.Of("explain", Repository.Sample("tansy-weir"), "--part", "planks", "--vehicle", "EN service vehicle").Output;

        Assert.Contains("M = 0.8·P·(S/4 − b/8) = 0.8·40.000 kN·(0.55 m/4 − 0.38 m/8) = 2.877 kN·m on one plank, 0.8 for a deck over more than two spans", output, StringComparison.Ordinal);
        Assert.Contains("The presence factor 1.20 of one loaded lane is not yet in it", output, StringComparison.Ordinal);
    }

    // The bending strength of a pin grows with the cube of its diameter: (2.25/2.125)³ = 1.187.
    [Fact]
    public void Post_OffersAWornPinAsBuilt()
    {
        Run run = Run.Of("post", Repository.Sample("hollis-fork"));

        Assert.Matches(@"as built +0\.489 +\+0\.05 +EV3 +L1U1 +tension", run.Output);
        Assert.Contains("as built: pin L1 repaired to as built", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Measure_NamesPartsThatAreLowerThanEveryTrussMember()
    {
        string output = Run.Of("measure", Repository.Sample("hollis-fork")).Output;

        Assert.Contains("Lower than every truss member, and not looked at here; look at these first:", output, StringComparison.Ordinal);
        Assert.Contains("- pin L1: 0.43 in bending under EV3 at operating level; explain --part \"pin L1\" --vehicle \"EV3\" opens it", output, StringComparison.Ordinal);
        Assert.Contains("Of the truss members measure first: L1U1", output, StringComparison.Ordinal);
    }
}
