using System.Text.Json;
using CsCheck;
using SpanRater.Tests;
using SpanRater.Tests.CommandLine;

namespace SpanRater.PageTests;

/// <summary>The page's search for peaks, factor and posting against the engine's: the case files that both run, and random trusses and trains.</summary>
public sealed class PeakCaseTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Peaks_OfTheCaseFiles_AreTheirs()
    {
        await using OpenPage open = await chromium.BareAsync();
        using JsonDocument cases = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(Repository.Root, "tests", "cases", "peaks.json"), TestContext.Current.CancellationToken));
        foreach (JsonElement each in cases.RootElement.GetProperty("cases").EnumerateArray())
        {
            JsonElement found = await open.Page.EvaluateAsync<JsonElement>("text => { const c = JSON.parse(text); return Peaks.of(Peaks.plan(c.stations, c.train), c.line); }", each.GetRawText());
            foreach (string sense in (string[])["tension", "compression"])
            {
                AssertForce(each.GetProperty(sense), found.GetProperty(sense), 1e-9, each.GetProperty("name").GetString()!);
            }
        }
    }

    [Fact]
    public async Task FactorAndPosting_OfTheCaseFiles_AreTheirs()
    {
        await using OpenPage open = await chromium.BareAsync();
        using JsonDocument cases = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(Repository.Root, "tests", "cases", "posting.json"), TestContext.Current.CancellationToken));
        foreach (JsonElement each in cases.RootElement.GetProperty("cases").EnumerateArray())
        {
            JsonElement found = await open.Page.EvaluateAsync<JsonElement>(
                "text => { const c = JSON.parse(text); const factor = Rating.factorOf(c.room, c.liveFactor, c.live, c.impact); return { factor, ...Rating.postingOf(c.weight, factor, c.rule) }; }", each.GetRawText());
            Assert.Equal(each.GetProperty("factor").GetDouble(), found.GetProperty("factor").GetDouble(), 1e-9);
            Assert.Equal(each.GetProperty("verdict").GetString(), found.GetProperty("verdict").GetString());
            Assert.Equal(each.GetProperty("tons").GetInt32(), found.GetProperty("tons").GetInt32());
        }
    }

    // The engine and the page, each with its own code, on the lines of random trusses of all ten forms; gaps that vary and relieving axles left out among them.
    [Fact]
    public async Task Peaks_Of200RandomTrussesAndTrains_AreTheEngines()
    {
        await using OpenPage open = await chromium.BareAsync();
        (InfluenceLines Lines, AxleTrain Train)[] drawn = SeededCases.Draw(
            from form in RandomTrusses.Forms()
            let truss = form.Build()
            from train in Train(truss)
            select (InfluenceLines.Of(DeterminateTruss.Of(truss).Value!).Value!, train), 200);
        Assert.Contains(drawn, d => d.Train.Gaps.Any(g => g.Varies));
        Assert.Contains(drawn, d => d.Train.RelievingAxles == RelievingAxles.LeftOut);
        int compared = 0;
        foreach ((InfluenceLines found, AxleTrain train) in drawn)
        {
            IReadOnlyList<double> stations = found.Truss.Stations;
            var plan = new RollingPlan(stations, train);
            double[][] lines = [.. found.Members.Select(m => m.Line.Ordinates.ToArray())];
            JsonElement ofPage = await open.Page.EvaluateAsync<JsonElement>(
                "c => { const plan = Peaks.plan(c.stations, c.train); return c.lines.map(l => Peaks.of(plan, l)); }",
                new { stations = stations.ToArray(), lines, train = new { loads = train.Loads.ToArray(), gaps = train.Gaps.Select(g => new[] { g.Least, g.Most }).ToArray(), leaveOut = train.RelievingAxles == RelievingAxles.LeftOut } });
            foreach ((InfluenceEffect member, JsonElement peaks) in found.Members.Zip(ofPage.EnumerateArray()))
            {
                PeakPair own = plan.PeaksOf(member.Line);
                Compare(own.Tension, peaks.GetProperty("tension"), train.Weight);
                Compare(own.Compression, peaks.GetProperty("compression"), train.Weight);
                compared += 2;
            }
        }

        Assert.InRange(compared, 5_000, 100_000);
    }

    private static void Compare(Peak? own, JsonElement peak, double weight)
    {
        if (own is null)
        {
            Assert.Equal(JsonValueKind.Null, peak.ValueKind);
            return;
        }

        Assert.Equal(own.Force, peak.GetProperty("force").GetDouble(), 1e-9 * weight);
    }

    private static void AssertForce(JsonElement expected, JsonElement found, double tolerance, string name)
    {
        Assert.True(expected.ValueKind == JsonValueKind.Null == (found.ValueKind == JsonValueKind.Null), name);
        if (expected.ValueKind == JsonValueKind.Number)
        {
            double force = expected.GetDouble();
            Assert.Equal(force, found.GetProperty("force").GetDouble(), tolerance * Math.Max(1, Math.Abs(force)));
        }
    }

    private static Gen<AxleTrain> Train(Truss truss) =>
        from axles in Gen.Int[1, 6]
        from loads in Gen.Double[1e4, 1e5].Array[axles]
        from gaps in Gen.Double[0.1, 1.6].Array[axles - 1]
        from range in Gen.Double[0.2, 1.5]
        from varying in Gen.Int[0, 2]
        from leaveOut in Gen.Bool
        let panel = truss.Stations[1] - truss.Stations[0]
        select new AxleTrain(
            loads,
            [.. gaps.Select((g, i) => i < varying ? new AxleGap(g * panel, (g + range) * panel) : AxleGap.Fixed(g * panel))],
            leaveOut ? RelievingAxles.LeftOut : RelievingAxles.Counted);
}
