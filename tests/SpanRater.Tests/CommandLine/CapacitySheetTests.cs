using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace SpanRater.Tests.CommandLine;

/// <summary>The sheets of section and capacity in <c>explain</c>, recomputed as with a pocket calculator; the C8x11.5 as the older tables have it, from memory.</summary>
public sealed partial class CapacitySheetTests : IDisposable
{
    private const double Kip = 4.4482216152605, Inch = 0.0254, A = (2 * 3.38) + 3, E = 29_000;
    private static readonly double Length = 12 * Math.Sqrt((12 * 12) + (8 * 8));
    private readonly BridgeOnDisk bridge = LacedKingPost.Make();

    public void Dispose() => bridge.Dispose();

    // Out of plane: channels back to back 6.5 in apart, each centroid 0.571 in behind its back, and the plate; lacing a 7, b 9, one bar 2 x 1/4 in.
    [Fact]
    public void Explain_OfALacedColumn_GivesTheElasticForcesByHand()
    {
        double iy = (2 * (1.32 + (3.38 * Math.Pow(3.25 + 0.571, 2)))) + (0.25 * 12 * 12 * 12 / 12), slenderness = 0.875 * Length / Math.Sqrt(iy / A);
        double whole = Math.PI * Math.PI * E * A / (slenderness * slenderness), d = Math.Sqrt((7 * 7) + (9 * 9)), f = d * d * d / (7 * 9 * 9 * E * 0.5);

        JsonElement axis = Mode("buckling in plane").GetProperty("outOfPlane");
        Near(whole, axis.GetProperty("elasticForceAsOnePiece"));
        Near(whole / (1 + (f * whole)), axis.GetProperty("elasticForce"));
        Near(Math.PI * Math.PI * E * A / Math.Pow(14 / Math.Sqrt(1.32 / 3.38), 2), axis.GetProperty("elasticForceOfLegs"));
        Assert.Equal(0.875, axis.GetProperty("k").GetDouble());
        Assert.Equal(Length * Inch, axis.GetProperty("length").GetDouble(), 1e-9);
    }

    // What stands on the page is enough to come to what stands on the page: each line is worked again from its own figures.
    [Fact]
    public void Explain_OfAColumn_CanBeFollowedWithAPocketCalculator()
    {
        string text = Explain("L0U1", "--sense", "compression");
        double[] squash = Figures(text, SquashLine()), curve = Figures(text, CurveLine()), factored = Figures(text, FactoredLine()), capacity = Figures(text, CapacityLine());

        Assert.Equal(squash[0] * squash[1], squash[2], 1e-3 * squash[2]);
        Assert.Equal(30 * A, squash[2], 1e-3 * squash[2]);
        Assert.Equal(Math.Pow(0.658, curve[0]) * curve[1], curve[2], 1e-3 * curve[2]);
        Assert.Equal(0.95 * factored[0], factored[1], 1e-3 * factored[1]);
        Assert.Equal(0.85 * factored[1], capacity[0], 1e-3 * capacity[0]);
        Assert.Contains("Buckling in plane: governs.", text, StringComparison.Ordinal);
        Assert.Contains("φc = 0.85, condition not given, that of a poor one assumed", text, StringComparison.Ordinal);
        Assert.Contains("K = 0.875 for pinned ends (AASHTO LRFD, 8th ed. (2017), 4.6.2.5, from memory)", text, StringComparison.Ordinal);
        Assert.Contains("each lacing bar has to carry", text, StringComparison.Ordinal);
    }

