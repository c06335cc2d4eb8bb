namespace SpanRater.Tests.CommandLine;

/// <summary>Finds files of the repository that tests read.</summary>
public static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Sample(string name) => Path.Combine(Root, "samples", name);

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "SpanRater.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests run from within the repository.");
    }
}
