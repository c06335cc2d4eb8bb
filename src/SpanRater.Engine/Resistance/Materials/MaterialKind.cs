namespace SpanRater;

/// <summary>What a material is.</summary>
public enum MaterialKind
{
    /// <summary>Structural steel.</summary>
    Steel,

    /// <summary>Wrought iron.</summary>
    WroughtIron,

    /// <summary>Steel of pins.</summary>
    Pin,

    /// <summary>Steel of rivets.</summary>
    Rivet,

    /// <summary>Sawn timber.</summary>
    Timber,
}
