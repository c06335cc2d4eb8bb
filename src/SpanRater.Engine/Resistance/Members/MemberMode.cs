namespace SpanRater;

/// <summary>The ways in which a member may fail.</summary>
public enum MemberMode
{
    /// <summary>Yield of the gross section.</summary>
    GrossYield,

    /// <summary>Rupture of the net section.</summary>
    NetRupture,

    /// <summary>Yield of the effective net section.</summary>
    NetYield,

    /// <summary>Yield of the body of eyebars.</summary>
    EyebarBody,

    /// <summary>The heads of eyebars through the pin hole.</summary>
    EyebarHead,

    /// <summary>Yield of a rod at the root of its thread.</summary>
    RodRoot,

    /// <summary>Buckling as a column.</summary>
    Buckling,

    /// <summary>Timber in tension along the grain.</summary>
    TimberTension,

    /// <summary>Timber in compression along the grain, buckling in it.</summary>
    TimberCompression,

    /// <summary>Tension with the moment of its eccentricity.</summary>
    TensionAndMoment,

    /// <summary>Compression with the moment of its eccentricity.</summary>
    CompressionAndMoment,
}
