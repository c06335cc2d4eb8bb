using System.Globalization;
using System.Text.Json;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.PageTests;

/// <summary>The field report in a real browser, from a file, without a network.</summary>
public sealed class ReportPageTests(Chromium chromium) : IClassFixture<Chromium>
{
    public static TheoryData<string> Samples => ["garrow-landing", "hollis-fork", "mossback-lane", "tansy-weir", "wrenfield-ferry"];

    [Theory]
    [MemberData(nameof(Samples))]
    public async Task Report_Opened_SaysNothingInTheConsole_AndAsksForNothing(string sample)
    {
        await using OpenPage open = await OpenAsync(sample);
        await open.Page.SelectOptionAsync("#living-vehicle", "0");
        await open.Page.Locator("#living-slider").FocusAsync();
        await open.Page.Keyboard.PressAsync("PageUp");
        Assert.Empty(open.Said);
        Assert.Single(open.Asked);
        Assert.Matches(@"^\d", await open.TextOf("#living-at"));
    }

    // The slider, set to where rate says the vehicle stands, shows the live force that rate says.
    [Theory]
    [InlineData("garrow-landing")]
    [InlineData("hollis-fork")]
    [InlineData("mossback-lane")]
    [InlineData("tansy-weir")]
    public async Task Slider_AtTheGoverningPosition_ShowsTheTablesNumber(string sample)
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", Repository.Sample(sample), "--format", "json").Output);
        JsonElement row = json.RootElement.GetProperty("governingMember");
        string member = row.GetProperty("member").GetString()!, vehicle = row.GetProperty("vehicle").GetString()!, sense = row.GetProperty("sense").GetString()!;
        using JsonDocument explained = JsonDocument.Parse(Run.Of("explain", Repository.Sample(sample), "--member", member, "--vehicle", vehicle, "--sense", sense, "--format", "json").Output);
        JsonElement opened = explained.RootElement.GetProperty("ratings").EnumerateArray().First(r => r.GetProperty("truss").GetString() == row.GetProperty("truss").GetString() && r.GetProperty("beside").ValueKind == JsonValueKind.Null);
        JsonElement position = opened.GetProperty("position");

        await using OpenPage open = await OpenAsync(sample);
        await open.Page.SelectOptionAsync("#living-vehicle", new SelectOptionValue { Label = vehicle });
        await open.Page.SelectOptionAsync("#living-member", new SelectOptionValue { Label = member });
        if (row.GetProperty("truss").GetString() is { } truss)
        {
            await open.Page.SelectOptionAsync("#living-truss", new SelectOptionValue { Label = truss });
        }

        await open.Page.CheckAsync($"input[name=living-direction][value={position.GetProperty("direction").GetString()}]");
        double front = position.GetProperty("station").GetDouble();
        await open.Page.EvaluateAsync(
            "front => { const facts = JSON.parse(document.getElementById('living-facts').textContent); const right = document.querySelector('input[name=living-direction]:checked').value === 'right'; const s = document.getElementById('living-slider'); s.value = String((right ? front - facts.stations[0] : facts.stations[facts.stations.length - 1] - front) / facts.length.metres); s.dispatchEvent(new Event('input')); }",
            front);
        await FrameAsync(open);

