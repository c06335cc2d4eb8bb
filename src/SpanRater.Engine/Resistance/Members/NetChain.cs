namespace SpanRater;

/// <summary>The part of a net section that works.</summary>
public static class NetChain
{
    /// <summary>Part U of a net section that works, 1 − x/L [-]. Source: AASHTO LRFD Table 6.8.2.2-1, from memory.</summary>
    /// <param name="eccentricity">Distance x of the centroid from the connected face [m].</param>
    /// <param name="connectionLength">Length L of the connection along the force, more than x [m].</param>
    public static double ShearLag(double eccentricity, double connectionLength)
    {
        Checked.NotNegative(eccentricity, nameof(eccentricity));
        if (!(connectionLength > eccentricity && double.IsFinite(connectionLength)))
        {
            throw new ArgumentOutOfRangeException(nameof(connectionLength), connectionLength, "A connection is longer than its eccentricity.");
        }

        return 1 - (eccentricity / connectionLength);
    }

    /// <summary>Part U by the case of the connection, in place of 1 − x/L [-]. Source: AASHTO LRFD Table 6.8.2.2-1, from memory.</summary>
    /// <param name="connected">The case.</param>
    public static double ShearLag(ConnectedParts connected) => connected switch
    {
        ConnectedParts.All => 1.00,
        ConnectedParts.WideFlanges => 0.90,
        ConnectedParts.NarrowFlanges => 0.85,
        ConnectedParts.WebOnly => 0.70,
        ConnectedParts.AngleWithFourInLine => 0.80,
        _ => 0.60,
    };
}

/// <summary>Which parts of a section its connection takes hold of.</summary>
public enum ConnectedParts
{
    /// <summary>All of them.</summary>
    All,

    /// <summary>The flanges of an I-shape, two thirds of its depth wide or wider, with three or more fasteners in line.</summary>
    WideFlanges,

    /// <summary>Narrower flanges, with three or more fasteners in line.</summary>
    NarrowFlanges,

    /// <summary>The web of an I-shape, with four or more fasteners in line.</summary>
    WebOnly,

    /// <summary>One leg of a single angle, with four or more fasteners in line.</summary>
    AngleWithFourInLine,

    /// <summary>One leg of a single angle, with two or three fasteners in line.</summary>
    AngleWithFewInLine,
}
