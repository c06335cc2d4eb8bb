using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace SpanRater.Tests.CommandLine;

/// <summary>The folder that <c>survey --out</c> writes: whole files, names by hash, going on from what is whole to the same bytes.</summary>
public sealed partial class SurveyFolderTests
{
    [Fact]
    public void Out_AFolder_HoldsTheTablesAndAFileOfEachInputByItsHash()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a").Add("b", name: "../../out").Add("twin-of-a", name: "Bridge of a");
        Run run = county.Survey("--out", county.At("out"));
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("Survey of 3 bridges", run.Output, StringComparison.Ordinal);
        IReadOnlyDictionary<string, string> files = county.Files("out");
        Assert.Equal(["matrix.csv", "survey.csv", "survey.html", "survey.json", "survey.md"], files.Keys.Where(k => !k.StartsWith("bridges", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

        // Two folders of the same input have one file.
        string[] bridges = [.. files.Keys.Where(k => k.StartsWith("bridges", StringComparison.Ordinal))];
        Assert.Equal(2, bridges.Length);
        Assert.All(bridges, b => Assert.Matches(HashName(), Path.GetFileName(b)));
        Assert.All(bridges, b => Assert.DoesNotContain(county.Folder, files[b], StringComparison.Ordinal));
        Assert.All(files.Values, f => Assert.Contains("not a posting order", f, StringComparison.Ordinal));
        using var one = JsonDocument.Parse(files[bridges[0]]);
        Assert.Equal(Path.GetFileNameWithoutExtension(bridges[0]), one.RootElement.GetProperty("hash").GetString());
        Assert.Equal(run.Output, county.Survey().Output);
        Assert.False(File.Exists(county.At("out.json")));
    }

    [Fact]
    public void Out_AfterARunThatWasCutShort_EndsWithTheSameBytes()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a", capacity: "30").Add("b").Add("c", capacity: "400").Add("broken").Replace("broken", "members.csv", "L1U1,L1,U1", "L1U1,L1,U9");
        string[] options = ["--crosses", "EV2", "--out"];
        county.Survey([.. options, county.At("whole")]);
        county.Survey([.. options, county.At("cut")]);
        IReadOnlyDictionary<string, string> whole = county.Files("whole");
        string[] bridges = [.. Directory.EnumerateFiles(county.At("cut/bridges")).Order(StringComparer.Ordinal)];
        Assert.Equal(4, bridges.Length);

        // As a killed run leaves it: no tables, a bridge missing, one cut off, and what was being written.
        foreach (string table in Directory.EnumerateFiles(county.At("cut")))
        {
            File.Delete(table);
        }

        File.Delete(bridges[0]);
        File.WriteAllText(bridges[1], File.ReadAllText(bridges[1])[..200]);
        File.WriteAllText($"{bridges[2]}.{Guid.NewGuid():N}.part", "{");
        File.WriteAllText(Path.Combine(county.At("cut"), $"survey.json.{Guid.NewGuid():N}.part"), "{");
        File.WriteAllText(county.At("cut/survey.lock"), "");
        DateTime kept = File.GetLastWriteTimeUtc(bridges[3]);
        county.Survey([.. options, county.At("cut")]);
        Assert.Equal(whole, county.Files("cut"));
        Assert.Equal(kept, File.GetLastWriteTimeUtc(bridges[3]));
    }

    [Fact]
    public void Out_WhereInputOrVehiclesChanged_RatesAgainAndLeavesNothingOfBefore()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a").Add("b");
        county.Survey("--out", county.At("out"), "--crosses", "EV2");
        Assert.True(File.Exists(county.At("out/crossings.csv")));
        county.Replace("a", "members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,20,");
        county.Survey("--out", county.At("out"));
        county.Survey("--out", county.At("fresh"));
        Assert.Equal(county.Files("fresh"), county.Files("out"));
        Assert.False(File.Exists(county.At("out/crossings.csv")));
    }

