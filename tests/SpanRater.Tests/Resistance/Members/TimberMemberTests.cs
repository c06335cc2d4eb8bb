namespace SpanRater.Tests.Resistance.Members;

/// <summary>Timber members worked by hand; clauses in docs/basis.md, from memory.</summary>
public class TimberMemberTests
{
    private const double Psi = PublishedStrength.PoundPerSquareInch, Inch = 0.0254;

    private static readonly TimberDesignValues Post = TimberDesignValues.Find("Douglas Fir-Larch", TimberSizeClass.PostsAndTimbers, "No.1")!;

    // 8 by 8 in, No.1, wet: Fc* = 1000 × 0.91 × 1.15; FcE = 0.822 × 580,000/15².
    [Fact]
    public void Compression_OfAPost_IsThatByHand()
    {
        TimberDesign design = TimberDesign.Allowable(Of(Post, isWet: true), 8 * Inch, 8 * Inch, AllowableLevel.Inventory);
        TimberStrength column = TimberMember.Compression(design, 8 * Inch, 8 * Inch, 120 * Inch, 120 * Inch);

        double along = 1000 * 0.91 * 1.15, euler = 0.822 * 580_000 / (15.0 * 15), f = euler / along;
        double cp = ((1 + f) / 1.6) - Math.Sqrt(Math.Pow((1 + f) / 1.6, 2) - (f / 0.8));
        Assert.Equal(along, design.Compression.Value / Psi, 1e-6);
        Assert.Equal(cp, column.StabilityFactor, 1e-12);
        Assert.Equal(along * cp * 64, column.Value / (Psi * Inch * Inch), 1e-6);
        Assert.Equal(15, column.Slenderness, 1e-9);

        TimberStrength operating = TimberMember.Compression(TimberDesign.Allowable(Of(Post, isWet: true), 8 * Inch, 8 * Inch, AllowableLevel.Operating), 8 * Inch, 8 * Inch, 120 * Inch, 120 * Inch);
        Assert.Equal(1.33 * column.Value, operating.Value, 1e-6);
    }

    // By LRFR φ CKF = 2.5, times Cλ 0.8.
    [Fact]
    public void Tension_ByLrfr_IsTwiceTheReference()
    {
        TimberDesign design = TimberDesign.LoadAndResistance(Of(Post, isWet: true), 8 * Inch, 8 * Inch, isPermit: false);
        Assert.Equal(2.5 * 0.8 * 825 * 50, TimberMember.Tension(design, 50 * Inch * Inch).Value / (Psi * Inch * Inch), 1e-6);
        TimberDesign permit = TimberDesign.LoadAndResistance(Of(Post, isWet: true), 8 * Inch, 8 * Inch, isPermit: true);
        Assert.Equal(2.5 * 825 * 50, TimberMember.Tension(permit, 50 * Inch * Inch).Value / (Psi * Inch * Inch), 1e-6);
        Assert.Equal(1.76 * 0.85 * 580_000, permit.LeastModulus.Value / Psi, 1e-6);
    }

    [Fact]
    public void Combined_NoEccentricity_IsThePlainStrengthToTheLastDigit()
    {
        foreach (TimberDesign design in Designs())
        {
            TimberStrength pressed = TimberMember.Compression(design, 8 * Inch, 8 * Inch, 120 * Inch, 120 * Inch), pulled = TimberMember.Tension(design, 50 * Inch * Inch);
            Assert.Equal(pressed.Value, TimberMember.CompressionAndMoment(pressed, design, 8 * Inch, 8 * Inch, 120 * Inch, 1, 0).Value);
            Assert.Equal(pulled.Value, TimberMember.TensionAndMoment(pulled, design, 8 * Inch, 8 * Inch, 1, 0).Value);
        }
    }

