namespace SpanRater.Pictures;

/// <summary>The words for the two signs of an effect.</summary>
/// <param name="Name">What the effect is called in a sentence: force in member U1U2.</param>
/// <param name="Positive">Word for its positive sign.</param>
/// <param name="Negative">Word for its negative sign.</param>
internal sealed record EffectWords(string Name, string Positive, string Negative)
{
    /// <summary>The words for an effect.</summary>
    /// <param name="effect">The effect.</param>
    public static EffectWords Of(InfluenceEffect effect) => effect switch
    {
        { Kind: EffectKind.Member } => new($"force in member {effect.Name}", "tension", "compression"),
        _ when effect.Name.EndsWith(" up", StringComparison.Ordinal) => new($"vertical reaction at {JointOf(effect)}", "upward", "downward"),
        _ => new($"horizontal reaction at {JointOf(effect)}", "to the right", "to the left"),
    };

    private static string JointOf(InfluenceEffect effect) => effect.Name[..effect.Name.LastIndexOf(' ')];
}
