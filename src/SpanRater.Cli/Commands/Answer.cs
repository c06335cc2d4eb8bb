using SpanRater.Cli.Terminal;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary>Delivers a result page: as text, Markdown, CSV or JSON, on the terminal or in a file, with its picture. All is made before any of it is written.</summary>
internal sealed record Answer(Surroundings Surroundings, string? Format, string? OutFile, string? PictureFile)
{
    /// <summary>The truss that is shown, where they differ; told on every page.</summary>
    public OneTruss? Truss { get; init; }

    /// <summary>Whether the page is written as HTML as well.</summary>
    public bool TakesHtml { get; init; }

    /// <summary>The format asked for, else that of the file's ending.</summary>
    public string Form => Format ?? FormatOf(OutFile);

    /// <param name="page">The page.</param>
    /// <param name="units">Units to show.</param>
    /// <param name="picture">Its picture; null for none.</param>
    /// <param name="html">The page as HTML; null where it has no such form.</param>
    public int Deliver(ResultPage page, DisplayUnits units, Func<Picture>? picture = null, Func<byte[]>? html = null)
    {
        page = Truss?.On(page) ?? page;
        byte[] bytes = Form switch
        {
            "csv" => ResultFormats.Csv(page, units),
            "json" => ResultFormats.Json(page),
            "markdown" => MarkdownFormat.Write(page, units),
            "html" when html is not null => html(),
            _ when OutFile is null => TextPage.Write(page, units, Surroundings.TerminalWidth, Surroundings.Colour),
            _ => TextPage.Write(page, units, null, colour: false),
        };
        Surroundings.Stop.ThrowIfCancellationRequested();
        byte[]? drawn = PictureFile is null || picture is null ? null : Pictures.PictureFile.Bytes(picture(), PictureFile);
        Surroundings.Stop.ThrowIfCancellationRequested();
        if (drawn is not null)
        {
            WriteFile(PictureFile!, drawn);
        }

        if (OutFile is null)
        {
            Surroundings.Print(bytes);
        }
        else
        {
            WriteFile(OutFile, bytes);
        }

        if (PictureFile is not null && drawn is null)
        {
            Surroundings.Error.WriteLine($"{PictureFile}: not drawn, since there is no answer to draw.");
        }

        return page.UndercutsLimit ? ExitStatus.LimitUndercut : page.IsAnswer ? ExitStatus.Done : ExitStatus.NoAnswer;
    }

    /// <summary>Writes a document that has no other form, and tells what stands on it first.</summary>
    public int Deliver(byte[] document, string told, bool isAnswer, bool undercutsLimit)
    {
        Surroundings.Stop.ThrowIfCancellationRequested();
        WriteFile(OutFile!, document);
        return Tell(told, isAnswer, undercutsLimit);
    }

    /// <summary>Writes a folder of documents, and tells what stands on them first.</summary>
    public int Deliver(IReadOnlyList<NewFile> files, string told, bool isAnswer, bool undercutsLimit)
    {
        Surroundings.Stop.ThrowIfCancellationRequested();
        NewCommand.WriteFolder(OutFile!, files);
        return Tell(told, isAnswer, undercutsLimit);
    }

    /// <summary>Refuses a file that would replace an input or lock a bridge folder, and an ending that promises what is not written.</summary>
    public void CheckFiles(IReadOnlyList<string> inputs)
    {
        foreach ((string option, string? file) in ((string, string?)[])[("--out", OutFile), ("--picture", PictureFile)])
        {
            if (file is null)
            {
                continue;
            }

            string full = Path.GetFullPath(file);
            if (inputs.Any(i => Path.GetFullPath(i) == full))
            {
                throw new RefusedException($"{option} \"{file}\": is one of the files that are read: choose another name.");
            }

            string ending = Path.GetExtension(full).ToUpperInvariant();
            if (ending is ".CSV" or ".TOML" && File.Exists(Path.Combine(Path.GetDirectoryName(full)!, BridgeFolder.BridgeFile)))
            {
                throw new RefusedException($"{option} \"{file}\": stands in a bridge folder, where every .csv and .toml is read as input: choose another folder.");
            }
        }

        if (PictureFile is not null && !Pictures.PictureFile.IsSupported(PictureFile))
        {
            throw new RefusedException($"--picture \"{PictureFile}\": must end in .png or .svg, the two kinds of picture there are.");
        }

        if (Format == "folder" && NewFolder.WhyNot(OutFile ?? "") is { } why)
        {
            throw new RefusedException($"--out \"{OutFile}\": {why}");
        }

        if (Format == "html" && !TakesHtml && Path.GetExtension(OutFile ?? "").ToUpperInvariant() is not (".HTML" or ".HTM"))
        {
            throw new RefusedException($"--out \"{OutFile}\": the report is a page for a browser: end its name in .html.");
        }

        string named = Path.GetExtension(OutFile ?? "").ToUpperInvariant();
        if (Format is null && named is not ("" or ".TXT" or ".MD" or ".CSV" or ".JSON") && !(TakesHtml && named is (".HTML" or ".HTM")))
        {
            throw new RefusedException($"--out \"{OutFile}\": its ending names no format that is written: end it in .txt, .md, .csv{(TakesHtml ? ", .json or .html" : " or .json")}, or say --format.");
        }
    }

    private int Tell(string told, bool isAnswer, bool undercutsLimit)
    {
        Surroundings.Print(System.Text.Encoding.UTF8.GetBytes($"{told}\n"));
        return undercutsLimit ? ExitStatus.LimitUndercut : isAnswer ? ExitStatus.Done : ExitStatus.NoAnswer;
    }

    private static string FormatOf(string? file) => Path.GetExtension(file ?? "").ToUpperInvariant() switch
    {
        ".CSV" => "csv",
        ".JSON" => "json",
        ".MD" => "markdown",
        ".HTML" or ".HTM" => "html",
        _ => "text",
    };

    private static void WriteFile(string path, byte[] bytes)
    {
        try
        {
            WholeFile.Write(path, bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = e switch
            {
                DirectoryNotFoundException => "its folder is not there",
                UnauthorizedAccessException => "access is denied",
                _ => e.Message.TrimEnd('.'),
            };
            throw new RefusedException($"{path}: cannot be written: {why}.");
        }
    }
}
