using MathNet.Numerics.Distributions;
using SpanRater.Files;
using static SpanRater.Tests.Ratings.WhatNext.MeasuredHanger;

namespace SpanRater.Tests.Ratings.WhatNext;

/// <summary>What to measure next, against closed forms: the factor of the hanger is linear in the thickness of its bars.</summary>
public class WhatNextTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void Rate_MeasuredHanger_GivesTheFactorByHand() =>
        Assert.Equal(FactorOf(0.70 * Inch), Assert.Single(RowCase.Lowest(Rated(Thickness("mid", 0.70, 0.05)))).Row.Factor!.Value, Tolerance);

    // C = 0.75 Fy 2 b t: the thickness at which C − D = L (1 + I).
    [Theory]
    [InlineData(1.0, "enough")]
    [InlineData(2.2, "too thin")]
    [InlineData(2.7, "thicker")]
    public void Needed_OfAThickness_IsTheClosedForm(double scale, string verdict)
    {
        NeededDimension needed = MeasureFirst.Of(Rated(scale, [Thickness("mid", 0.50, 0.05)])).Needed.Single(n => n.Dimension == ShapeDimension.Thickness);

        Assert.Equal((Dead + (scale * Live)) / (AllowedStress * 2 * 2.5 * Inch), needed.Needed!.Value, 1e-7);
        Assert.Equal(0.50 * Inch, needed.Read!.Value, 1e-12);
        Assert.Equal(verdict == "enough", needed.IsEnough);
        Assert.Equal(verdict == "thicker", needed.IsThickerThanBuilt);
    }

    // t is normal about 0.60 in with a deviation of half the doubt; the factor is below 1 where t is below the closed form's need.
    [Theory]
    [InlineData(0.05, 1.97)]
    [InlineData(0.10, 2.03)]
    [InlineData(0.10, 1.85)]
    public void Chance_OfALinearMember_IsTheNormalDistributionWithinItsStandardError(double doubt, double scale)
    {
        DoubtfulFactor sampled = Assert.Single(MeasureFirst.Of(Rated(scale, [Thickness("mid", 0.60, doubt)])).Factors);
        double needed = (Dead + (scale * Live)) / (AllowedStress * 2 * 2.5 * Inch), deviation = doubt * Inch / 2;
        double expected = Normal.CDF(0.60 * Inch, deviation, needed);

        Assert.InRange(expected, 0.02, 0.98);
        Assert.InRange(Math.Abs(sampled.ChanceBelowOne - expected), 0, 3 * Math.Sqrt(expected * (1 - expected) / DoubtfulFactor.Samples));
        Assert.Equal(Math.Sqrt(sampled.ChanceBelowOne * (1 - sampled.ChanceBelowOne) / DoubtfulFactor.Samples), sampled.StandardError, Tolerance);
    }

    [Fact]
    public void Factors_WithTheirDoubts_AreThoseOfTheReadingsAtTheirEnds()
    {
        DoubtfulFactor factor = Assert.Single(MeasureFirst.Of(Rated(Thickness("mid", 0.72, 0.05))).Factors);

        Assert.Equal(FactorOf(0.67 * Inch), factor.Low, Tolerance);
        Assert.Equal(FactorOf(0.72 * Inch), factor.Likely, Tolerance);

        // No more than was built.
        Assert.Equal(FactorOf(0.75 * Inch), factor.High, Tolerance);
    }

    // At the worse cut the whole doubt counts; at the other only what makes it worse than the first.
    [Fact]
    public void Readings_OfTwoCuts_AreRankedByWhatTheyMayCost()
    {
        MeasureFirst measure = MeasureFirst.Of(Rated(Thickness("upper", 0.70, 0.02), Thickness("lower", 0.72, 0.06)));

        Assert.Equal(["lower", "upper"], measure.Readings.Select(r => r.Reading.Seen.Place));
        Assert.Equal(FactorOf(0.66 * Inch), measure.Readings[0].AtWorst, Tolerance);
        Assert.Equal(FactorOf(0.68 * Inch), measure.Readings[1].AtWorst, Tolerance);
        double factor = FactorOf(0.70 * Inch);
        Assert.Equal((1 / FactorOf(0.66 * Inch)) - (1 / factor), measure.Readings[0].Urgency, Tolerance);
        Assert.Equal(AllowedStress * 2 * 2.5 * Inch / Live, measure.Readings[1].Sensitivity, 1e-6);
    }

    [Fact]
    public void NotMeasured_MemberWithoutReadings_IsNamed()
    {
        MeasureFirst measure = MeasureFirst.Of(Rated());
        Assert.Empty(measure.Readings);
        Assert.Empty(measure.Factors);
        Assert.Equal("L1U1", Assert.Single(measure.NotMeasured).Member.Name);
    }

    // One axle of 10 kN at L1 is all in the hanger: C = D + P (1 + I).
    [Fact]
    public void Limits_OfTheHanger_AreTheClosedForms()
    {
        Bridge bridge = BridgeWith([Thickness("mid", 0.70, 0.05)]);
        LargestLoads limits = LargestLoads.Of(bridge, RatingMethod.Find("ASR")!, [KingPostBridge.OneAxle(VehicleClass.Legal)]).Value!;
        double room = CapacityOf(0.70 * Inch) - Dead;

        LargestLoad axle = limits.Loads.Single(l => l.Load.Name == LargestLoads.AxleName && l.Level == "operating");
        Assert.Equal(room / (1 + KingPostBridge.ImpactOf120Feet), axle.Scale!.Value * LargestLoads.UnitAxle, 1e-6);
        Assert.Equal(FactorOf(0.70 * Inch), limits.Loads.Single(l => l.Load.Name == "one axle" && l.Level == "operating").Scale!.Value, Tolerance);
    }

    [Theory]
    [InlineData(VehicleClass.Maintenance, VehicleClass.Maintenance)]
    [InlineData(VehicleClass.Legal, VehicleClass.Farm)]
    public void AxleClass_FollowsTheVehiclesAskedFor(VehicleClass asked, VehicleClass expected) =>
        Assert.Equal(expected, LargestLoads.AxleClass([KingPostBridge.OneAxle(asked)]));

    // Rods: the factor is no line of the capacity, and the row still knows what another capacity would make of it.
    [Fact]
    public void FactorWith_OverRods_IsTheFactorOfThatCapacity()
    {
        BridgeReading reading = BridgeFolder.Read(CommandLine.Repository.Sample("hollis-fork"), []);
        LiveLoad[] type3 = [reading.Catalogue.Find("Type 3")!];
        Bridge bridge = reading.Bridge!;
        BridgeRating rating = BridgeRater.Rate(bridge, bridge.Rating.Method!, type3).Value!;
        MemberRow row = rating.MemberRows.First(r => r is { Member.Name: "U2L3", Level.Name: "operating", Sense: Sense.Tension });

        foreach (double times in (double[])[0.7, 0.9, 1.1])
        {
            GivenCapacities[] given = [.. bridge.Truss.Members.Select((_, m) => m != row.MemberIndex ? GivenCapacities.None
                : new GivenCapacities(new Dictionary<GivenCapacity, double> { [GivenCapacity.OperatingTension] = times * row.Capacity!.Value }))];
            BridgeRating other = BridgeRater.Rate(bridge with { Capacities = given }, bridge.Rating.Method!, type3).Value!;
            Assert.Equal(other.MemberRows.First(r => r is { Member.Name: "U2L3", Level.Name: "operating", Sense: Sense.Tension }).Factor!.Value, row.FactorWith(times * row.Capacity!.Value)!.Value, Tolerance);
        }
    }
}
