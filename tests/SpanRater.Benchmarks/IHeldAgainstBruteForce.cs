namespace SpanRater.Benchmarks;

/// <summary>Benchmarks of an exact search beside a brute-force baseline, whose answers can be compared.</summary>
internal interface IHeldAgainstBruteForce
{
    /// <summary>Prepares what neither method is charged for.</summary>
    void SetUp();

    /// <summary>The first disagreement beyond what the baseline's step explains, or null.</summary>
    string? Disagreement();
}
