namespace SpanRater;

/// <summary>How the panel at midspan is braced where the number of panels is odd.</summary>
public enum CentrePanel
{
    /// <summary>One diagonal, from the top at the left to the bottom at the right, that takes both senses.</summary>
    OneDiagonal,

    /// <summary>Two crossed rods that only pull; the truss is redundant until it is known which of them acts.</summary>
    CrossedRods,

    /// <summary>Nothing: the truss is a mechanism, held up in practice by the stiffness of its chords.</summary>
    Open,
}
