namespace SpanRater;

/// <summary>What a capacity given for a member is.</summary>
public enum CapacityMeaning
{
    /// <summary>A resistance with its resistance, condition and system factors in it.</summary>
    FactoredResistance,

    /// <summary>An allowable force: an allowable stress times an area.</summary>
    AllowableForce,
}