    [Fact]
    public void Combined_AtItsForce_TheInteractionIsOne()
    {
        foreach (TimberDesign design in Designs())
        {
            TimberStrength plain = TimberMember.Compression(design, 8 * Inch, 8 * Inch, 120 * Inch, 120 * Inch);
            double last = plain.Value;
            foreach (double e in (double[])[0.001, 0.01, 0.05, 0.2])
            {
                CombinedStrength both = TimberMember.CompressionAndMoment(plain, design, 8 * Inch, 8 * Inch, 120 * Inch, 1, e);
                double level = both.Value / both.Force, axial = both.Force / (plain.Value / level);
                Assert.Equal(1, (axial * axial) + (both.Force * e / (both.MomentStrength * (1 - (both.Force / both.ElasticForce!.Value)))), 1e-9);
                Assert.True(both.Value < last);
                last = both.Value;
            }
        }
    }

    // A force far outside presses the other side harder than it pulls this one: fb − ft.
    [Fact]
    public void TensionAndMoment_LargeEccentricity_LooksAtThePressedSideToo()
    {
        TimberDesign design = Designs()[0];
        TimberStrength plain = TimberMember.Tension(design, 64 * Inch * Inch);
        double s = 512.0 / 6 * Math.Pow(Inch, 3), a = 64 * Inch * Inch, e = 0.5, fb = design.Bending.Value, ft = design.Tension.Value;
        double expected = Math.Min(1 / ((1 / (ft * a)) + (e / (fb * s))), 0.5 * fb / ((e / s) - (1 / a)));
        Assert.Equal(expected, TimberMember.TensionAndMoment(plain, design, 8 * Inch, 8 * Inch, 0.5, e).Value, 1e-6);
    }

    // Values of one's own are taken as they stand, but for the duration of the load.
    [Fact]
    public void Allowable_GivenValues_TakeNoFactorOfSizeOrService()
    {
        TimberDesignValues given = Post with { SizeClass = TimberSizeClass.Dimension };
        var timber = new TimberMaterial("t", given, new StrengthOrigin.Given("made up"), new TimberUse(true, LoadDuration.TwoMonths, true));
        TimberDesign design = TimberDesign.Allowable(timber, 2 * Inch, 14 * Inch, AllowableLevel.Inventory);
        Assert.Equal([given.Bending * 1.15, given.Compression * 1.15, given.LeastModulus], new[] { design.Bending.Value, design.Compression.Value, design.LeastModulus.Value });
    }

    [Theory]
    [InlineData(TimberSizeClass.PostsAndTimbers, 7.5, 7.5, true)]
    [InlineData(TimberSizeClass.PostsAndTimbers, 8, 10, true)]
    [InlineData(TimberSizeClass.PostsAndTimbers, 8, 12, false)]
    [InlineData(TimberSizeClass.BeamsAndStringers, 8, 12, true)]
    [InlineData(TimberSizeClass.BeamsAndStringers, 8, 10, false)]
    [InlineData(TimberSizeClass.BeamsAndStringers, 3, 12, false)]
    [InlineData(TimberSizeClass.Dimension, 3.5, 11.25, true)]
    [InlineData(TimberSizeClass.Dimension, 5.5, 11.5, false)]
    [InlineData(TimberSizeClass.Timbers, 5.5, 5.5, true)]
    [InlineData(TimberSizeClass.Timbers, 4, 6, false)]
    public void Holds_SizesOfASection_TellTheClass(TimberSizeClass sizeClass, double one, double other, bool holds)
    {
        Assert.Equal(holds, sizeClass.Holds(one * Inch, other * Inch));
        Assert.Equal(holds, sizeClass.Holds(other * Inch, one * Inch));
    }

    [Fact]
    public void Compression_AboveFifty_SaysThatItIsTooSlender() =>
        Assert.True(TimberMember.Compression(Designs()[0], 8 * Inch, 8 * Inch, 401 * Inch, 10 * Inch).IsTooSlender);

    private static TimberDesign[] Designs() =>
    [
        TimberDesign.Allowable(Of(Post, true), 8 * Inch, 8 * Inch, AllowableLevel.Inventory),
        TimberDesign.Allowable(Of(Post, false), 8 * Inch, 8 * Inch, AllowableLevel.Operating),
        TimberDesign.LoadAndResistance(Of(Post, true), 8 * Inch, 8 * Inch, isPermit: false),
    ];

    private static TimberMaterial Of(TimberDesignValues row, bool isWet) => new("post", row, new StrengthOrigin.ByGrade(row), new TimberUse(isWet, LoadDuration.TwoMonths));
}
