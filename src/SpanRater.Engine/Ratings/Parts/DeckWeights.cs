namespace SpanRater;

/// <summary>Dead load of the floor on its beams.</summary>
internal static class DeckWeights
{
    /// <summary>What is not known of the weight of the deck.</summary>
    public static IEnumerable<MissingDatum> Missing(Floor floor) => floor.Components is null || floor.WearingSurface is null
        ? [new MissingDatum.DeckWeight(floor.Components is null, floor.WearingSurface is null)]
        : [];

    /// <summary>Largest moment of a simple span under an even load over a part of it [N·m].</summary>
    /// <param name="load">Load per length [N/m].</param>
    /// <param name="from">Where it starts [m].</param>
    /// <param name="to">Where it ends [m].</param>
    /// <param name="span">The span [m].</param>
    public static double Moment(double load, double from, double to, double span)
    {
        // No shear where the reaction is used up: the moment is largest there.
        double left = load * (to - from) * (span - ((from + to) / 2)) / span;
        return load == 0 ? 0 : (left * from) + (left * left / (2 * load));
    }

    /// <summary>The larger reaction under the same [N].</summary>
    public static double Reaction(double load, double from, double to, double span)
    {
        double left = load * (to - from) * (span - ((from + to) / 2)) / span;
        return Math.Max(left, (load * (to - from)) - left);
    }
}
