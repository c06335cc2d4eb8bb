namespace SpanRater;

/// <summary>The two kinds of dead load, which take factors of their own.</summary>
public enum DeadCase
{
    /// <summary>DC: components, that is steel, deck, kerbs and rails.</summary>
    Components,

    /// <summary>DW: wearing surface and utilities.</summary>
    WearingSurface,
}
