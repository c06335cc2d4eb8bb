using System.Security.Cryptography;
using System.Text;

namespace SpanRater.Reports;

/// <summary>The page's script: its files joined in the order in which they use each other.</summary>
public static class PageScript
{
    private static readonly string[] Files = ["peaks.js", "rating.js", "rolling.js", "figures.js", "brush.js", "elevation.js", "line.js", "editor.js", "members.js", "start.js"];

    /// <summary>What stands within the element, in a wrapping that a reader of XML passes over.</summary>
    public static string Text { get; } = $"//<![CDATA[\n{string.Concat(Files.Select(HtmlFile.Resource))}//]]>";

    /// <summary>The part of the script that knows no page: the search for peaks, factor and posting.</summary>
    public static string WithoutPage { get; } = string.Concat(Files.Take(3).Select(HtmlFile.Resource));

    /// <summary>The source that the policy allows: the hash of the script.</summary>
    public static string Source { get; } = $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Text)))}'";
}
