namespace SpanRater.Files;

/// <summary>Tells files from pipes and devices, which may never end, or never begin.</summary>
public static class OrdinaryFile
{
    /// <summary>Whether a path leads to a file.</summary>
    /// <param name="path">The path.</param>
    /// <exception cref="IOException">It cannot be opened.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be opened.</exception>
    public static bool Is(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return new FileInfo(path).Length > 0 || OpensAsFile(path);
    }

    // What has no length is empty, or no file: a pipe that no one writes to would never open, so it is opened aside, on a thread of its own lest it wait for one.
    private static bool OpensAsFile(string path)
    {
        Task<bool> opening = Task.Factory.StartNew(
            () =>
            {
                using FileStream stream = File.OpenRead(path);
                return stream.CanSeek;
            },
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default);
        try
        {
            return opening.Wait(InputLimits.LongestOpening) && opening.Result;
        }
        catch (AggregateException e) when (e.InnerException is IOException or UnauthorizedAccessException)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(e.InnerException);
            throw;
        }
    }
}
