using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>factors.toml: what is refused, with its place and its mend, and what the commands make of it.</summary>
public sealed class FactorsFileTests : IDisposable
{
    internal const string Factors = """
        basis = "made up for the test"
        source = "no standard"
        level = "assessment"

        [components]
        unfavourable = 1.3
        favourable = 1.0

        [wearing_surface]
        unfavourable = 1.4
        favourable = 0.9

        [traffic]
        factor = 1.5
        dynamic_allowance = 0.3
        lanes = [1.0, 0.9]

        [crowd]
        factor = 1.6

        """;

    private const string CrowdTable = "\n[crowd]\nfactor = 1.6\n";

    private const string TrafficTable = "\n[traffic]\nfactor = 1.5\ndynamic_allowance = 0.3\nlanes = [1.0, 0.9]\n";

    private readonly BridgeOnDisk bridge = new BridgeOnDisk()
        .Write("factors.toml", Factors).Replace("bridge.toml", "method = \"LRFR\"\nadtt = 80\n", "method = \"partial factors\"\n");

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Rate_FactorsOfOnesOwn_PrintsWhoseTheyAre()
    {
        Run run = Run.Of("rate", bridge.Folder);

        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("Test bridge: partial-factor rating (partial factors)", run.Output, StringComparison.Ordinal);
        Assert.Contains(
            "Factors: DC 1.30 (1.00 where it relieves), DW 1.40 (0.90 where it relieves), live 1.50 at assessment level. They are from factors.toml, as given there: made up for the test (no standard). "
            + "Nothing is preset, and no national annex is in the program.",
            run.Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_FactorsOfOnesOwn_CallsCapacitiesDesignResistances()
    {
        string output = Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "Type 3").Output;
        Assert.Contains("column \"tension capacity\" of members.csv, a design resistance, with its partial factors in it", output, StringComparison.Ordinal);
        Assert.Contains("capacities are used as given in members.csv: design resistances, with their partial factors in them", output, StringComparison.Ordinal);
        Assert.DoesNotContain("condition and system factors", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_TrafficAndServiceVehicle_TellsTheFactorOfEach()
    {
        bridge.Replace("bridge.toml", "[\"Type 3\"]", "[\"Type 3\", \"EN service vehicle\"]");
        Assert.Contains("live 1.50 at assessment level on class legal, live 1.60 at assessment level on class maintenance", SortedFactors(Run.Of("rate", bridge.Folder).Output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("basis = \"made up for the test\"\n", "", "factors.toml:1:1: key \"basis\" is missing: write basis = \"…\" at the top, what the factors are; every rating prints it.")]
    [InlineData("source = \"no standard\"\n", "", "factors.toml:1:1: key \"source\" is missing: write source = \"…\" at the top, where you read them; every rating prints it.")]
    [InlineData("level = \"assessment\"\n", "", "factors.toml:1:1: key \"level\" is missing: write level = \"…\" at the top, the name of the level that is rated, such as \"assessment\".")]
    [InlineData("\"made up for the test\"", "3", "factors.toml:1:9: basis is a text in quotes: basis = \"…\".")]
    [InlineData("unfavourable = 1.3\n", "", "factors.toml:5:1: key \"unfavourable\" is missing in [components]: no factor is preset; write unfavourable = ….")]
    [InlineData("\nfavourable = 0.9", "", "factors.toml:9:1: key \"favourable\" is missing in [wearing_surface]: no factor is preset; write favourable = ….")]
    [InlineData("unfavourable = 1.3", "unfavourable = 130", "factors.toml:6:16: unfavourable = 130: write the factor where it adds to the effect, from 0.5 to 5.")]
    [InlineData("\nfavourable = 0.9", "\nfavourable = -0.9", "factors.toml:11:14: favourable = -0.9: write the factor where it relieves the effect, from 0 to 5.")]
    [InlineData("\nfavourable = 1.0", "\nfavourable = 1.35", "factors.toml:7:14: favourable is above unfavourable: what relieves would count for more than what adds. Swap the two, or mend one.")]
    [InlineData("[wearing_surface]\nunfavourable = 1.4\nfavourable = 0.9\n", "", "factors.toml: the table [wearing_surface] is missing: write it with unfavourable and favourable, the factors on the wearing surface, asked for even where there is none.")]
    [InlineData("factor = 1.5\n", "", "factors.toml:13:1: key \"factor\" is missing in [traffic]: no factor is preset; write factor = ….")]
    [InlineData("dynamic_allowance = 0.3\n", "", "factors.toml:13:1: key \"dynamic_allowance\" is missing in [traffic]: no factor is preset; write dynamic_allowance = ….")]
    [InlineData("lanes = [1.0, 0.9]\n", "", "factors.toml:13:1: key \"lanes\" is missing in [traffic]: no factor is preset; write lanes = […].")]
    [InlineData("factor = 1.5", "factor = 0.1", "factors.toml:14:10: factor = 0.1: write the factor on traffic, from 0.5 to 5.")]
    [InlineData("allowance = 0.3", "allowance = 30", "factors.toml:15:21: dynamic_allowance = 30: write the allowance as a fraction, from 0 to 2: 0.3 for 30%, 0 where it is in the load model.")]
    [InlineData("[1.0, 0.9]", "[]", "factors.toml:16:9: lanes = []: write a list of factors from 0.01 to 2, for one loaded lane, for two and so on, such as lanes = [1.0, 0.9].")]
    [InlineData("[1.0, 0.9]", "[1.0, \"x\"]", "factors.toml:16:9: lanes = [1.0, \"x\"]: write a list of factors from 0.01 to 2, for one loaded lane, for two and so on, such as lanes = [1.0, 0.9].")]
    [InlineData("[1.0, 0.9]", "1.0", "factors.toml:16:9: lanes = 1.0: write a list of factors from 0.01 to 2, for one loaded lane, for two and so on, such as lanes = [1.0, 0.9].")]
    [InlineData("factor = 1.6", "factor = \"1.6\"", "factors.toml:19:10: factor = \"1.6\": write the factor on crowds and service vehicles, from 0.5 to 5.")]
    [InlineData("factor = 1.6\n", "", "factors.toml:18:1: key \"factor\" is missing in [crowd]: no factor is preset; write factor = ….")]
    [InlineData("factor = 1.6\n", "factor = 1.6\nfacter = 1\n", "factors.toml:20:1: unknown key \"facter\". Did you mean \"factor\"? The keys in [crowd] are: factor.")]
    [InlineData("factor = 1.6\n", "factor = 1.6\n[resistance]\ngamma_m0 = 1.0\ngamma_m1 = 1.1\ngamma_m2 = 1.25\n", "factors.toml:20:1: key \"buckling_curve\" is missing in [resistance]: no factor is preset; write buckling_curve = \"…\".")]
    [InlineData("factor = 1.6\n", "factor = 1.6\n[resistance]\ngamma_m0 = 1.0\ngamma_m1 = 1.1\ngamma_m2 = 12.5\nbuckling_curve = \"c\"\n", "factors.toml:23:12: gamma_m2 = 12.5: write the partial factor on resistance, from 0.8 to 3.")]
    [InlineData("factor = 1.6\n", "factor = 1.6\n[resistance]\ngamma_m0 = 1.0\ngamma_m1 = 1.1\ngamma_m2 = 1.25\nbuckling_curve = \"e\"\n", "factors.toml:24:18: buckling_curve = \"e\": write a0, a, b, c, d.")]
    [InlineData("[traffic]", "[trafic]", "factors.toml:13:1: unknown table [trafic]. Did you mean \"traffic\"? The tables are [components], [wearing_surface], [traffic], [crowd], [resistance].")]
    [InlineData(TrafficTable + CrowdTable, "", "factors.toml: has no factor on any live load: write the table [traffic] with factor, dynamic_allowance and lanes, the table [crowd] with factor, or both.")]
    public void Check_FactorMissingOrFaulty_IsRefused(string old, string with, string error)
    {
        bridge.Replace("factors.toml", old, with);
        Refused(error);
    }

    [Fact]
    public void Check_EverythingWrongAtOnce_IsToldInOneGo()
    {
        bridge.Write("factors.toml", "basis = \"b\"\n[crowd]\nfactor = 99\n").Append("bridge.toml", "impact = 0.3\n");
        Refused(
            "factors.toml: the table [components] is missing: write it with unfavourable and favourable, the factors on the dead load of the components.",
            "factors.toml: the table [wearing_surface] is missing: write it with unfavourable and favourable, the factors on the wearing surface, asked for even where there is none.",
            "factors.toml:1:1: key \"source\" is missing: write source = \"…\" at the top, where you read them; every rating prints it.",
            "factors.toml:1:1: key \"level\" is missing: write level = \"…\" at the top, the name of the level that is rated, such as \"assessment\".",
            "factors.toml:3:10: factor = 99: write the factor on crowds and service vehicles, from 0.5 to 5.",
            "bridge.toml:11:10: impact does not go with method = \"partial factors\": factors.toml says it, as dynamic_allowance of [traffic]. Leave impact out here.");
    }

    [Theory]
    [InlineData("impact", "0.3", "dynamic_allowance of [traffic]")]
    [InlineData("surface", "\"smooth\"", "dynamic_allowance of [traffic]")]
    [InlineData("adtt", "80", "factor of [traffic]")]
    [InlineData("permit_factor", "1.3", "factor of [traffic]")]
    [InlineData("emergency_factor", "1.3", "factor of [traffic]")]
    [InlineData("relieving_dc", "0.9", "favourable of [components]")]
    [InlineData("relieving_dw", "0.65", "favourable of [wearing_surface]")]
    public void Check_KeyThatFactorsSay_IsRefused(string key, string value, string given)
    {
        bridge.Append("bridge.toml", $"{key} = {value}\n");
        Refused($"bridge.toml:11:{key.Length + 4}: {key} does not go with method = \"partial factors\": factors.toml says it, as {given}. Leave {key} out here.");
    }

    [Fact]
    public void Check_NoFactorsFile_ShowsTheWholeFile()
    {
        File.Delete(bridge.PathOf("factors.toml"));
        Run run = Run.Of("check", bridge.Folder);

        Assert.Equal(1, run.Status);
        Assert.StartsWith("bridge.toml:9:10: method = \"partial factors\" takes every factor from factors.toml in the bridge folder, and there is none: nothing is preset. Write it, and fill in each value:\n    basis = ", run.Error, StringComparison.Ordinal);

        // The file shown, with values put in, is one that is read.
        string shown = string.Join('\n', run.Error.Split('\n').Skip(1).Select(l => l.Trim()));
        bridge.Write("factors.toml", shown.Replace("[…]", "[1.0]", StringComparison.Ordinal).Replace("= …", "= 1.0", StringComparison.Ordinal).Replace("curve = \"…\"", "curve = \"c\"", StringComparison.Ordinal));
        Run mended = Run.Of("rate", bridge.Folder);
        Assert.Equal((0, ""), (mended.Status, mended.Error));
    }

    [Fact]
    public void Check_NearlyTheName_NamesTheMethods()
    {
        bridge.Replace("bridge.toml", "\"partial factors\"", "\"partial factor\"");
        Refused("bridge.toml:9:10: unknown method \"partial factor\". Did you mean \"partial factors\"? The methods are: LRFR, LFR, ASR, partial factors.");
    }

    [Theory]
    [InlineData("method = \"LFR\"\n", 0, "the method is LFR, which has its own factors")]
    [InlineData("", 1, "bridge.toml names no method")]
    public void Rate_FactorsThatNobodyUses_AreWarnedOf(string method, int status, string why)
    {
        bridge.Replace("bridge.toml", "method = \"partial factors\"\n", method);
        Run run = Run.Of("rate", bridge.Folder);

        Assert.Equal(status, run.Status);
        Assert.Contains($"factors.toml: warning: is not used: {why}. Write method = \"partial factors\" under [rating] of bridge.toml, or take the file away.\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_LoadWithoutAFactor_IsNotRatedAndTheKeyIsNamed()
    {
        bridge.Replace("factors.toml", CrowdTable, "").Replace("bridge.toml", "[\"Type 3\"]", "[\"Type 3\", \"EN service vehicle\"]");
        Run run = Run.Of("rate", bridge.Folder);

        Assert.Equal("bridge.toml:10:23: warning: \"EN service vehicle\" is of class maintenance, and factors.toml has no factor on crowds and service vehicles: it is not rated until factor stands under [crowd] there.\n", run.Error);
        Assert.Contains("factors.toml has no factor on crowds and service vehicles: it is not rated until factor stands under [crowd] there", run.Output, StringComparison.Ordinal);
        Assert.Contains("Governing:", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_NoVehiclesNamedAndNoTraffic_IsWarnedOf()
    {
        bridge.Replace("factors.toml", TrafficTable, "").Replace("bridge.toml", "vehicles = [\"Type 3\"]\n", "");
        Assert.Equal(
            "bridge.toml:8:1: warning: no vehicles are named, which asks for every legal and emergency one, and of each of them: factors.toml has no factors of traffic: it is not rated until factor, dynamic_allowance and lanes stand under [traffic] there.\n",
            Run.Of("rate", bridge.Folder).Error);
    }

    [Fact]
    public void Explain_LoadWithoutAFactor_NamesTheKey()
    {
        bridge.Replace("factors.toml", CrowdTable, "");
        Run run = Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "EN service vehicle");

        Assert.Equal(3, run.Status);
        Assert.Contains("Not rated: factors.toml has no factor on crowds and service vehicles: it is not rated until factor stands under [crowd] there.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Post_ByFactorsOfOnesOwn_HasNoRule()
    {
        Run run = Run.Of("post", bridge.Folder);

        Assert.Equal(3, run.Status);
        Assert.Contains("No posting load is given, and no vehicle can be called safe here: no posting rule belongs to the method partial factors.", run.Output, StringComparison.Ordinal);
        Assert.Contains("An aid for qualified people", run.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("post", bridge.Folder, "--format", "json").Output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("closure").ValueKind);
        Assert.False(json.RootElement.GetProperty("complete").GetBoolean());
        Assert.Contains("no posting rule belongs to the method", json.RootElement.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Share_ByFactorsOfOnesOwn_TakesTheFactorsForLanes()
    {
        Run run = Run.Of("share", bridge.Folder, "--format", "json");

        Assert.Equal(0, run.Status);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal("partial factors", json.RootElement.GetProperty("method").GetString());
    }

    // Which class comes first depends on which row does.
    private static string SortedFactors(string output) =>
        string.Join(", ", output.Split('\n').First(l => l.StartsWith("Factors: ", StringComparison.Ordinal)).Split(". They")[0].Split(", ").Order(StringComparer.Ordinal));

    private void Refused(params string[] errors)
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(string.Concat(errors.Select(e => e + "\n")), run.Error);
        Assert.Equal((1, ""), (run.Status, run.Output));
    }
}
