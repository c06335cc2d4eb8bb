using System.Reflection;
using System.Security.Cryptography;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The version of the program, and the commit that it was built from.</summary>
internal static class ProgramVersion
{
    private static readonly Assembly Program = typeof(CommandLineProgram).Assembly;

    /// <summary>The version, as documents name it.</summary>
    public static string Text { get; } = Program.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    /// <summary>The commit it was built from; null where it was built outside a repository.</summary>
    public static string? Commit { get; } = Program.GetCustomAttributes<AssemblyMetadataAttribute>().FirstOrDefault(a => a.Key == nameof(Commit))?.Value;

    /// <summary>Version and commit in one line.</summary>
    public static string Whole { get; } = $"spanrater {Text}, {(Commit is null ? "of no known commit" : $"commit {Commit}")}";

    /// <summary>What tells this build from another of the same version: what one of them found is not taken for what the other would find.</summary>
    public static string Build { get; } = Convert.ToHexStringLower(SHA256.HashData(
        [.. ((Type[])[typeof(Bridge), typeof(BridgeFolder), typeof(CommandLineProgram)]).SelectMany(t => t.Module.ModuleVersionId.ToByteArray())]))[..16];
}
