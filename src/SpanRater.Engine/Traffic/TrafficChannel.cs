namespace SpanRater;

/// <summary>What is counted of a line at each crossing.</summary>
public enum CrossingValue
{
    /// <summary>The greatest effect, not negative.</summary>
    Greatest,

    /// <summary>The least effect, its sign turned, so not negative.</summary>
    Least,

    /// <summary>Greatest less least.</summary>
    Range,
}

/// <summary>One value that is counted at each crossing: of the whole truck on one line, without share or impact.</summary>
/// <param name="Line">Place of the line among those of the plan.</param>
/// <param name="Value">What is counted of it.</param>
/// <param name="BinWidth">Width of a bin of its histogram: what <see cref="BinWeight"/> brings on the largest ordinate [N or N·m].</param>
public sealed record TrafficChannel(int Line, CrossingValue Value, double BinWidth)
{
    /// <summary>Gross weight that a bin stands for, 1 kip [N]: no effect has more bins than the truck weighs kips.</summary>
    public const double BinWeight = 4448.2216152605;
}
