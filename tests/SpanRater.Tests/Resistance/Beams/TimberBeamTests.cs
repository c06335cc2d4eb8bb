using CsCheck;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Resistance.Beams;

/// <summary>Timber beams worked by hand: National Design Specification (2018), 3.3.3, 3.4, 3.10 and App. D, and AASHTO LRFD 8.4.4 and 8.5.2.2, all from memory.</summary>
public class TimberBeamTests
{
    private static readonly TimberDesignValues Row = TimberDesignValues.Find("Douglas Fir-Larch", TimberSizeClass.BeamsAndStringers, "No.1")!;

    // 6 by 16 in: Fb 1,350, Fv 170, Fc⊥ 625, Emin 580,000 psi; wet, two months: CD 1.15, CF (12/16)^(1/9), CM 0.67 across.
    private static readonly TimberDesign Inventory = TimberDesign.Allowable(Timber(Row), 6 * Inch, 16 * Inch, AllowableLevel.Inventory), Operating = TimberDesign.Allowable(Timber(Row), 6 * Inch, 16 * Inch, AllowableLevel.Operating),
        Resistance = TimberDesign.LoadAndResistance(Timber(Row), 6 * Inch, 16 * Inch, isPermit: false), Permit = TimberDesign.LoadAndResistance(Timber(Row), 6 * Inch, 16 * Inch, isPermit: true);

    // lu 120 in: 7.5 d, le = 1.63 × 120 + 3 × 16 = 243.6, RB = √(243.6 × 16/36) = 10.405.
    [Fact]
    public void Bending_HeldAtPoints_IsThatByHand()
    {
        double slenderness = Math.Sqrt(243.6 * 16 / 36), plain = 1350 * 1.15 * Math.Pow(0.75, 1.0 / 9);
        double cl = ByHand(1.20 * 580_000 / (slenderness * slenderness) / plain);
        TimberBeamStrength beam = TimberBeam.Bending(Inventory, 6 * Inch, 16 * Inch, 120 * Inch);

        Assert.Equal(10.405, beam.Slenderness, 0.0005);
        Assert.Equal(0.9852, beam.Reduction, 0.00005);
        Assert.Equal(cl, beam.Reduction, 1e-12);
        Assert.Equal(plain * cl * 256, beam.Value / (Psi * Math.Pow(Inch, 3)), 1e-6);
        Assert.Equal(1.33 * beam.Value, TimberBeam.Bending(Operating, 6 * Inch, 16 * Inch, 120 * Inch).Value, 1e-6);
        Assert.Contains(BeamClauses.TimberStability, beam.Clauses);
    }

    // By LRFR Fb* is φ CKF Cλ Fb = 2.5 × 0.8 Fb, and Emin' = 1.76 × 0.85 Emin.
    [Fact]
    public void Bending_ByLrfr_IsThatByHand()
    {
        double plain = 2.5 * 0.8 * 1350 * Math.Pow(0.75, 1.0 / 9), cl = ByHand(1.20 * 1.76 * 0.85 * 580_000 / (243.6 * 16 / 36) / plain);
        TimberBeamStrength beam = TimberBeam.Bending(Resistance, 6 * Inch, 16 * Inch, 120 * Inch);
        Assert.Equal(cl, beam.Reduction, 1e-12);
        Assert.Equal(plain * cl * 256, beam.Value / (Psi * Math.Pow(Inch, 3)), 1e-5);
        Assert.Equal(0.85, Assert.Single(beam.Factors).Value);
        Assert.True(TimberBeam.Bending(Permit, 6 * Inch, 16 * Inch, 120 * Inch).Value is double permit && permit > beam.Value && permit < 1.25 * beam.Value);
    }

    // Up to lu = 7 d the length is 2.06 lu; 14.42 d and 14.41 d where both meet.
    [Theory]
    [InlineData(100, 206)]
    [InlineData(111, 228.66)]
    [InlineData(112, 230.56)]
    [InlineData(160, 308.8)]
    public void Effective_ShortAndLong_IsThatByHand(double unbraced, double effective) =>
        Assert.Equal(effective, TimberBeam.Effective(unbraced * Inch, 16 * Inch) / Inch, 1e-9);

