namespace SpanRater.Pictures;

/// <summary>What a colour stands for. A pen gives each its colour; no ink is told from another by colour alone.</summary>
public enum Ink
{
    /// <summary>Members, names and numbers.</summary>
    Black,

    /// <summary>What stands behind: dimensions, guides, remarks.</summary>
    Grey,

    /// <summary>The deck and members that are not spoken of.</summary>
    Pale,

    /// <summary>Tension, and reactions that are positive.</summary>
    Tension,

    /// <summary>Fill of tension.</summary>
    TensionTint,

    /// <summary>Compression, and reactions that are negative.</summary>
    Compression,

    /// <summary>Fill of compression.</summary>
    CompressionTint,

    /// <summary>What falls short.</summary>
    Alarm,

    /// <summary>The paper.</summary>
    Paper,
}

/// <summary>How a stroke is broken.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    Solid,

    /// <summary>Long dashes.</summary>
    Dashed,

    /// <summary>Dots.</summary>
    Dotted,

    /// <summary>A dash and a dot in turn.</summary>
    DashDot,
}

/// <summary>Shape of a mark.</summary>
public enum MarkShape
{
    /// <summary>A circle.</summary>
    Circle,

    /// <summary>A square.</summary>
    Square,

    /// <summary>A square on its corner.</summary>
    Diamond,
}

/// <summary>Which point of a text stands at its place; always halfway up the letters.</summary>
public enum TextAnchor
{
    /// <summary>Its left end.</summary>
    Left,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    Right,
}