    // Half of the plate lost on both faces: 1.5 in² less, and the centroid moves toward the channels.
    [Fact]
    public void Explain_WithLoss_SetsAsBuiltBesideAsFoundAndSaysWhoSawIt()
    {
        bridge.Write("findings.csv", "member,truss,place,part,what,dimension,remaining [in],doubt [in],by,how,photo,date\nL0U1,both,foot,plate,remaining,thickness,0.125,1/32,A. Smith,calliper,P3,2026-05-30\n");
        string text = Explain("L0U1", "--sense", "compression");
        Assert.Contains("foot: plate: thickness 0.125 in (3.2 mm) remains, ± 0.031 in (0.8 mm) (A. Smith; calliper; photo P3; 2026-05-30)", text, StringComparison.Ordinal);
        Assert.Contains("Least area: at foot, 8.26 in2 of 9.76 in2 as built.", text, StringComparison.Ordinal);
        Assert.Contains("Compression and moment, foot: governs.", text, StringComparison.Ordinal);

        using JsonDocument json = Json("L0U1");
        JsonElement[] places = [.. json.RootElement.GetProperty("sections")[0].GetProperty("places").EnumerateArray()];
        Assert.Equal([null, "foot"], places.Select(p => p.GetProperty("place").GetString()));
        Assert.Equal(8.26, places[1].GetProperty("area").GetDouble() / (Inch * Inch), 0.005);
        double shift = (1.5 * 4.125 / 8.26) - (3 * 4.125 / 9.76);
        Assert.Equal(shift, places[1].GetProperty("shiftY").GetDouble() / Inch, 0.005);

        // P/Pr + (8/9) M/Mr = 1 with the page's own figures, e the shift.
        JsonElement mode = Mode("compression and moment");
        double p = mode.GetProperty("strength").GetDouble(), e = mode.GetProperty("eccentricity").GetDouble();
        Assert.Equal(Math.Abs(shift), e / Inch, 0.005);
        Assert.Equal(p * e * mode.GetProperty("amplification").GetDouble(), mode.GetProperty("moment").GetDouble(), 1e-6 * p);
        double plain = Modes().Last(m => m.GetProperty("place").GetString() == "foot" && m.GetProperty("mode").GetString() != "compression and moment").GetProperty("strength").GetDouble();
        Assert.Equal(1, (p / plain) + (8.0 / 9 * mode.GetProperty("moment").GetDouble() / mode.GetProperty("momentStrength").GetDouble()), 1e-6);
    }

