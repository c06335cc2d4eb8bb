namespace SpanRater.Reports;

/// <summary>Writes the field report as one HTML file that holds all it needs and fetches nothing.</summary>
public static class ReportFile
{
    /// <summary>The bytes of the file: UTF-8, the same for the same report in whatever culture.</summary>
    /// <param name="report">The report.</param>
    public static byte[] Html(FieldReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return HtmlFile.Page<ReportDocument>((nameof(ReportDocument.Report), report));
    }
}
