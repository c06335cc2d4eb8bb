namespace SpanRater;

/// <summary>What a deck is.</summary>
public enum DeckType
{
    /// <summary>Timber planks.</summary>
    Plank,

    /// <summary>Boards on edge, nailed or spiked together.</summary>
    NailLaminated,

    /// <summary>Panels of glued laminated timber.</summary>
    GluedLaminated,

    /// <summary>Concrete.</summary>
    Concrete,

    /// <summary>An open steel grid.</summary>
    SteelGrid,

    /// <summary>Corrugated steel planks.</summary>
    CorrugatedSteel,
}

/// <summary>What stringers are of, as the distribution of wheels asks.</summary>
public enum StringerMaterial
{
    /// <summary>Steel or iron.</summary>
    Steel,

    /// <summary>Sawn timber.</summary>
    Timber,

    /// <summary>Glued laminated timber.</summary>
    GluedLaminatedTimber,

    /// <summary>Concrete.</summary>
    Concrete,
}

/// <summary>The published tables of what one stringer takes.</summary>
public enum DistributionTable
{
    /// <summary>Wheel lines, S/D. Standard Specifications, Table 3.23.1.</summary>
    WheelLines,

    /// <summary>Lanes, presence in them. LRFD, Table 4.6.2.2.2a-1.</summary>
    Lanes,
}