    [Theory]
    [InlineData(6, 16, 0)]
    [InlineData(12, 12, 200)]
    [InlineData(16, 6, 400)]
    public void Bending_HeldAllAlongOrNoDeeperThanWide_LosesNothing(double width, double depth, double unbraced)
    {
        TimberBeamStrength beam = TimberBeam.Bending(Inventory, width * Inch, depth * Inch, unbraced * Inch);
        Assert.Equal((1.0, 0.0), (beam.Reduction, beam.Slenderness));
        Assert.Equal(Inventory.Bending.Value * width * depth * depth / 6 * Math.Pow(Inch, 3), beam.Value, 1e-6);
        Assert.Equal([BeamClauses.TimberBending], beam.Clauses);
    }

    // From below CL comes to 1 for short lu and to FbE/Fb* for long.
    [Fact]
    public void Stability_OfAnyBeam_IsBelowBothOfItsLimits() =>
        SeededCases.Check(Gen.Select(Gen.Double[-3, 5], Gen.Double[0, 1]), 400, c =>
        {
            double ratio = Math.Pow(10, c.Item1), cl = TimberBeam.Stability(ratio);
            Assert.InRange(cl, 1e-9, Math.Min(1, ratio));
            Assert.True(cl > 0.75 * Math.Min(1, ratio));
            Assert.True(TimberBeam.Stability(ratio * (1 + c.Item2)) >= cl - 1e-9);

            // The smaller root of 0.95 x² − (1 + r) x + r = 0.
            Assert.Equal(0, (0.95 * cl * cl) - ((1 + ratio) * cl) + ratio, 1e-9 * Math.Max(1, ratio * ratio));
        });

    [Fact]
    public void Bending_OfAShortLength_TendsToTheHeldBeam()
    {
        double held = TimberBeam.Bending(Inventory, 6 * Inch, 16 * Inch, 0).Value, last = 0;
        foreach (double inches in (double[])[400, 100, 10, 1, 0.01])
        {
            double value = TimberBeam.Bending(Inventory, 6 * Inch, 16 * Inch, inches * Inch).Value;
            Assert.InRange(value, last, held);
            last = value;
        }

        Assert.Equal(1, last / held, 1e-5);
    }

    [Fact]
    public void Bending_HeldFurtherApart_IsNeverMore() =>
        SeededCases.Check(Gen.Select(Gen.Double[0.08, 0.3], Gen.Double[1.02, 4], Gen.Double[0.05, 12], Gen.Double[0.05, 5]), 300, c =>
        {
            (double width, double ratio, double near, double more) = c;
            foreach (TimberDesign design in (TimberDesign[])[Inventory, Operating, Resistance])
            {
                TimberBeamStrength shorter = TimberBeam.Bending(design, width, width * ratio, near), longer = TimberBeam.Bending(design, width, width * ratio, near + more);
                Assert.True(longer.Value <= shorter.Value * (1 + 1e-12) && shorter.Reduction <= 1);
            }
        });

    // 2/3 × 170 × 1.15 × 6 × 16; the factor of wet service on shear is 1.
    [Fact]
    public void Shear_OfTheWholeDepth_IsThatByHand()
    {
        TimberBeamStrength whole = TimberBeam.Shear(Inventory, 6 * Inch, 16 * Inch, null, false);
        Assert.Equal(2.0 / 3 * 170 * 1.15 * 96, whole.Value / Pound, 1e-9);
        Assert.Equal(1.33 * whole.Value, TimberBeam.Shear(Operating, 6 * Inch, 16 * Inch, null, false).Value, 1e-9);
        Assert.Equal([BeamClauses.TimberShear], whole.Clauses);
        Assert.Equal(whole.Value, TimberBeam.Shear(Inventory, 6 * Inch, 16 * Inch, 16 * Inch, false).Value);

        // φ CKF Cλ = 2.5 × 0.8 by LRFR, 2.5 for permits.
        Assert.Equal(2.0 / 3 * 170 * 2.0 * 96, TimberBeam.Shear(Resistance, 6 * Inch, 16 * Inch, null, false).Value / Pound, 1e-9);
        Assert.Equal(2.0 / 3 * 170 * 2.5 * 96, TimberBeam.Shear(Permit, 6 * Inch, 16 * Inch, null, false).Value / Pound, 1e-9);
    }

