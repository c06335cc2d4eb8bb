using CsvHelper;

namespace SpanRater.Tests.Published;

/// <summary>The published tables that lie beside their tests, read from the assembly.</summary>
internal static class PublishedTable
{
    /// <summary>Every row of a table.</summary>
    /// <param name="path">Folder and file under <c>Published/</c>.</param>
    public static IReadOnlyList<PublishedRow> Read(string path)
    {
        using Stream stream = typeof(PublishedTable).Assembly.GetManifestResourceStream("Published/" + path)
            ?? throw new ArgumentException($"There is no published table \"{path}\".", nameof(path));
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        using CsvReader reader = CsvReader.Create(bytes.ToArray(), new CsvReaderOptions { Separator = ',', HasHeader = false });
        string[] columns = reader.Read() ? CellsOf(reader) : [];
        var rows = new List<PublishedRow>();
        while (reader.Read())
        {
            // A row with a cell too many or too few would put values under the wrong heading.
            string[] cells = CellsOf(reader);
            Assert.Equal(columns.Length, cells.Length);
            rows.Add(new PublishedRow(columns.Zip(cells).ToDictionary(c => c.First, c => c.Second)));
        }

        return rows;
    }

    private static string[] CellsOf(CsvReader reader) => [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)];
}
