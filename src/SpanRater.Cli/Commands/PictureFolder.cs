using SpanRater.Files;
using SpanRater.Pictures;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary>A folder that takes the pictures of the steps. It is made where it is not there; a picture of the same name is replaced whole, other files stay.</summary>
internal sealed class PictureFolder
{
    private readonly string path;
    private readonly string? outFile;

    public PictureFolder(string path, string? outFile)
    {
        this.path = path;
        this.outFile = outFile;
        if (File.Exists(path))
        {
            throw new RefusedException($"--pictures \"{path}\": is a file: choose a folder.");
        }

        if (File.Exists(Path.Combine(path, BridgeFolder.BridgeFile)))
        {
            throw new RefusedException($"--pictures \"{path}\": is a bridge folder: choose a folder of its own for the pictures.");
        }
    }

    /// <summary>Draws every step into the folder.</summary>
    public void Draw(string bridge, WorkedSolution worked, LoadAsked asked, DisplayUnits units)
    {
        ForceNotation notation = asked.Notation(worked, units);
        try
        {
            Directory.CreateDirectory(path);
            for (int s = 0; s < worked.Steps.Count; s++)
            {
                Picture picture = FreeBodyPicture.OfStep($"{bridge}, {asked.Title}: {WorkedSolutionPage.TitleOf(worked, s)}", worked, s, notation);
                PictureFile.Save(picture, FileOf(worked, s));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new RefusedException($"--pictures \"{path}\": cannot be written: {e.Message.TrimEnd('.')}.");
        }
    }

    /// <summary>A picture's file as a reader of the page finds it: from the page's own folder, where the page goes into a file.</summary>
    public string ShownNameOf(WorkedSolution worked, int step)
    {
        string file = FileOf(worked, step);
        string shown = outFile is null ? file : Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(outFile))!, Path.GetFullPath(file));
        return shown.Replace('\\', '/');
    }

    private string FileOf(WorkedSolution worked, int step) => Path.Combine(path, WorkedSolutionPage.PictureNameOf(worked, step));
}
