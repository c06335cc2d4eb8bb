namespace SpanRater;

/// <summary>What a member is for, as the limits of slenderness ask.</summary>
public enum MemberDuty
{
    /// <summary>Compression in a main member.</summary>
    MainCompression,

    /// <summary>Compression in a secondary member.</summary>
    SecondaryCompression,

    /// <summary>Tension in a main member whose force reverses.</summary>
    MainTensionWithReversal,

    /// <summary>Tension in a main member.</summary>
    MainTension,

    /// <summary>Tension in a secondary member.</summary>
    SecondaryTension,
}

/// <summary>A member more slender than a standard allows: a warning, no loss of strength. Eyebars, rods and cables are not asked. Source: AASHTO LRFD 6.8.4 and 6.9.3, from memory.</summary>
/// <param name="Duty">What it is for.</param>
/// <param name="Slenderness">Its slenderness, KL/r in compression and L/r in tension [-].</param>
/// <param name="Limit">The limit [-].</param>
public sealed record SlendernessWarning(MemberDuty Duty, double Slenderness, double Limit)
{
    /// <summary>The limit for a duty [-].</summary>
    /// <param name="duty">The duty.</param>
    public static double LimitOf(MemberDuty duty) => duty switch
    {
        MemberDuty.MainCompression => 120,
        MemberDuty.SecondaryCompression or MemberDuty.MainTensionWithReversal => 140,
        MemberDuty.MainTension => 200,
        _ => 240,
    };

    /// <summary>The warning, or null where the limit is kept.</summary>
    /// <param name="duty">The duty.</param>
    /// <param name="slenderness">KL/r in compression, L/r in tension [-].</param>
    public static SlendernessWarning? Of(MemberDuty duty, double slenderness)
    {
        Checked.NotNegative(slenderness, nameof(slenderness));
        return slenderness > LimitOf(duty) ? new SlendernessWarning(duty, slenderness, LimitOf(duty)) : null;
    }
}