        double live = opened.GetProperty("live").GetDouble() * 1000;
        string expected = await open.Page.EvaluateAsync<string>("live => Figures.force(JSON.parse(document.getElementById('living-facts').textContent), Math.abs(live))", live);
        Assert.Contains(expected, await open.TextOf("#living-card"), StringComparison.Ordinal);
        Assert.Contains(live > 0 ? "tension" : "compression", (await open.TextOf("#living-card")).Split('\n')[1], StringComparison.Ordinal);
    }

    // What is written on the drawing is what the table of members says, to its decimal.
    [Fact]
    public async Task Drawing_AsItRolls_BearsTheNumbersOfTheTable()
    {
        await using OpenPage open = await OpenAsync("garrow-landing");
        await open.Page.GetByText("Every member under this vehicle").ClickAsync();
        await open.Page.EvaluateAsync("() => { window.written = []; const text = Brush.text; Brush.text = (brush, words, ...rest) => { written.push(words); text(brush, words, ...rest); }; }");
        string before = await PixelsAsync(open);
        await open.Page.Locator("#living-slider").FocusAsync();
        await open.Page.Keyboard.PressAsync("PageUp");
        await FrameAsync(open);
        Assert.NotEqual(before, await PixelsAsync(open));
        await open.Page.EvaluateAsync("() => { written.length = 0; }");
        await open.Page.Keyboard.PressAsync("PageUp");
        await FrameAsync(open);
        string[] table = await open.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('#living-members tr')].map(r => r.cells[1].textContent.replace('\u2212', '-'))");
        string[] written = await open.Page.EvaluateAsync<string[]>("() => written");
        double[] loaded = [.. table.Select(t => double.Parse(t, CultureInfo.InvariantCulture)).Where(f => Math.Abs(f) > 0.2)];
        double[] drawn = [.. written.Where(w => w.EndsWith(" T", StringComparison.Ordinal) || w.EndsWith(" C", StringComparison.Ordinal)).Select(w => double.Parse(w[..^2], CultureInfo.InvariantCulture) * (w[^1] == 'T' ? 1 : -1))];

        // One decimal on the drawing, two in the table. A number that would lie over a greater one, or over the vehicle, is left out.
        Assert.InRange(drawn.Length, loaded.Length / 2, loaded.Length);
        Assert.All(drawn, d => Assert.Contains(loaded, f => Math.Abs(d - f) <= 0.05 + 0.005 + 1e-9));
        Assert.Contains(drawn, d => Math.Abs(Math.Abs(d) - loaded.Max(Math.Abs)) <= 0.05 + 0.005 + 1e-9);
        Assert.Empty(open.Said);
    }

    // Every vehicle with the axles of every other, by the page and by the engine.
    [Theory]
    [MemberData(nameof(Samples))]
    public async Task Vehicle_EditedToAnother_HasItsPeaks(string sample)
    {
        BridgeReading reading = BridgeFolder.Read(Repository.Sample(sample), []);
        Assert.True(BridgeRater.Rate(reading.Bridge!, RateCommandMethod(reading), reading.VehiclesAsked).TryGet(out BridgeRating? rating, out _));
        Vehicle[] others = [.. reading.Catalogue.Entries.Select(e => e.Load).OfType<Vehicle>()];
        await using OpenPage open = await OpenAsync(sample);
        int compared = 0;
        foreach (Vehicle other in others)
        {
            JsonElement found = await open.Page.EvaluateAsync<JsonElement>(
                "v => { const facts = JSON.parse(document.getElementById('living-facts').textContent); return Rolling.peaksOf(facts, { ...Rolling.copyOf(facts.vehicles[0]), ...v }); }",
                new { loads = other.Train.Loads.ToArray(), gaps = other.Train.Gaps.Select(g => new[] { g.Least, g.Most }).ToArray(), leaveOut = other.Train.RelievingAxles == RelievingAxles.LeftOut });
            var plan = new RollingPlan(reading.Bridge!.Truss.Stations, other.Train);
            foreach ((JsonElement peaks, int m) in found.EnumerateArray().Select((p, m) => (p, m)))
            {
                Assert.Equal(rating.Crossing.DependsOnRods(m), peaks.ValueKind == JsonValueKind.Null);
                if (peaks.ValueKind != JsonValueKind.Null)
                {
                    PeakPair own = plan.PeaksOf(rating.Crossing.Lines.Members[m].Line);
                    Compare(own.Tension, peaks.GetProperty("tension"), other.Train.Weight);
                    Compare(own.Compression, peaks.GetProperty("compression"), other.Train.Weight);
                    compared++;
                }
            }
        }

        Assert.InRange(compared, others.Length * 3, 100_000);
    }

    // What the page computes for an edited vehicle, asked of each vehicle as it is, is what the engine wrote beside it, where the page gives a factor at all.
    [Theory]
    [MemberData(nameof(Samples))]
    public async Task Factors_ComputedByThePage_AreTheEngines(string sample)
    {
        await using OpenPage open = await OpenAsync(sample);
        JsonElement all = await open.Page.EvaluateAsync<JsonElement>(
            "() => { const facts = JSON.parse(document.getElementById('living-facts').textContent); return facts.vehicles.flatMap(v => { const peaks = Rolling.peaksOf(facts, v); return v.levels.flatMap((l, i) => { const own = Rolling.ratingOf(facts, v, peaks, i).factors.flat(2), table = Rolling.tableOf(facts, v, i).factors.flat(2); return own.map((o, k) => [o.factor, o.why, table[k].factor, table[k].why]); }); }); }");
        int compared = 0;
        foreach (JsonElement pair in all.EnumerateArray())
        {
            string why = pair[1].GetString()!;
            if (why == "not available here")
            {
                continue;
            }

            Assert.True(pair[0].ValueKind == pair[2].ValueKind, pair.GetRawText());
            if (pair[0].ValueKind == JsonValueKind.Number)
            {
                Assert.Equal(pair[2].GetDouble(), pair[0].GetDouble(), 1e-9 * Math.Max(1, pair[2].GetDouble()));
                compared++;
            }
        }

        Assert.True(compared > 0 || sample is "hollis-fork" or "wrenfield-ferry" or "mossback-lane", $"{compared} factors were compared");
    }

    // Typed by hand: the axles of Type 3 into SU4's table, and back.
    [Fact]
    public async Task Editor_TypedToAnotherVehicle_ShowsItsFactor_AndTellsWhatItLeavesOut()
    {
        await using OpenPage open = await OpenAsync("garrow-landing");
        await open.Page.SelectOptionAsync("#living-vehicle", new SelectOptionValue { Label = "SU4" });
        await open.Page.GetByText("Change its axles").ClickAsync();
        await open.Page.ClickAsync("#living-remove");
        foreach ((string field, string value) in ((string, string)[])[("Weight of axle 1, kip", "16"), ("Weight of axle 2, kip", "17"), ("Weight of axle 3, kip", "17"), ("Distance behind axle 1, ft", "15"), ("Distance behind axle 2, ft", "4")])
        {
            await open.Page.GetByLabel(field).FillAsync(value);
        }

        string verdict = await open.TextOf("#living-verdict");
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", Repository.Sample("garrow-landing"), "--format", "json").Output);
        double live = json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("vehicle").GetString() == "SU4" && r.GetProperty("part").GetString() == "truss member").First(r => r.GetProperty("liveFactor").ValueKind == JsonValueKind.Number).GetProperty("liveFactor").GetDouble();
        JsonElement type3 = json.RootElement.GetProperty("ratings").EnumerateArray().First(r => r.GetProperty("vehicle").GetString() == "Type 3" && r.GetProperty("part").GetString() == "truss member" && r.GetProperty("factor").ValueKind == JsonValueKind.Number);

        // The level's live factor is that of the vehicle it began as.
        double factor = type3.GetProperty("factor").GetDouble() * type3.GetProperty("liveFactor").GetDouble() / live;
        Assert.Contains($"SU4, edited, legal level: lowest factor of the truss members {Cut(factor)}, {type3.GetProperty("member").GetString()}", verdict, StringComparison.Ordinal);
        Assert.Contains("Not available here: ", verdict, StringComparison.Ordinal);
        Assert.Contains("floorbeams", verdict, StringComparison.Ordinal);

        await open.Page.GetByLabel("Weight of axle 2, kip").FillAsync("17 tons");
        Assert.Equal("Weight of axle 2, kip: write a weight above 0, such as 17 or 17.5.", await open.TextOf("#living-faults"));
        Assert.Equal(verdict, await open.TextOf("#living-verdict"));
        await open.Page.ClickAsync("#living-reset");
        Assert.DoesNotContain("edited", await open.TextOf("#living-verdict"), StringComparison.Ordinal);
        Assert.Empty(open.Said);
    }

    [Fact]
    public async Task Keyboard_AloneRollsAndChooses()
    {
        await using OpenPage open = await OpenAsync("hollis-fork");
        var seen = new List<string>();
        for (int i = 0; i < 60 && !seen.Contains("living-slider"); i++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            seen.Add(await open.Page.EvaluateAsync<string>("() => document.activeElement.id"));
        }

        Assert.Contains("living-vehicle", seen);
        Assert.Contains("living-member", seen);
        Assert.Equal("living-slider", seen[^1]);
        await open.Page.Keyboard.PressAsync("Home");
        await FrameAsync(open);
        Assert.Equal("0.00 ft", await open.TextOf("#living-at"));
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await FrameAsync(open);
        Assert.Equal("0.50 ft", await open.TextOf("#living-at"));
        await open.Page.Keyboard.PressAsync("PageUp");
        await FrameAsync(open);

        // EV3: 15 ft from the front axle to the next, panels of 16 ft.
        Assert.Equal("15.00 ft", await open.TextOf("#living-at"));
        Assert.StartsWith("front axle at 15.00 ft, ", await open.Page.GetAttributeAsync("#living-slider", "aria-valuetext"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public async Task Report_OnAPhone_NeedsNoSidewaysScroll(string sample)
    {
        await using OpenPage open = await OpenAsync(sample, 380, 800);
        await open.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        await AssertNoSidewaysScrollAsync(open);
        int low = await open.Page.EvaluateAsync<int>("() => Math.min(...[...document.querySelectorAll('.living button:not(.pick), .living select, summary, nav a')].filter(e => e.offsetParent !== null).map(e => Math.round(e.getBoundingClientRect().height)))");
        Assert.InRange(low, 44, 200);
    }

    [Theory]
    [InlineData("hollis-fork", ColorScheme.Light)]
    [InlineData("mossback-lane", ColorScheme.Dark)]
    public async Task Report_HasLabelsContrastAndOrder(string sample, ColorScheme scheme)
    {
        await using OpenPage open = await OpenAsync(sample, scheme: scheme);
        AxeResult found = await open.Page.RunAxe(new AxeRunOptions { RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21aa"] } });
        Assert.Equal("", string.Join("\n", found.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.InRange(found.Passes.Length, 10, 200);
    }

    [Fact]
    public async Task Report_Printed_HasEveryChapterAndNoControls()
    {
        await using OpenPage open = await OpenAsync("hollis-fork");
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.False(await open.Page.Locator("#living").IsVisibleAsync());
        Assert.True(await open.Page.Locator("#elevation svg").First.IsVisibleAsync());
        byte[] letter = await open.Page.PdfAsync(new PagePdfOptions { Format = "Letter" }), a4 = await open.Page.PdfAsync(new PagePdfOptions { Format = "A4" });
        Assert.All((byte[][])[letter, a4], pdf => Assert.InRange(pdf.Length, 50_000, 5_000_000));
    }

    // Names and notes that would be markup, or turn the writing round, are text: no element, no dialog, no word in the console.
    [Fact]
    public async Task Report_HostileNames_AreText()
    {
        const string Evil = "<img src=x onerror=alert(1)>'&\u202e";
        using var bridge = new BridgeOnDisk();
        bridge.Replace("bridge.toml", "name = \"", $"name = \"{Evil}</script><script>alert(2)</script>{new string('x', 10_000)}");
        foreach (string file in (ReadOnlySpan<string>)["joints.csv", "members.csv", "loads.csv"])
        {
            bridge.Write(file, File.ReadAllText(bridge.PathOf(file)).Replace("U1", Evil, StringComparison.Ordinal));
        }

        await using OpenPage open = await chromium.OpenAsync(chromium.ReportOf(bridge.Folder), 380, 800);
        await FrameAsync(open);
        Assert.Empty(open.Said);
        Assert.Equal(0, await open.Page.Locator("img").CountAsync());
        Assert.Equal(2, await open.Page.Locator("script").CountAsync());
        Assert.Contains("<img src=x onerror=alert(1)>'&", await open.Page.Locator("h1").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains("<img src=x", await open.Page.Locator("#living-member").InnerTextAsync(), StringComparison.Ordinal);
        await AssertNoSidewaysScrollAsync(open);
    }

    private static RatingMethod RateCommandMethod(BridgeReading reading) => reading.Bridge!.Rating.Method!;

    // Names what stands out, so that it can be mended.
    private static async Task AssertNoSidewaysScrollAsync(OpenPage open) => Assert.Equal("380: ", await open.Page.EvaluateAsync<string>(
        """
        () => {
          const out = [...document.querySelectorAll("body *")].filter(e => e.getBoundingClientRect().right > 381 && e.getBoundingClientRect().width > 0).filter(e => {
            for (let p = e.parentElement; p !== null; p = p.parentElement) {
              if (getComputedStyle(p).overflowX !== "visible") return false;
            }
            return true;
          });
          return `${document.documentElement.scrollWidth}: ${out.slice(0, 4).map(e => `${e.tagName} ${e.id} ${e.getAttribute("class") ?? ""} ${e.textContent.slice(0, 60)}`).join("; ")}`;
        }
        """));

    private static string Cut(double factor) => (Math.Floor(factor * 100) / 100).ToString("0.00", CultureInfo.InvariantCulture);

    private static async Task<string> PixelsAsync(OpenPage open) => await open.Page.EvaluateAsync<string>("() => document.querySelector('#living-elevation + canvas').toDataURL()");

    // The words follow the drawing within a tenth of a second.
    private static async Task FrameAsync(OpenPage open) => await open.Page.EvaluateAsync("() => new Promise(done => setTimeout(() => requestAnimationFrame(() => requestAnimationFrame(done)), 250))");

    private static void Compare(Peak? own, JsonElement peak, double weight)
    {
        if (own is null)
        {
            Assert.Equal(JsonValueKind.Null, peak.ValueKind);
            return;
        }

        Assert.Equal(own.Force, peak.GetProperty("force").GetDouble(), 1e-9 * weight);
    }

    private Task<OpenPage> OpenAsync(string sample, int width = 1200, int height = 900, ColorScheme scheme = ColorScheme.Light) =>
        chromium.OpenAsync(chromium.ReportOf(Repository.Sample(sample)), width, height, scheme);
}