    [Fact]
    public void Out_FactsThatWereEditedByHand_AreRatedAgain()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        county.Survey("--out", county.At("out"));
        IReadOnlyDictionary<string, string> before = county.Files("out");
        string file = Assert.Single(Directory.EnumerateFiles(county.At("out/bridges")));
        string facts = File.ReadAllText(file);
        Assert.Matches("\"factor\": [0-8]", facts);
        foreach (string edited in (string[])
            [
                Regex.Replace(facts, "\"factor\": [0-8]", "\"factor\": 9"),
                facts.Replace("Bridge of a", "Bridge of b", StringComparison.Ordinal),
                facts.Replace("\"checksum\": \"", "\"checksum\": \"0", StringComparison.Ordinal),
                facts + " ",
            ])
        {
            File.WriteAllText(file, edited);
            county.Survey("--out", county.At("out"));
            Assert.Equal(before, county.Files("out"));
        }
    }

    [Fact]
    public void Out_AResultOfAnotherBuild_IsNotTaken()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        county.Survey("--out", county.At("out"));
        IReadOnlyDictionary<string, string> before = county.Files("out");
        string file = Assert.Single(Directory.EnumerateFiles(county.At("out/bridges")));
        string build = BuildLine().Match(before["bridges/" + Path.GetFileName(file)]).Value;
        File.WriteAllText(file, before["bridges/" + Path.GetFileName(file)].Replace(build, "\"build\": \"0\"", StringComparison.Ordinal).Replace("Bridge of a", "Another", StringComparison.Ordinal));
        county.Survey("--out", county.At("out"));
        Assert.Equal(before, county.Files("out"));
    }

    [Fact]
    public void Out_AFolderThatHoldsAnythingElse_IsRefusedAndLeftAsItIs()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        Directory.CreateDirectory(county.At("mine"));
        File.WriteAllText(county.At("mine/thesis.part"), "years of work");
        Run mine = county.Survey("--out", county.At("mine")), bridge = county.Survey("--out", Path.Combine(county.Folder, "a"));
        Assert.Equal((1, 1), (mine.Status, bridge.Status));
        Assert.Contains("holds what no survey wrote, such as thesis.part", mine.Error, StringComparison.Ordinal);
        Assert.Contains("holds what no survey wrote, such as bridge.toml", bridge.Error, StringComparison.Ordinal);
        Assert.Equal("years of work", File.ReadAllText(county.At("mine/thesis.part")));
    }

    [Fact]
    public void Out_WhileAnotherSurveyWrites_IsRefused()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        county.Survey("--out", county.At("out"));
        using var held = new FileStream(county.At("out/survey.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        Run run = county.Survey("--out", county.At("out"));
        Assert.Equal(1, run.Status);
        Assert.Contains("another survey writes into it", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Out_OfAProcessThatIsKilled_GoesOnToTheSameBytes()
    {
        using var county = new CountyOnDisk();
        for (int i = 0; i < 60; i++)
        {
            county.Add($"b{i:00}", capacity: (20 + i).ToString(System.Globalization.CultureInfo.InvariantCulture));
        }

        string[] command = ["survey", county.Folder, "--workers", "1", "--out", county.At("out")];
        string program = Path.Combine(AppContext.BaseDirectory, "spanrater.dll");
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (string word in (string[])[program, .. command])
        {
            start.ArgumentList.Add(word);
        }

        using (Process process = Process.Start(start)!)
        {
            // Killed as soon as something is there: how far it came does not matter to what follows.
            while (!process.HasExited && !(Directory.Exists(county.At("out/bridges")) && Directory.EnumerateFiles(county.At("out/bridges")).Any()))
            {
                Thread.Sleep(1);
            }

            process.Kill();
            process.WaitForExit();
        }

        Assert.NotEmpty(Directory.EnumerateFiles(county.At("out/bridges")));
        Run.Of(command);
        Run.Of([.. command[..^1], county.At("fresh")]);
        Assert.Equal(county.Files("fresh"), county.Files("out"));
    }

    [Fact]
    public void Out_Interrupted_SaysHowManyAreKeptAndTheNextRunHowManyItTookOver()
    {
        using var county = new CountyOnDisk();
        for (int i = 0; i < 60; i++)
        {
            county.Add($"b{i:00}", capacity: (20 + i).ToString(System.Globalization.CultureInfo.InvariantCulture));
        }

        string[] command = ["survey", county.Folder, "--workers", "1", "--out", county.At("out")];
        using var stop = new CancellationTokenSource();
        using var output = new MemoryStream();
        using var error = new StringWriter();
        var watch = new Thread(() =>
        {
            while (!(Directory.Exists(county.At("out/bridges")) && Directory.EnumerateFiles(county.At("out/bridges"), "*.json").Any()))
            {
                Thread.Sleep(1);
            }

            stop.Cancel();
        });
        watch.Start();
        int status = Cli.CommandLineProgram.Run(command, new Cli.Surroundings(output, error, null, false) { Stop = stop.Token });
        watch.Join();
        Assert.Equal(130, status);
        Assert.Matches("^survey: (At least )?[0-9]+ of 60 bridges (is|are) kept: the same command goes on from (it|them)[.]", error.ToString());
        Assert.Matches("survey: [0-9]+ of 60 bridges (is|are) taken over from an earlier run", Run.Of(command).Error);
    }

    [Fact]
    public void Out_WhereNoFolderCanBeMade_DoesNotSayThatAnythingIsKept()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        File.WriteAllText(county.At("file"), "");
        Run run = county.Survey("--out", county.At("file/out"));
        Assert.Equal(1, run.Status);
        Assert.DoesNotContain("kept", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("goes on", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Out_AFolder_HoldsMatrixAndCrossingsBoth()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        Assert.Equal(0, county.Survey("--crosses", "EV2", "--matrix", "--out", county.At("out")).Status);
        Assert.True(File.Exists(county.At("out/crossings.csv")) && File.Exists(county.At("out/matrix.csv")));
        Assert.Equal((0, 0), (county.Survey("--crosses", "EV2", "--matrix", "--format", "json").Status, county.Survey("--crosses", "EV2", "--matrix", "--out", county.At("c.html")).Status));
        Assert.Contains("which hold both", county.Survey("--crosses", "EV2", "--matrix").Error, StringComparison.Ordinal);
    }

    [GeneratedRegex("^[0-9a-f]{64}\\.json$")]
    private static partial Regex HashName();

    [GeneratedRegex("\"build\": \"[0-9a-f]+\"")]
    private static partial Regex BuildLine();
}
