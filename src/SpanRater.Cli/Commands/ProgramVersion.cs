using System.Reflection;

namespace SpanRater.Cli.Commands;

/// <summary>The version of the program that a document names.</summary>
internal static class ProgramVersion
{
    /// <summary>The first letters of the commit that the program was built from; null where it was built outside of a repository.</summary>
    public static string? Commit { get; } = typeof(CommandLineProgram).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().FirstOrDefault(a => a.Key == "Commit")?.Value is { Length: >= 10 } commit ? commit[..10] : null;

    public static string Text { get; } = typeof(CommandLineProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
