namespace SpanRater;

/// <summary>What every formula asks of the numbers that go in.</summary>
internal static class Checked
{
    public static void Positive(double value, string name)
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be positive and finite.");
        }
    }

    public static void NotNegative(double value, string name)
    {
        if (!(value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be finite and not negative.");
        }
    }

    public static void Part(double value, string name)
    {
        if (!(value > 0 && value <= 1))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be above 0 and at most 1.");
        }
    }
}
