using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What was seen on the samples, and what comes of it in their ratings.</summary>
public sealed class SampleFindingsTests
{
    private static readonly string[] Samples = ["tansy-weir", "hollis-fork", "garrow-landing", "wrenfield-ferry", "mossback-lane"];

    public static IEnumerable<TheoryDataRow<string>> EverySample() => Samples.Select(s => new TheoryDataRow<string>(s));

    [Theory]
    [MemberData(nameof(EverySample))]
    public void Sample_HasSectionsMaterialsFindingsAndDeadLoad_AndNoGivenCapacity(string sample)
    {
        string folder = Repository.Sample(sample);
        Assert.All((string[])["sections.csv", "materials.toml", "findings.csv"], file => Assert.True(File.Exists(Path.Combine(folder, file)), file));
        Assert.True(File.Exists(Path.Combine(folder, "dead.csv")) || File.ReadAllText(Path.Combine(folder, "loads.csv")).Contains("\nDC,", StringComparison.Ordinal));
        Assert.DoesNotContain("capacity", File.ReadAllText(Path.Combine(folder, "members.csv")), StringComparison.OrdinalIgnoreCase);
        Assert.Equal("", Run.Of("check", folder).Error);
    }

    // What was seen on one truss changes places with what was seen on the other: so do the factors, and nothing else.
    [Theory]
    [InlineData("tansy-weir")]
    [InlineData("garrow-landing")]
    public void Rate_FindingsOfTheTrussesSwapped_SwapsTheResults(string sample)
    {
        string[] names = NamesOf(sample);
        using var copy = new SampleCopy(sample);
        copy.Change("findings.csv", text => text
            .Replace($",{names[0]},", ",?,", StringComparison.Ordinal).Replace($",{names[1]},", $",{names[0]},", StringComparison.Ordinal).Replace(",?,", $",{names[1]},", StringComparison.Ordinal));

        Dictionary<string, string> was = FactorsOf(Repository.Sample(sample)), swapped = FactorsOf(copy.Folder);

        Assert.Equal(was.Count, swapped.Count);
        Assert.NotEqual(was, swapped);
        Assert.All(was, row => Assert.Equal(row.Value, swapped[Swapped(row.Key, names)]));
    }

    // What remains is what was built: on one truss, on both, and with a doubt, it is as if nobody had looked.
    [Theory]
    [InlineData("hollis-fork", "in", "L2L3,north,L3,eyebars,,remaining,thickness,7/8,1/32")]
    [InlineData("hollis-fork", "in", "L2L3,both,L3,eyebars,,remaining,thickness,7/8,1/32")]
    [InlineData("garrow-landing", "in", "M2U3,upstream,the M2 gusset,angles,,remaining,flat leg,5/16,1/32")]
    [InlineData("tansy-weir", "mm", "L2L3,upstream,L3,angles,,remaining,flat leg,7,0.5")]
    [InlineData("mossback-lane", "in", "L1L2,both,the middle,timber,,remaining,depth,10,1/8")]
    public void Rate_FindingsThatFindNothingLost_ChangeNothing(string sample, string unit, string row)
    {
        using SampleCopy bare = new(sample), seen = new(sample);
        File.Delete(Path.Combine(bare.Folder, "findings.csv"));
        seen.Change("findings.csv", _ => $"member,truss,place,part,piece,what,dimension,remaining [{unit}],doubt [{unit}]\n{row}\n");

        // Both trusses have rows of their own where something was seen on one, though they are alike: all but the name is the same.
        Dictionary<string, string> unseen = FactorsOf(bare.Folder);
        Assert.All(FactorsOf(seen.Folder), found => Assert.Equal(unseen[found.Key[found.Key.IndexOf('|', StringComparison.Ordinal)..]], found.Value));
    }

    // The sound member has more than the one with its loss: what was seen is in the answer.
    [Theory]
    [InlineData("tansy-weir", "L2L3", "tension", "upstream", "downstream")]
    [InlineData("garrow-landing", "M2U3", "compression", "upstream", "downstream")]
    public void Rate_AMemberWithLossOnOneTruss_IsLowerThere(string sample, string member, string sense, string worse, string better)
    {
        Dictionary<string, string> factors = FactorsOf(Repository.Sample(sample));
        string[] rows = [.. factors.Keys.Where(k => k.StartsWith($"{worse}|{member}|{sense}|", StringComparison.Ordinal) && factors[k] != "null")];
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.True(Number(factors[row]) < Number(factors[better + row[row.IndexOf('|', StringComparison.Ordinal)..]]), row));
    }

    private static double Number(string json) => JsonDocument.Parse(json).RootElement.GetDouble();

    private static string Swapped(string key, string[] names) =>
        key.StartsWith('|') ? key : key.StartsWith(names[0] + "|", StringComparison.Ordinal) ? names[1] + key[names[0].Length..] : names[0] + key[names[1].Length..];

    // The factor, or null, of every row; of a withheld rating the capacity, which is found all the same.
    private static Dictionary<string, string> FactorsOf(string folder)
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", folder, "--format", "json").Output);
        JsonElement[] rows = [.. json.RootElement.GetProperty("ratings").EnumerateArray()];
        string value = rows.Any(r => r.GetProperty("status").GetString() == "rated") ? "factor" : "capacity";
        return rows.ToDictionary(
            r => string.Join('|', ((string[])["truss", "member", "sense", "effect", "vehicle", "beside", "level"]).Select(k => r.GetProperty(k).GetString())),
            r => r.GetProperty(value).GetRawText());
    }

    private static string[] NamesOf(string sample)
    {
        string line = File.ReadLines(Path.Combine(Repository.Sample(sample), "bridge.toml")).Single(l => l.StartsWith("truss_names", StringComparison.Ordinal));
        return [.. line.Split('"').Where((_, i) => i % 2 == 1)];
    }

    /// <summary>A copy of a sample's files in a temporary place.</summary>
    private sealed class SampleCopy : IDisposable
    {
        public SampleCopy(string sample)
        {
            foreach (string file in Directory.GetFiles(Repository.Sample(sample)))
            {
                File.Copy(file, Path.Combine(Folder, Path.GetFileName(file)));
            }
        }

        public string Folder { get; } = Directory.CreateTempSubdirectory("span-sample-").FullName;

        public void Change(string file, Func<string, string> change) => File.WriteAllText(Path.Combine(Folder, file), change(File.ReadAllText(Path.Combine(Folder, file))));

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
