using System.Reflection;
using System.Security.Cryptography;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The version of the program that a document names.</summary>
internal static class ProgramVersion
{
    public static string Text { get; } = typeof(CommandLineProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    /// <summary>What tells this build from another of the same version: what one of them found is not taken for what the other would find.</summary>
    public static string Build { get; } = Convert.ToHexStringLower(SHA256.HashData(
        [.. ((Type[])[typeof(Bridge), typeof(BridgeFolder), typeof(CommandLineProgram)]).SelectMany(t => t.Module.ModuleVersionId.ToByteArray())]))[..16];
}
