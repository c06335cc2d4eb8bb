using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace SpanRater.Reports;

/// <summary>Writes the field report as one HTML file that holds all it needs and fetches nothing.</summary>
public static class ReportFile
{
    /// <summary>The bytes of the file: UTF-8, the same for the same report in whatever culture.</summary>
    /// <param name="report">The report.</param>
    public static byte[] Html(FieldReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            return Encoding.UTF8.GetBytes(Rendered(report).GetAwaiter().GetResult());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static async Task<string> Rendered(FieldReport report)
    {
        using ServiceProvider services = new ServiceCollection().AddSingleton<ILoggerFactory>(NullLoggerFactory.Instance).BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var parameters = ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(ReportDocument.Report)] = report, [nameof(ReportDocument.Style)] = Resource("report.css") + Resource("living.css") });
            return "<!DOCTYPE html>\n" + (await renderer.RenderComponentAsync<ReportDocument>(parameters)).ToHtmlString().ReplaceLineEndings("\n");
        });
    }

    internal static string Resource(string name)
    {
        using Stream stream = typeof(ReportFile).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
