using System.Globalization;
using CsvHelper;

namespace SpanRater.Tests.Published;

/// <summary>The published tables that lie beside their tests, read from the assembly.</summary>
internal static class PublishedTable
{
    /// <summary>Every row of a table.</summary>
    /// <param name="path">Folder and file under <c>Published/</c>.</param>
    public static IReadOnlyList<PublishedRow> Read(string path)
    {
        Stream stream = typeof(PublishedTable).Assembly.GetManifestResourceStream("Published/" + path)
            ?? throw new ArgumentException($"There is no published table \"{path}\".", nameof(path));
        using var reader = new CsvReader(new StreamReader(stream), CultureInfo.InvariantCulture);
        reader.Read();
        reader.ReadHeader();
        string[] columns = reader.HeaderRecord!;
        var rows = new List<PublishedRow>();
        while (reader.Read())
        {
            rows.Add(new PublishedRow(columns.ToDictionary(c => c, c => reader.GetField(c) ?? "")));
        }

        return rows;
    }
}
