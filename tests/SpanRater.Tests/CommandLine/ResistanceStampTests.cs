using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What a rating from sections assumes, what a repair would gain, and what members weigh by their sections.</summary>
public sealed class ResistanceStampTests : IDisposable
{
    private const string Bars = "bars,bars,eyebar,2,2,0.5,,,,,\n";
    private readonly BridgeOnDisk bridge = LacedKingPost.Make().Append("sections.csv", Bars)
        .Replace("members.csv", "L1U1,L1,U1,hanger,,,,,,,40", "L1U1,L1,U1,hanger,bars,iron,pinned,,,,");

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Rate_OfSections_StampsWhatTheirCapacitiesAssume()
    {
        bridge.Write("materials.toml", "[[material]]\nname = \"iron\"\nkind = \"steel\"\nstrength = \"by year\"\n")
            .Write("findings.csv", "member,truss,place,part,what,count\nL1U1,both,,bars,slack,1\nL0U1,both,top,plate,pack rust,\n");
        string text = Run.Of("rate", bridge.Folder).Output;
        Assert.Contains("  - assumed: material \"iron\" has the strength by year, Fy 30.00 ksi, Fu 60.00 ksi (steel of 1908, row \"1905 to 1936\"; ", text, StringComparison.Ordinal);
        Assert.Contains("  - assumed: the condition is not given", text, StringComparison.Ordinal);
        Assert.Contains("  - heads of eyebars are not measured, and the bodies alone are rated: L1U1\n", text, StringComparison.Ordinal);
        Assert.Contains("  - pack rust seen on L0U1 at top: ", text, StringComparison.Ordinal);
        Assert.Contains("  - slack in L1U1: 1 piece is counted as carrying nothing\n", text, StringComparison.Ordinal);
        Assert.Contains("capacities are used as given in members.csv", text, StringComparison.Ordinal);
    }

    // The two chords are the last with given capacities; with a condition nothing of it is assumed.
    [Fact]
    public void Rate_NothingGiven_HasNoStampOfGivenCapacities()
    {
        bridge.Replace("members.csv", "chord,,,,,,,40", "chord,bars,iron,pinned,,,,").Replace("bridge.toml", "adtt = 80", "adtt = 80\ncondition = \"good\"");
        string text = Run.Of("rate", bridge.Folder).Output;
        Assert.DoesNotContain("as given in members.csv", text, StringComparison.Ordinal);
        Assert.DoesNotContain("condition is not given", text, StringComparison.Ordinal);
    }

