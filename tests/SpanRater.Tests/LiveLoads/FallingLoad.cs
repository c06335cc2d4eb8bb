namespace SpanRater.Tests.LiveLoads;

/// <summary>A lane load that falls with a power of the loaded length, made up for the tests.</summary>
internal sealed record FallingLoad(double OnOneMetre, double Power) : LoadIntensity
{
    public override string Name => "falling";

    public override string Source => "made up for the test";

    public override bool IsPerArea => false;

    public override double At(double loadedLength, double width) => OnOneMetre * Math.Pow(loadedLength, -Power);
}