    // Two holes of 13/16 in in the plate: 0.80 Rp Fu U An, and 0.95 Fy Ag. Source: AASHTO LRFD 6.8.2.1, from memory.
    [Fact]
    public void Explain_OfTension_GivesBothModesByHand()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,,,,,,,40", "L1U1,L1,U1,hanger,rafter,iron,pinned,0.9,,,").Replace("sections.csv", "plate,1,12,0.25,,,4.125,0,", "plate,1,12,0.25,,,4.125,2,0.8125");
        string text = Explain("L1U1", "--sense", "tension");
        Assert.Contains("P = φy·Fy·Ag", text, StringComparison.Ordinal);
        Assert.Contains("P = φu·Rp·Fu·U·An", text, StringComparison.Ordinal);
        JsonElement[] modes = [.. Modes("L1U1", "tension")];
        Near(0.95 * 30 * A, modes.Single(m => m.GetProperty("mode").GetString() == "gross yield").GetProperty("strength"));
        Near(0.80 * 0.90 * 60 * 0.9 * (A - (2 * 0.8125 * 0.25)), modes.Single(m => m.GetProperty("mode").GetString() == "net rupture").GetProperty("strength"));
    }

    // An 8 x 8 in strut of No.1 fir, wet, 14.42 ft: F'c = 2.5/0.9 x 0.8 x 0.91 x 1.0 ksi; E'min = 1.76 x 0.85 x 580 ksi; CP with c = 0.8.
    [Fact]
    public void Explain_OfATimber_GivesReferenceValueFactorsAndBuckling()
    {
        bridge.Write("sections.csv", "section,part,shape,count,width [in],depth [in],holes,hole [in]\nstrut,timber,timber,1,8,8,0,\n").Write("lacing.csv", LacedKingPost.LacingHeader);
        bridge.Write("materials.toml", "[[material]]\nname = \"fir\"\nkind = \"timber\"\nspecies = \"Douglas Fir-Larch\"\nclass = \"posts and timbers\"\ngrade = \"No.1\"\nservice = \"wet\"\nduration = \"two months\"\n")
            .Replace("members.csv", "L0U1,L0,U1,end post,rafter,iron,pinned,1", "L0U1,L0,U1,end post,strut,fir,,").Replace("members.csv", "U1L2,U1,L2,end post,rafter,iron,pinned,1", "U1L2,U1,L2,end post,strut,fir,,");
        double before = 2.5 / 0.9 * 0.8 * 0.91, star = 0.9 * before, euler = 0.822 * 1.76 * 0.85 * 580 / Math.Pow(Length / 8, 2), half = (1 + (euler / star)) / 1.6;
        double cp = half - Math.Sqrt((half * half) - (euler / star / 0.8));

        JsonElement column = Mode("timber as a column");
        Assert.Equal(cp, column.GetProperty("stabilityFactor").GetDouble(), 1e-3);
        Near(0.9 * cp * before * 64, column.GetProperty("strength"));
        string text = Explain("L0U1", "--sense", "compression");
        Assert.Contains("F'c before buckling = CKF·Cλ·CM·Fc", text, StringComparison.Ordinal);
        Assert.Contains("own weight, factored: M0 = ", text, StringComparison.Ordinal);

        // A simple span of 12 ft across under 64 in² of 50 pcf timber, times 1.25.
        Assert.Contains($"M0 = {(1.25 * 64 / 144.0 * 0.050 * 12 * 12 / 8).ToString("0.###", CultureInfo.InvariantCulture)} kip·ft", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_OfAGivenCapacity_SaysSoAndHasNoSheet()
    {
        string text = Explain("L1U1");
        Assert.Contains("C = 40.000 kip: column \"tension capacity\" of members.csv", text, StringComparison.Ordinal);
        Assert.DoesNotContain("made of", text, StringComparison.Ordinal);
        using JsonDocument json = Json("L1U1");
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("ratings")[0].GetProperty("capacitySheet").ValueKind);
    }

    [Fact]
    public void Explain_WithDataMissing_TellsEachWithItsMend()
    {
        bridge.Replace("members.csv", "L0U1,L0,U1,end post,rafter,iron,pinned,1", "L0U1,L0,U1,end post,rafter,iron,,1").Replace("joints.csv", "U1,12,8,,,,yes", "U1,12,8,,,,");
        string text = Explain("L0U1", "--sense", "compression");
        Assert.Contains("  - How its ends are fastened is missing, and with it the effective length. Write ends in members.csv: pinned, riveted, bolted or welded\n", text, StringComparison.Ordinal);
        Assert.Contains("  - Nothing says that U1 is held sideways. Write held sideways in joints.csv, out-of-plane length in members.csv, or [pony] in bridge.toml\n", text, StringComparison.Ordinal);
    }

    // The mode stands in every form of rate; null where the capacity is given.
    [Fact]
    public void Rate_OfSections_NamesTheModeThatGoverns()
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", bridge.Folder, "--format", "json").Output);
        JsonElement[] rows = [.. json.RootElement.GetProperty("ratings").EnumerateArray()];
        Assert.All(rows.Where(r => r.GetProperty("member").GetString() == "L1U1"), r => Assert.Null(r.GetProperty("mode").GetString()));
        JsonElement rafter = rows.First(r => r.GetProperty("member").GetString() == "L0U1" && r.GetProperty("sense").GetString() == "compression");
        Assert.Equal(("buckling in plane", null), (rafter.GetProperty("mode").GetString(), rafter.GetProperty("place").GetString()));
        Assert.Contains(",compression,buckling in plane,rated,", Run.Of("rate", bridge.Folder, "--format", "csv").Output, StringComparison.Ordinal);
        Assert.Contains("buckling in plane", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
        Assert.Contains("\"mode\": ", Run.Of("post", bridge.Folder, "--format", "json").Output.Replace("\":\"", "\": \"", StringComparison.Ordinal).Replace("\":null", "\": null", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static void Near(double kips, JsonElement kilonewtons) => Assert.Equal(kips, kilonewtons.GetDouble() / Kip, 0.003 * kips);

    private static double[] Figures(string text, Regex line)
    {
        Match match = line.Match(text);
        Assert.True(match.Success, $"No line {line} in:\n{text}");
        return [.. match.Groups.Values.Skip(1).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture))];
    }

    private string Explain(string member, params string[] more) => Run.Of(["explain", bridge.Folder, "--member", member, "--vehicle", "Type 3", .. more]).Output;

    private JsonDocument Json(string member) => JsonDocument.Parse(Run.Of("explain", bridge.Folder, "--member", member, "--vehicle", "Type 3", "--format", "json").Output);

    private JsonElement Mode(string mode) => Modes().Last(m => m.GetProperty("mode").GetString() == mode);

    private IEnumerable<JsonElement> Modes(string member = "L0U1", string sense = "compression")
    {
        using JsonDocument json = Json(member);
        return [.. json.RootElement.GetProperty("ratings").EnumerateArray().First(r => r.GetProperty("sense").GetString() == sense).GetProperty("capacitySheet").GetProperty("modes").EnumerateArray().Select(m => m.Clone())];
    }

    [GeneratedRegex(@"Po = A·Fy = ([\d.]+) in2·([\d.]+) ksi = ([\d.]+) kip")]
    private static partial Regex SquashLine();

    [GeneratedRegex(@"Pn = 0\.658\^\(Po/Pe\)·Po = 0\.658\^([\d.]+)·([\d.]+) kip = ([\d.]+) kip")]
    private static partial Regex CurveLine();

    [GeneratedRegex(@"P = φc·Pn = 0\.95·([\d.]+) kip = ([\d.]+) kip")]
    private static partial Regex FactoredLine();

    [GeneratedRegex(@"C = 0\.85·[\d.]+ kip = ([\d.]+) kip")]
    private static partial Regex CapacityLine();
}
