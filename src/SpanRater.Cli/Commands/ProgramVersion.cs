using System.Reflection;

namespace SpanRater.Cli.Commands;

/// <summary>The version of the program that a document names.</summary>
internal static class ProgramVersion
{
    public static string Text { get; } = typeof(CommandLineProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
