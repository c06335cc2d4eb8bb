namespace SpanRater.Cli;

/// <summary>Ends a command whose command line or input is refused; the messages have been collected.</summary>
internal sealed class RefusedException : Exception
{
    public RefusedException(params IEnumerable<string> messages)
        : base(string.Join('\n', messages))
    {
    }
}
