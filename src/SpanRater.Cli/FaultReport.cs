using System.Diagnostics;
using System.Reflection;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;
using SpanRater.Cli.Commands;

namespace SpanRater.Cli;

/// <summary>
/// What is printed where the program itself is at fault: enough to find the fault by, and nothing of the user: no path, no name of theirs, only the methods of
/// the program that were at work.
/// </summary>
internal static partial class FaultReport
{
    /// <summary>Frames that are named, the innermost first.</summary>
    private const int MostFrames = 12;

    /// <summary>The report, several lines.</summary>
    /// <param name="fault">What was thrown and not expected.</param>
    public static string Of(Exception fault)
    {
        return $"""
            spanrater: a fault of the program itself, not of your input. No file is left half-written.
              what:    {WhatOf(fault)}
              where:   {string.Join(" < ", FramesOf(fault))}
              version: {ProgramVersion.Whole}, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.OSDescription} {RuntimeInformation.ProcessArchitecture}
            To report it, send these lines and the command you typed, with the bridge folder if you may share it, to whoever gave you the program. The lines hold no path and no name of yours.

            """.ReplaceLineEndings("\n");
    }

    /// <summary>A message without paths: of each, the last name is left.</summary>
    /// <param name="message">The message.</param>
    internal static string WithoutPaths(string message)
    {
        string text = string.Join(' ', message.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        return Paths().Replace(text, "…/$1");
    }

    private static string WhatOf(Exception fault) => fault.InnerException is { } inner && fault is TargetInvocationException or AggregateException or TypeInitializationException
        ? WhatOf(inner)
        : $"{fault.GetType().Name}: {WithoutPaths(fault.Message)}";

    private static string[] FramesOf(Exception fault)
    {
        IEnumerable<string> own = new StackTrace(fault.InnerException ?? fault, fNeedFileInfo: false).GetFrames()
            .Select(DiagnosticMethodInfo.Create).OfType<DiagnosticMethodInfo>()
            .Where(m => m.DeclaringTypeName?.StartsWith("SpanRater", StringComparison.Ordinal) is true).Select(NameOf);
        string[] frames = [.. own.Take(MostFrames)];
        return frames.Length > 0 ? frames : ["outside of the program's own methods"];
    }

    // Lambdas and local functions bear the name of the method they stand in between < and >, and stand in a type of their own within that of the method.
    private static string NameOf(DiagnosticMethodInfo method)
    {
        string type = method.DeclaringTypeName!.Split('+').TakeWhile(t => !t.StartsWith('<')).Last();
        int close = method.Name.StartsWith('<') ? method.Name.IndexOf('>', StringComparison.Ordinal) : -1;
        return $"{type[(type.LastIndexOf('.') + 1)..].Split('`')[0]}.{(close > 1 ? method.Name[1..close] : method.Name)}";
    }

    [GeneratedRegex(@"(?:(?<![\w.])[A-Za-z]:|(?<![\w./\\]))(?:[\\/]+[^\\/'""<>|:*?]+)*[\\/]+([^\\/'""<>|:*?\s]*)")]
    private static partial Regex Paths();
}
