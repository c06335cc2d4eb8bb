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
        using CsvReader reader = CsvReader.Create(stream, new CsvReaderOptions { HasHeader = false }, leaveOpen: true);
        var rows = new List<PublishedRow>();
        string[] columns = [];
        while (reader.Read())
        {
            string[] cells = [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)];
            if (columns.Length == 0)
            {
                columns = cells;
                continue;
            }

            Assert.Equal(columns.Length, cells.Length);
            rows.Add(new PublishedRow(columns.Zip(cells).ToDictionary(c => c.First, c => c.Second)));
        }

        return rows;
    }
}
