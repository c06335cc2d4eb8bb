using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using SpanRater.Tests.CommandLine;

namespace SpanRater.PageTests;

/// <summary>
/// Measures, and asserts nothing: from an event of the slider to the frame that shows it, of a truss of 61 members with the processor slowed four times. It is
/// no test of the suite: it is built with -p:Measure=true, and what it wrote stands in docs/performance.md.
/// </summary>
public sealed class RollingSpeed(Chromium chromium) : IClassFixture<Chromium>
{
    private const int Frames = 200;

    [Fact]
    public async Task Slider_EventToFrame_OfSixtyMembers()
    {
        string folder = Path.Combine(chromium.Folder, "sixty");
        Run made = Run.Of("new", folder, "--form", "pratt", "--span", "256 ft", "--panels", "16", "--height", "28 ft", "--dead", "0.6 klf");
        Assert.Equal("", made.Error);
        string toml = Path.Combine(folder, "bridge.toml");
        await File.WriteAllTextAsync(toml, (await File.ReadAllTextAsync(toml, TestContext.Current.CancellationToken))
            .Replace("# truss_spacing = \"… ft\"", "truss_spacing = \"18 ft\"", StringComparison.Ordinal)
            .Replace("# roadway = \"… ft\"", "roadway = \"16 ft\"", StringComparison.Ordinal)
            .Replace("# method = \"…\"", "method = \"LRFR\"", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        await using OpenPage open = await chromium.OpenAsync(chromium.ReportOf(folder));
        int members = await open.Page.Locator("#living-members tr").CountAsync();
        ICDPSession session = await open.Page.Context.NewCDPSessionAsync(open.Page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = 4 });
        JsonElement times = await open.Page.EvaluateAsync<JsonElement>(
            """
            async frames => {
              const slider = document.getElementById("living-slider");
              const parts = [[], [], [], []];
              for (let i = 0; i < frames; i++) {
                await new Promise(requestAnimationFrame);
                slider.value = String((Number(slider.max) * (i + 0.5)) / frames);
                const event = performance.now();
                slider.dispatchEvent(new Event("input"));
                const handled = performance.now() - event;
                await new Promise(done => requestAnimationFrame(() => {
                  const drawn = performance.now();
                  const drawing = drawn - Number(document.timeline.currentTime);
                  document.body.getBoundingClientRect();
                  const laidOut = performance.now() - drawn;
                  const channel = new MessageChannel();
                  channel.port1.onmessage = () => {
                    const painted = performance.now() - drawn - laidOut;
                    [handled, drawing, laidOut, painted].forEach((t, k) => parts[k].push(t));
                    done();
                  };
                  channel.port2.postMessage(0);
                }));
              }
              return [...parts, parts[0].map((_, i) => parts.reduce((sum, p) => sum + p[i], 0))].map(p => p.sort((a, b) => a - b));
            }
            """, Frames);
        foreach ((string what, JsonElement sorted) in ((string[])["handling the event", "drawing", "layout", "painting", "in all"]).Zip(times.EnumerateArray()))
        {
            double At(int place) => sorted[place].GetDouble();
            TestContext.Current.TestOutputHelper!.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{members} members, {Frames} events, processor slowed 4 times, {what}: median {At(Frames / 2):0.0} ms, 95 of 100 within {At(Frames * 95 / 100):0.0} ms, longest {At(Frames - 1):0.0} ms"));
        }
    }
}
