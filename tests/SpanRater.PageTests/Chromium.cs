using Microsoft.Playwright;
using SpanRater.Tests.CommandLine;

namespace SpanRater.PageTests;

/// <summary>
/// One browser for all page tests, and the reports of the samples. Where no browser is found the tests say so and are skipped; the
/// check before a change lands lets none be skipped.
/// </summary>
public sealed class Chromium : IAsyncLifetime
{
    public const string None = "no Chromium was found: install the package chromium, or name its program in the variable CHROMIUM";

    // What a page may take to do what it is asked [ms].
    private const float Patience = 180_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}");

    public static string? Program { get; } = new[] { Environment.GetEnvironmentVariable("CHROMIUM") }
        .Concat((Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).SelectMany(p => new[] { "chromium", "chromium-browser", "google-chrome" }.Select(n => Path.Combine(p, n))))
        .FirstOrDefault(f => !string.IsNullOrEmpty(f) && File.Exists(f));

    public async ValueTask InitializeAsync()
    {
        Directory.CreateDirectory(Folder);
        if (Program is null)
        {
            return;
        }

        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Program, Args = ["--no-sandbox", "--disable-gpu"], Timeout = Patience });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    /// <summary>The report of a bridge folder, written once.</summary>
    public string ReportOf(string bridge)
    {
        string file = Path.Combine(Folder, $"{Path.GetFileName(bridge)}.html");
        if (!File.Exists(file))
        {
            Run run = Run.Of("report", bridge, "--out", file);
            Assert.True(File.Exists(file), run.Error);
        }

        return file;
    }

    /// <summary>A page without a network, and all that its console, its requests and its faults say.</summary>
    public async Task<OpenPage> OpenAsync(string file, int width = 1200, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        Assert.SkipWhen(browser is null, None);
        IBrowserContext context = await browser!.NewContextAsync(new BrowserNewContextOptions { Offline = true, ViewportSize = new ViewportSize { Width = width, Height = height }, ColorScheme = scheme });

        // Tests ask what is right, not how fast it comes: a machine with other work has its time.
        context.SetDefaultTimeout(Patience);
        IPage page = await context.NewPageAsync();
        var open = new OpenPage(context, page);
        page.Console += (_, message) => open.Said.Add(message.Text);
        page.PageError += (_, fault) => open.Said.Add(fault);
        page.Request += (_, request) => open.Asked.Add(request.Url);
        page.Dialog += async (_, dialog) =>
        {
            open.Said.Add($"dialog: {dialog.Message}");
            await dialog.DismissAsync();
        };
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        return open;
    }

    /// <summary>An empty page with the part of the script that knows no page.</summary>
    public async Task<OpenPage> BareAsync()
    {
        string file = Path.Combine(Folder, "bare.html");
        await File.WriteAllTextAsync(file, $"<!DOCTYPE html><title>bare</title><script>{Reports.PageScript.WithoutPage}</script>");
        return await OpenAsync(file);
    }
}

/// <summary>A page that is open.</summary>
public sealed class OpenPage(IBrowserContext context, IPage page) : IAsyncDisposable
{
    public IPage Page => page;

    public List<string> Said { get; } = [];

    public List<string> Asked { get; } = [];

    public async Task<string> TextOf(string selector) => await page.Locator(selector).InnerTextAsync();

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
