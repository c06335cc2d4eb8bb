namespace SpanRater.Tests.Published.RedundantTrusses;

/// <summary>
/// Two like bars of length L that hang from two pins at an angle α to the level and carry P where they meet: each is pulled by
/// P/(2 sin α), and the joint goes down by P L/(2 E A sin²α). Source: S. Timoshenko, Strength of Materials, part I, from memory. A
/// mass m there swings up and down at √(k/m)/2π with k = 2 E A sin²α/L, as in any text on vibrations.
/// </summary>
public class TwoBarsTests
{
    private const double Length = 5, Area = 4e-4, Modulus = 2e11, Load = 3e4;

    [Theory]
    [InlineData(20)]
    [InlineData(45)]
    [InlineData(70)]
    public void Under_ALoadWhereTheyMeet_IsTheClosedForm(double degrees)
    {
        double sine = Math.Sin(degrees * Math.PI / 180), deflection = Load * Length / (2 * Modulus * Area * sine * sine);

        Assert.True(Deflections.Under(TwoBars(degrees), new LoadCase("load", [new JointLoad("C", 0, -Load)])).TryGet(out Deflections? found, out Refusal? refusal), $"{refusal}");

        Assert.Equal(deflection, Assert.Single(found.Downward), 1e-9 * deflection);
        Assert.All(found.Forces.MemberForces, force => Assert.Equal(Load / (2 * sine), force, 1e-9 * Load));
    }

    [Theory]
    [InlineData(20)]
    [InlineData(45)]
    [InlineData(70)]
    public void Of_TheDeadLoadWhereTheyMeet_IsTheClosedForm(double degrees)
    {
        double sine = Math.Sin(degrees * Math.PI / 180), stiffness = 2 * Modulus * Area * sine * sine / Length, mass = Load / VerticalFrequency.Gravity;
        double frequency = Math.Sqrt(stiffness / mass) / (2 * Math.PI);

        Assert.True(VerticalFrequency.Of(TwoBars(degrees), new LoadCase("DC", [new JointLoad("C", 0, -Load)])).TryGet(out VerticalFrequency? found, out Refusal? refusal), $"{refusal}");

        Assert.Equal(frequency, found.Frequency, 1e-9 * frequency);
        Assert.Equal(mass, found.Mass, 1e-9 * mass);
        Assert.Equal(Load / stiffness, found.DeadDeflection, 1e-9 * Load / stiffness);
        Assert.Equal(0.18 * Math.Sqrt(VerticalFrequency.Gravity * stiffness / Load), found.SimpleFrequency, 1e-9 * found.SimpleFrequency);
    }

    private static Truss TwoBars(double degrees)
    {
        double x = Length * Math.Cos(degrees * Math.PI / 180), y = Length * Math.Sin(degrees * Math.PI / 180);
        return Truss.Create(
            [new Joint("A", -x, 0, Support.Pin), new Joint("B", x, 0, Support.Pin), new Joint("C", 0, -y, IsPanelPoint: true)],
            [new Member("AC", "A", "C", Area: Area, Modulus: Modulus), new Member("BC", "B", "C", Area: Area, Modulus: Modulus)]).Truss!;
    }
}
