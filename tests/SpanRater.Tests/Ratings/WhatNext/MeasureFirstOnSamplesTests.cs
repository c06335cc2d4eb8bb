using System.Globalization;
using System.Text.Json;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Ratings.WhatNext;

/// <summary>
/// What measure says of a reading is checked by finite differences through the files: the reading moved by its doubt to the bad side in findings.csv, its
/// doubt cleared, and the bridge rated again.
/// </summary>
public class MeasureFirstOnSamplesTests
{
    private const double Tolerance = 1e-9;

    [Theory]
    [InlineData("hollis-fork", 6)]
    [InlineData("tansy-weir", 3)]
    public void MeasureFirst_OfASample_IsWhatRateGivesWithTheReadingMoved(string sample, int readings)
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("measure", Repository.Sample(sample), "--format", "json").Output);
        JsonElement[] first = [.. json.RootElement.GetProperty("measureFirst").EnumerateArray()];
        Assert.Equal(readings, first.Length);

        double[] costs = [.. first.Select(reading => Cost(sample, reading))];

        // Most urgent first, by what was found here and not by what measure says; two that cost the same may stand either way.
        Assert.All(costs.Zip(costs.Skip(1)), pair => Assert.True(pair.Second <= pair.First + Tolerance));
        Assert.All(costs, cost => Assert.InRange(cost, 0.01, 0.99));
        Assert.All(first.Zip(costs), pair => Assert.Equal(pair.Second, pair.First.GetProperty("urgency").GetDouble(), Tolerance));
    }

    // Growth of 1/RF, each of the two from a rating of its own.
    private static double Cost(string sample, JsonElement reading)
    {
        string member = reading.GetProperty("member").GetString()!;
        string? truss = reading.GetProperty("truss").GetString(), level = reading.GetProperty("level").GetString();
        using BridgeOnDisk copy = BridgeOnDisk.OfSample(sample);
        double asRead = LowestOf(copy, member, truss, level);
        Assert.Equal(reading.GetProperty("factor").GetDouble(), asRead, Tolerance);

        MoveToTheBadSide(copy, reading);
        double moved = LowestOf(copy, member, truss, level);

        Assert.Equal(reading.GetProperty("factorAtWorst").GetDouble(), moved, Tolerance);
        return (1 / moved) - (1 / asRead);
    }

    private static void MoveToTheBadSide(BridgeOnDisk copy, JsonElement reading)
    {
        string[] lines = File.ReadAllLines(copy.PathOf("findings.csv"));
        int head = Array.FindIndex(lines, l => l.StartsWith("member,", StringComparison.Ordinal));
        string[] names = lines[head].Split(',');
        int Column(string name) => Array.FindIndex(names, n => n == name || n.StartsWith(name + " [", StringComparison.Ordinal));
        double unit = Unit.Find(names[Column("remaining")].Split('[', ']')[1])!.Size;

        // A comma within a cell is in "how" alone, which is behind all of these.
        bool IsIt(string[] cells) => ((string[])["member", "place", "dimension"]).All(name => cells.Length >= names.Length && cells[Column(name)] == reading.GetProperty(name).GetString());
        int line = Array.FindIndex(lines, l => IsIt(l.Split(',')));
        Assert.True(line > head, reading.ToString());
        string[] cells = lines[line].Split(',');
        cells[Column("remaining")] = ((reading.GetProperty("read").GetDouble() - reading.GetProperty("doubt").GetDouble()) / unit).ToString("R", CultureInfo.InvariantCulture);
        cells[Column("doubt")] = "";
        lines[line] = string.Join(',', cells);
        copy.Write("findings.csv", string.Join('\n', lines) + "\n");
    }

    private static double LowestOf(BridgeOnDisk copy, string member, string? truss, string? level)
    {
        Run run = Run.Of("rate", copy.Folder, "--format", "json");
        Assert.Equal((0, ""), (run.Status, run.Error));
        using JsonDocument json = JsonDocument.Parse(run.Output);
        return json.RootElement.GetProperty("ratings").EnumerateArray()
            .Where(r => r.GetProperty("member").GetString() == member && r.GetProperty("truss").GetString() == truss && r.GetProperty("level").GetString() == level && r.GetProperty("status").GetString() == "rated")
            .Min(r => r.GetProperty("factor").GetDouble());
    }
}
