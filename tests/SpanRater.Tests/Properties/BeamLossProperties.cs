using CsCheck;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Properties;

/// <summary>Loss never makes a beam stronger, in any effect and by any method: not over the sound beam, and not over a lesser loss.</summary>
public class BeamLossProperties
{
    private static readonly Gen<SectionFace?> Faces = OneOf<SectionFace?>(null, SectionFace.Left, SectionFace.Right, SectionFace.Bottom, SectionFace.Top);

    private static readonly Gen<double?> Notches = Gen.Double[0.3, 1.3].Select(part => part > 1 ? (double?)null : part);

    // Sizes, decay as parts of the lesser side, the depth left at the end as a part of the depth.
    [Theory]
    [InlineData(TimberSizeClass.BeamsAndStringers, 5, 12, 6, 24)]
    [InlineData(TimberSizeClass.PostsAndTimbers, 5, 12, 5, 12)]
    [InlineData(TimberSizeClass.Dimension, 1.5, 4, 3.5, 16)]
    public void Decay_OfATimber_NeverMakesItStronger(TimberSizeClass sizeClass, double thin, double thick, double shallow, double deep) =>
        SeededCases.Check(
            Gen.Select(Gen.Double[thin, thick], Gen.Double[shallow, deep], Gen.Double[0.01, 0.3], Gen.Double[0.01, 0.15], Faces, Notches, Gen.Double[0, 4], Gen.Bool),
            400,
            c =>
            {
                (double width, double depth, double decay, double more, SectionFace? face, double? notch, double unbraced, bool isTapered) = c;
                double lesser = Math.Min(width, depth) * Inch;
                foreach (TimberDesignValues row in TimberDesignValues.Published.Where(r => r.SizeClass == sizeClass))
                {
                    var timber = new TimberMaterial("timber", row, new StrengthOrigin.ByGrade(row), new TimberUse(true, LoadDuration.TwoMonths));
                    BeamMake At(double depthOfDecay) => new()
                    {
                        Section = SectionsByHand.Found(Solid(width, depth), depthOfDecay == 0 ? [] : [new Observation.Decay(depthOfDecay * lesser, face) { Place = "the middle" }]),
                        Material = timber,
                        Unbraced = unbraced,
                        Bearing = 0.2,
                        DepthAtEnd = notch * depth * Inch,
                        NotchIsTapered = isTapered,
                        System = SystemKind.Stringer,
                    };

                    foreach (string method in (string[])["LRFR", "ASR"])
                    {
                        foreach (BeamEffect effect in Enum.GetValues<BeamEffect>())
                        {
                            double sound = ValueOf(At(0), effect, method), decayed = ValueOf(At(decay), effect, method), worse = ValueOf(At(decay + more), effect, method);
                            Assert.True(decayed <= sound && worse <= decayed, $"{method}, {effect}, {row.Grade}, {width:R} by {depth:R} in: {sound:R}, {decayed:R}, {worse:R}; decay {decay:R} and {more:R} at {face}, notch {notch:R}, held {unbraced:R} m");
                        }
                    }
                }
            });

    // A notch takes from the shear, more than a taper that leaves as much.
    [Fact]
    public void Notch_OfATimber_TakesMoreThanATaper() =>
        SeededCases.Check(Gen.Select(Gen.Double[5, 12], Gen.Double[6, 24], Gen.Double[0.2, 0.99]), 200, c =>
        {
            (double width, double depth, double left) = c;
            TimberDesignValues row = TimberDesignValues.Find("Douglas Fir-Larch", TimberSizeClass.BeamsAndStringers, "No.1")!;
            var make = new BeamMake
            {
                Section = FoundSection.Sound(Solid(width, depth)),
                Material = new TimberMaterial("timber", row, new StrengthOrigin.ByGrade(row), new TimberUse(true, LoadDuration.TwoMonths)),
                System = SystemKind.Stringer,
            };
            foreach (string method in (string[])["LRFR", "ASR"])
            {
                double whole = ValueOf(make, BeamEffect.Shear, method), taper = ValueOf(make with { DepthAtEnd = left * depth * Inch, NotchIsTapered = true }, BeamEffect.Shear, method);
                Assert.Equal(left, taper / whole, 1e-9);
                Assert.Equal(left * left * left, ValueOf(make with { DepthAtEnd = left * depth * Inch }, BeamEffect.Shear, method) / whole, 1e-9);
            }
        });

    // Of the web less is left: the clause's radius of flange and web grows, so that the cut alone may come out stronger; the sound beam beside it counts as well.
    [Fact]
    public void Loss_OfAMetalBeam_NeverMakesItStrongerThanTheSoundOne() =>
        SeededCases.Check(
            Gen.Select(OneOf("W12x50", "W16x31", "W18x71", "W8x31"), OneOf(ShapeDimension.Web, ShapeDimension.TopFlange, ShapeDimension.BottomFlange, ShapeDimension.Flange), Gen.Double[0.3, 0.99], Gen.Double[0, 12]),
            300,
            c =>
            {
                (string name, ShapeDimension dimension, double left, double unbraced) = c;
                MemberSection section = SectionsByHand.Section(SectionsByHand.Part("beam", ShapeTable.Find(name)!.Shape, new PiecePlacement(0, 0)));
                var sound = new BeamMake
                {
                    Section = FoundSection.Sound(section),
                    Material = new MetalMaterial("steel", MaterialKind.Steel, new MetalStrength(36_000 * Psi, null, new StrengthOrigin.Given("made up")), null, null),
                    Unbraced = unbraced,
                    System = SystemKind.Stringer,
                };
                double there = ShapeTable.Find(name)!.Shape.AsBuilt(dimension)!.Value;
                BeamMake wasted = sound with { Section = SectionsByHand.Found(section, new Observation.Remaining(dimension, left * there) { Place = "the middle" }) };
                foreach (string method in (string[])["LRFR", "LFR", "ASR"])
                {
                    foreach (BeamEffect effect in (BeamEffect[])[BeamEffect.Moment, BeamEffect.Shear])
                    {
                        Assert.True(ValueOf(wasted, effect, method) <= ValueOf(sound, effect, method));
                    }

                    // The cut itself loses its first yield.
                    BeamResistance moment = BeamCapacity.Of(wasted, BeamEffect.Moment, Rules(method), null).Resistance!;
                    double[] yields = [.. moment.Modes.Where(m => m.Strength.Mode == BeamMode.FirstYield).Select(m => m.Strength.Value)];
                    Assert.True(yields[1] < yields[0]);
                }
            });

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    // What is too slender for the rule has no strength that counts.
    private static double ValueOf(BeamMake make, BeamEffect effect, string method)
    {
        BeamCheck check = BeamCapacity.Of(make, effect, Rules(method), Condition.Fair);
        Assert.All(check.Missing, m => Assert.IsType<MissingDatum.TooSlenderBeam>(m));
        return check.Resistance?.Value ?? 0;
    }

    private static StrengthRules Rules(string method) =>
        RatingMethod.Find(method)!.StrengthsAt(RatingMethod.Find(method)!.LevelsOf(VehicleClass.Legal, new RatingSettings())[0])!;

    private static MemberSection Solid(double width, double depth) =>
        SectionsByHand.Section(SectionsByHand.Part("timber", SectionsByHand.Shape(ShapeKind.Timber, (ShapeDimension.Width, width * Inch), (ShapeDimension.Depth, depth * Inch)), new PiecePlacement(0, 0)));
}