    // A head 3 in wide with a 1 in hole is (3 - 1)/2 = 1.0 of the body, below 1.35: the proportion counts and is asked for.
    [Fact]
    public void Rate_ALightHead_AsksForItsProportionUntilItIsConfirmed()
    {
        bridge.Replace("sections.csv", "holes,hole [in]", "holes,hole [in],head width [in],pin hole [in]").Replace("sections.csv", Bars, "bars,bars,eyebar,2,2,0.5,,,,,,3,1\n")
            .Write("sections.csv", File.ReadAllText(bridge.PathOf("sections.csv")).Replace("0,0,\n", "0,0,,,\n", StringComparison.Ordinal).Replace("4.125,0,\n", "4.125,0,,,\n", StringComparison.Ordinal));
        Assert.Contains("write confirmed = [\"eyebar heads\"] under [rating]", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
        string text = Run.Of("rate", bridge.Replace("bridge.toml", "adtt = 80", "adtt = 80\nconfirmed = [\"eyebar heads\"]").Folder).Output;
        Assert.Contains("confirmed by the user: net section of the head", text, StringComparison.Ordinal);
        Assert.DoesNotContain("to confirm: net section", text, StringComparison.Ordinal);
    }

    // Half of the hanger's eyebars gone in thickness; as built it carries twice as much, so that RF + dead/live doubles.
    [Fact]
    public void Post_AMemberWithLoss_SaysWhatARepairGains()
    {
        bridge.Write("findings.csv", "member,truss,place,part,what,dimension,remaining [in]\nL1U1,both,foot,bars,remaining,thickness,0.25\n");
        using JsonDocument json = JsonDocument.Parse(Run.Of("post", bridge.Folder, "--format", "json").Output);
        JsonElement repair = json.RootElement.GetProperty("alternatives").EnumerateArray().Single(a => a.GetProperty("change").GetString() == "asBuilt");
        Assert.Equal("L1U1", repair.GetProperty("repaired").GetString());

        // C 0.85 x 0.95 x 30 x 1 = 24.225 as found, twice that as built; dead 1.25 x 2 + 1.5 x 0.5 = 3.25 kip.
        double found = 24.225 - 3.25, built = 48.45 - 3.25;
        double now = json.RootElement.GetProperty("postings")[0].GetProperty("factor").GetDouble();
        Assert.Equal(now * (built - found) / found, repair.GetProperty("gain").GetDouble(), 1e-3 * now);
    }

    [Fact]
    public void Post_NothingLost_DoesNotOfferARepair()
    {
        string text = Run.Of("post", bridge.Folder).Output;
        Assert.Contains("as built: nothing seen on what has the lowest factor takes anything from its capacity, or that capacity is given", text, StringComparison.Ordinal);
    }

    // Bars 2 in² of 490 pcf, 6.806 plf; rafters 9.76 in², 33.211 plf: on 24 + 8 ft and 2 x 14.422 ft.
    [Fact]
    public void Dead_WeightsFromSections_IsTheSumByHand()
    {
        FromSections();
        double expected = (2.0 / 144 * 0.490 * 32) + (9.76 / 144 * 0.490 * 2 * Math.Sqrt(208));
        using JsonDocument json = JsonDocument.Parse(Run.Of("dead", bridge.Folder, "--format", "json").Output);
        JsonElement[] items = [.. json.RootElement.GetProperty("items").EnumerateArray()];
        JsonElement bare = items.Single(i => i.GetProperty("kind").GetString() == "members");
        Assert.Equal("weights from sections, members as built; steel lost to rust is no relief", bare.GetProperty("source").GetString());
        Assert.Contains("members, bare", Run.Of("dead", bridge.Folder).Output, StringComparison.Ordinal);
        Assert.Equal(1.10 * expected, DeadOfOneTruss(), 1e-6);
    }

    [Fact]
    public void Dead_LossOfSteel_IsNoRelief()
    {
        FromSections();
        string sound = Run.Of("dead", bridge.Folder).Output;
        bridge.Write("findings.csv", "member,truss,place,part,what,dimension,remaining [in]\nL1U1,both,foot,bars,remaining,thickness,0.25\n");
        Assert.Equal(sound, Run.Of("dead", bridge.Folder).Output);
    }

    [Fact]
    public void Check_SectionsWithoutTheKey_WeighNothingAndAreWarnedOf()
    {
        File.Delete(bridge.PathOf("loads.csv"));
        bridge.Write("dead.csv", "item,case,line load [plf]\nrail,DC,20\n");
        const string Warning = "no member has a weight, so that the take-off of dead.csv counts no members: write member_weights = \"from sections\" under [dead], or \"in dead.csv\" where an item there holds them.";
        Assert.Contains(Warning, Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
        Assert.DoesNotContain("members, bare", Run.Of("dead", bridge.Folder).Output, StringComparison.Ordinal);
        bridge.Append("bridge.toml", "\n[dead]\nmember_weights = \"in dead.csv\"\n");
        Assert.DoesNotContain("no member has a weight", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AFaultOfMemberWeights_IsTold()
    {
        bridge.Append("bridge.toml", "\n[dead]\nmember_weights = \"from section\"\nallowance = 0.1\nloads = \"add\"\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "bridge.toml:14:18: member_weights = \"from section\": write \"from sections\", where members without a weight weigh their section as built, or \"in dead.csv\", where an item of dead.csv holds them. Did you mean \"from sections\"?"), (run.Status, run.Error.Split('\n')[0]));
    }

    [Fact]
    public void Check_FromSectionsWithoutOne_NamesTheMember()
    {
        bridge.Append("bridge.toml", "\n[dead]\nmember_weights = \"from sections\"\nallowance = 0.1\nloads = \"add\"\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains("member \"L0L1\" has no weight, and no section to weigh it by: write its weight per length, 0 where it is counted elsewhere, or its section and material.", run.Error, StringComparison.Ordinal);
    }

    // Downward, in kip: what all joints of one truss carry of case DC.
    private double DeadOfOneTruss() =>
        -SpanRater.Files.BridgeFolder.Read(bridge.Folder, []).Bridge!.FindCase(Bridge.ComponentsCase)!.TotalUp / 4448.2216152605;

    private void FromSections()
    {
        File.Delete(bridge.PathOf("loads.csv"));
        bridge.Replace("members.csv", "chord,,,,,,,40", "chord,bars,iron,pinned,,,,40").Append("bridge.toml", "\n[dead]\nmember_weights = \"from sections\"\nallowance = 0.10\n");
    }
}
