namespace SpanRater;

/// <summary>What a capacity given for a member is.</summary>
public enum CapacityMeaning
{
    /// <summary>A resistance with its resistance, condition and system factors in it.</summary>
    FactoredResistance,

    /// <summary>A design resistance with its partial factors in it.</summary>
    DesignResistance,

    /// <summary>An allowable force: an allowable stress times an area.</summary>
    AllowableForce,
}
