namespace SpanRater.Tests.CommandLine;

/// <summary>Input that no rating follows from, as a user meets it: what is told, where, with the mend, and the exit status.</summary>
public sealed class BadSectionTests : IDisposable
{
    private const string Seen = "member,truss,place,part,what,dimension,remaining [in]\n", Eyebars = "bars,bars,eyebar,2,2,0.5,,,,,\n";
    private readonly BridgeOnDisk bridge = LacedKingPost.Make().Append("sections.csv", Eyebars)
        .Replace("members.csv", "L1U1,L1,U1,hanger,,,,,,,40", "L1U1,L1,U1,hanger,bars,iron,pinned,,,,");

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Check_MoreRemainingThanThereWas_AsksForRustScale() => Refused(
        Seen + "L0U1,both,foot,plate,remaining,thickness,0.41\n",
        "findings.csv:2:42: part \"plate\": 0.41 in (10.4 mm) remaining of thickness 0.25 in (6.4 mm). Rust scale measured? Clean and measure again, or correct the original size in sections.csv.");

    [Fact]
    public void Check_NothingRemaining_AsksForThePartAsGone() => Refused(
        Seen + "L0U1,both,foot,plate,remaining,thickness,0\n",
        "findings.csv:2:42: remaining = 0: nothing is left of it. Enter the part as gone (what = gone), so that the way of the force is looked at again.");

    [Fact]
    public void Check_AFindingForAPartThatIsNotThere_NamesTheParts() => Refused(
        Seen + "L0U1,both,foot,plat,remaining,thickness,0.2\n",
        "findings.csv:2:16: section \"rafter\" has no part \"plat\". Did you mean \"plate\"? Its parts are channels, plate.");

    [Theory]
    [InlineData("bars,bars,eyebar,2,,0.5", "sections.csv:4:11: part \"bars\" has no width: an eyebar is given by width, thickness, and may have head width, pin hole.")]
    [InlineData("bars,bars,eyebar,2,0,0.5", "sections.csv:4:20: part \"bars\": width = 0: it must be above zero.")]
    public void Check_ASectionWithoutArea_IsRefused(string row, string error)
    {
        bridge.Replace("sections.csv", "bars,bars,eyebar,2,2,0.5", row);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, error + "\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Check_AnUnknownSpecies_NamesThoseThatArePublished()
    {
        bridge.Append("materials.toml", "\n[[material]]\nname = \"larch\"\nkind = \"timber\"\nspecies = \"Larch\"\nclass = \"posts and timbers\"\ngrade = \"No.1\"\nservice = \"wet\"\nduration = \"two months\"\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "materials.toml:11:11: species = \"Larch\" is not known. Write one of \"Douglas Fir-Larch\", \"Southern Pine\", or values of your own with their source.\n"), (run.Status, run.Error));
    }

    // Nothing is rated without a yield, so that the status is that of no answer; the two chords have given capacities.
    [Fact]
    public void Rate_YieldAbsent_OffersTheRowOfTheYear()
    {
        bridge.Write("materials.toml", "[[material]]\nname = \"iron\"\nkind = \"steel\"\n");
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Contains("  - L1U1 in tension: no capacity: No yield for 1908 steel. Write strength = \"by year\" to accept 30 ksi (1905 to 1936), or a tested value, yield = \"…\" with its coupons and source\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("materials.toml:1:1: warning: material \"iron\": No yield for 1908 steel.", run.Error, StringComparison.Ordinal);
        Run closed = Run.Of("rate", bridge.Replace("members.csv", ",,,,,,,40", ",,,,,,,").Folder);
        Assert.Equal(3, closed.Status);
        Assert.Contains("Nothing governs: no member is rated.", closed.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sections.csv", "backs in,6.5,0,0,", ",,,0,", "Positions of channels in section \"rafter\" are missing, and with them the radii of gyration. Write arrangement and gap, or x and y, in sections.csv")]
    [InlineData("joints.csv", "U1,12,8,,,,yes", "U1,12,8,,,,", "Nothing says that U1 is held sideways. Write held sideways in joints.csv, out-of-plane length in members.csv, or [pony] in bridge.toml")]
    public void Rate_CompressionWithoutRadiusOrLength_WithholdsTheCapacity(string file, string old, string with, string datum)
    {
        bridge.Replace(file, old, with);
        Assert.Contains($"  - L0U1, U1L2 in compression: no capacity: {datum}\n", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    // The dead load lifts the hanger's foot: the eyebars would have to press.
    [Fact]
    public void Rate_EyebarsCompressed_RefusesEveryRating()
    {
        bridge.Write("members.csv", File.ReadAllText(bridge.PathOf("members.csv")).Replace("shear lag,", "shear lag,tension only,", StringComparison.Ordinal).Replace("pinned,1,", "pinned,1,,", StringComparison.Ordinal)
            .Replace("pinned,,,,", "pinned,,yes,,,", StringComparison.Ordinal).Replace("chord,,,,,,,40", "chord,,,,,,,,40", StringComparison.Ordinal));
        bridge.Write("loads.csv", "case,joint,up [kip]\nDC,L0,-3\nDC,L1,2\nDC,L2,-1\n");
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal(3, run.Status);
        Assert.Contains("Nothing is rated. Uncarried compression in L1U1: it only pulls, and under case DC it would have to carry -8.9 kN (-2.0 kip).", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_NoLiveForce_IsNotApplicableAndNeverInfinite() =>
        Assert.Contains("Not applicable, no live force under these vehicles: L0L1 compression, L1L2 compression, L0U1 tension, U1L2 tension, L1U1 compression. A factor there is not infinite: there is none, and such a member may still brace.", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);

    [Fact]
    public void Rate_DeadLoadAboveTheCapacity_TreatsTheBridgeAsClosed()
    {
        bridge.Replace("loads.csv", "DC,L1,-2", "DC,L1,-90");
        Assert.Contains("L1U1 in tension under Type 3 at legal level, rating factor 0.00: the dead load alone exceeds the capacity. Check the inputs; if they are true, treat the bridge as closed until an engineer has reviewed it.", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AFindingOnAMemberWithGivenCapacities_IsWarnedOf()
    {
        bridge.Replace("members.csv", "hanger,bars,iron,pinned,,,,", "hanger,bars,iron,pinned,,,,40").Write("findings.csv", Seen + "L1U1,both,foot,bars,remaining,thickness,0.4\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains("member \"L1U1\" has capacities in members.csv, which are used as they stand: what was seen on it has no part in them.", run.Output, StringComparison.Ordinal);
    }

    private void Refused(string findings, string error)
    {
        bridge.Write("findings.csv", findings);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, error + "\n"), (run.Status, run.Error));
    }
}