    // 12 of 16 in left: square 2/3 Fv b dn (dn/d)² = 0.75³ of the whole, tapered 0.75 of it.
    [Theory]
    [InlineData(12, 0.421875, 0.75)]
    [InlineData(8, 0.125, 0.5)]
    public void Shear_Notched_IsThePartByHand(double left, double square, double tapered)
    {
        double whole = TimberBeam.Shear(Inventory, 6 * Inch, 16 * Inch, null, false).Value;
        TimberBeamStrength notched = TimberBeam.Shear(Inventory, 6 * Inch, 16 * Inch, left * Inch, false), taper = TimberBeam.Shear(Inventory, 6 * Inch, 16 * Inch, left * Inch, true);
        Assert.Equal((square, tapered), (Math.Round(notched.Value / whole, 9), Math.Round(taper.Value / whole, 9)));
        Assert.Equal([BeamClauses.TimberShear, BeamClauses.Notch], notched.Clauses);
        Assert.Equal([BeamClauses.TimberShear, BeamClauses.Taper], taper.Clauses);
    }

    // Rotted to 14 in, a notch that leaves 12 in is measured against the 16 in it was cut from; rotted to 10 in, 10 in are left over it.
    [Theory]
    [InlineData(14, 12)]
    [InlineData(10, 10)]
    public void Shear_NotchedAndDecayed_MeasuresTheNotchAgainstTheSoundDepth(double depth, double left) =>
        Assert.Equal(
            2.0 / 3 * 170 * 1.15 * 6 * left * Math.Pow(left / 16, 2),
            TimberBeam.Shear(Inventory, 6 * Inch, depth * Inch, 12 * Inch, false, 16 * Inch).Value / Pound,
            1e-9);

    // 625 × 0.67 wet × 6 × 10; no factor of duration across the grain; by LRFR 0.90 × 2.1/0.90.
    [Fact]
    public void Bearing_OnTenInches_IsThatByHand()
    {
        double plain = 625 * 0.67 * 60;
        Assert.Equal(plain, TimberBeam.Bearing(Inventory, 6 * Inch, 10 * Inch).Value / Pound, 1e-9);
        Assert.Equal(1.33 * plain, TimberBeam.Bearing(Operating, 6 * Inch, 10 * Inch).Value / Pound, 1e-9);
        Assert.Equal(2.1 * plain, TimberBeam.Bearing(Resistance, 6 * Inch, 10 * Inch).Value / Pound, 1e-8);
        Assert.Equal(2.1 * plain, TimberBeam.Bearing(Permit, 6 * Inch, 10 * Inch).Value / Pound, 1e-8);
    }

    // Rows from memory of AASHTO LRFD 8.5.2.2 (resistance factors) and MBE 6B.5.2.7 (operating level).
    [Fact]
    public void Factors_ByMethod_AreTheRowsFromMemory()
    {
        Assert.Equal((0.85, 0.75, 0.90), (Only(Resistance.BendingFactors), Only(Resistance.ShearFactors), Only(Resistance.AcrossFactors)));
        Assert.Equal((0.85, 0.75, 0.90), (Only(Permit.BendingFactors), Only(Permit.ShearFactors), Only(Permit.AcrossFactors)));
        Assert.Empty(Resistance.LevelFactors);
        foreach (TimberDesign allowable in (TimberDesign[])[Inventory, Operating])
        {
            Assert.Empty(allowable.BendingFactors.Concat(allowable.ShearFactors).Concat(allowable.AcrossFactors));
        }

        Assert.Empty(Inventory.LevelFactors);
        Assert.Equal(1.33, Only(Operating.LevelFactors));
    }

    [Fact]
    public void Strengths_SizesThatAreNone_AreABugOfTheCaller()
    {
        Assert.Equal("unbraced", Assert.Throws<ArgumentOutOfRangeException>(() => TimberBeam.Bending(Inventory, 1, 1, -1)).ParamName);
        Assert.Equal("atEnd", Assert.Throws<ArgumentOutOfRangeException>(() => TimberBeam.Shear(Inventory, 1, 1, 0, false)).ParamName);
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => TimberBeam.Bearing(Inventory, 1, 0)).ParamName);
        Assert.Equal("ratio", Assert.Throws<ArgumentOutOfRangeException>(() => TimberBeam.Stability(0)).ParamName);
    }

    private static TimberMaterial Timber(TimberDesignValues row) => new("fir", row, new StrengthOrigin.ByGrade(row), new TimberUse(true, LoadDuration.TwoMonths));

    private static double ByHand(double ratio) => ((1 + ratio) / 1.9) - Math.Sqrt(Math.Pow((1 + ratio) / 1.9, 2) - (ratio / 0.95));

    private static double Only(IReadOnlyList<StrengthFactor> factors) => Assert.Single(factors).Value;
}
