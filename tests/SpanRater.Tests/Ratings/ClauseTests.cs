using System.Globalization;
using System.Reflection;

namespace SpanRater.Tests.Ratings;

/// <summary>The catalogue of clauses, and what the program's numbers make of it.</summary>
public class ClauseTests
{
    [Fact]
    public void All_HoldsEveryClauseOnce()
    {
        Clause[] properties =
        [
            .. typeof(Clause).Assembly.GetExportedTypes().Where(t => t is { IsAbstract: true, IsSealed: true }).SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
                .Where(p => p.PropertyType == typeof(Clause)).Select(p => (Clause)p.GetValue(null)!),
        ];

        Assert.Equal(properties.Select(c => c.Name).Order(), Clauses.All.Select(c => c.Name).Order());
        Assert.Equal(Clauses.All.Count, Clauses.All.Select(c => c.Name).Distinct().Count());
    }

    [Fact]
    public void All_SayWhatIsTakenAndFromWhere() =>
        Assert.All(Clauses.All, c =>
        {
            Assert.NotEqual("", c.Says);
            Assert.NotEqual("", c.Values);
            Assert.Equal(c.Mark == ClauseMark.Practice, c.Standard == Standard.Practice);
        });

    [Fact]
    public void ToConfirm_AreTheFactorsInDoubt() =>
        Assert.Equal(
            [
                "special hauling factor",
                "emergency factor",
                "allowable tension of wrought iron",
                "allowable tension on the net section",
                "LFR tension",
                "eyebar heads",
                "design values of timber",
                "wet service of timber 2 to 4 in thick",
                "wet service of timber 5 by 5 in and larger",
                "size factor of timber 2 to 4 in thick",
                "size factor along the grain",
                "LRFR modulus for stability",
                "operating level of timber",
                "lanes on stringers",
                "spread on laminated decks",
                "ASR pins at operating level",
                "LRFR rivets",
                "LRFR bolts",
                "gussets in tension",
                "gussets in compression",
                "gussets in shear",
                "fatigue life",
                "fatigue in tension",
            ],
            Clauses.ToConfirm.Select(c => c.Name));

    [Fact]
    public void Basis_OfEveryMethod_IsInTheCatalogue() =>
        Assert.All(RatingMethod.All.SelectMany(m => m.Basis), c => Assert.Contains(c, Clauses.All));

    [Fact]
    public void Source_OfLoadFactorRating_NamesStandardsOnceAndPracticeLast() =>
        Assert.Equal(
            "AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6B.4.1 (LFR and ASR rating equation), 6B.4.3 (LFR factors); "
            + "AASHTO Standard Specifications, 17th ed. (2002), 3.8.2.1 (impact by loaded length), 3.12.1 (LFR and ASR presence); all from memory. "
            + "Common practice: LFR and ASR relieving dead load 1.0",
            RatingMethod.Find("LFR")!.Source);

    [Fact]
    public void Citation_OfEachShape_ReadsAsOneQuotesIt()
    {
        Assert.Equal("23 CFR 650.313", PostingClauses.Closure.Citation);
        Assert.Equal("FHWA memo of 3 November 2016", FactorClauses.Emergency.Citation);
        Assert.Equal("AASHTO LRFD, 8th ed. (2017), 3.6.2.3", ImpactClauses.OnTimber.Citation);
        Assert.Equal("USDA Timber Bridges (1990), ch. 6", DeadLoadClauses.TimberWeight.CitationWithMark);
        Assert.Equal("AASHTO Standard Specifications, 17th ed. (2002), 3.3.6, from memory", DeadLoadClauses.UnitWeights.CitationWithMark);
    }

    public static TheoryData<Clause, double[]> Numbers()
    {
        RatingMethod lrfr = RatingMethod.Find("LRFR")!, lfr = RatingMethod.Find("LFR")!, asr = RatingMethod.Find("ASR")!;
        double[] Live(RatingMethod method, VehicleClass vehicleClass) => [.. method.LevelsOf(vehicleClass, new RatingSettings()).Select(l => l.LiveFactor!.Value)];
        double[] Presence(RatingMethod method) => [.. Enumerable.Range(1, 4).Select(method.Presence)];
        const double foot = 0.3048, kip = SafeLoad.UsTon / 2;
        return new TheoryData<Clause, double[]>
        {
            { FactorClauses.LrfrDead, [lrfr.DeadFactors.Components, lrfr.DeadFactors.WearingSurface] },
            { FactorClauses.LrfrRelieving, [lrfr.DeadFactors.RelievingComponents, lrfr.DeadFactors.RelievingWearingSurface] },
            { FactorClauses.LrfrDesign, Live(lrfr, VehicleClass.Design) },
            { FactorClauses.MaintenanceAndCrowd, Live(lrfr, VehicleClass.Crowd) },
            { FactorClauses.Emergency, Live(lrfr, VehicleClass.Emergency) },
            { FactorClauses.Lfr, [lfr.DeadFactors.Components, .. Live(lfr, VehicleClass.Legal)] },
            { FactorClauses.Asr, Live(asr, VehicleClass.Legal) },
            { ImpactClauses.OfLrfr, [lrfr.Impact(10)] },
            { ImpactClauses.BySurface, [lrfr.ImpactOn(RidingSurface.Smooth)!.Value, lrfr.ImpactOn(RidingSurface.MinorDeviations)!.Value] },
            { LateralClauses.LrfrPresence, Presence(lrfr) },
            { LateralClauses.OlderPresence, Presence(lfr) },
            { LateralClauses.OlderPresence, Presence(asr) },
            { LateralClauses.WheelToKerb, [new Deck().WheelToKerb / foot] },
            { LateralClauses.ReducedWheelToKerb, [LeverRule.ReducedWheelToKerb / foot] },
            { LateralClauses.BetweenVehicles, [LeverRule.BetweenVehicles / foot] },
            { LateralClauses.Gauge, [Vehicle.StandardGauge / foot] },
            { LateralClauses.LaneLoadWidth, [LeverRule.LaneLoadWidth / foot] },
            { PostingClauses.Closure, [SafeLoad.ClosureLine / SafeLoad.UsTon] },
            { PostingClauses.EmergencyAxles, [SafeLoad.EmergencySingleAxle / kip, SafeLoad.EmergencyTandem / kip] },
            { PostingClauses.Tandem, [SafeLoad.TandemSpacing / foot] },
        };
    }

    // "1.25; 1.50", "33.5; 62 kip": what the document says is what the program has.
    [Theory]
    [MemberData(nameof(Numbers))]
    public void Values_AreTheNumbersOfTheProgram(Clause clause, double[] numbers)
    {
        double[] said = [.. clause.Values.Split("; ").Select(v => double.Parse(v.Split(' ')[0], CultureInfo.InvariantCulture))];
        Assert.Equal(said.Length, numbers.Length);
        Assert.All(said.Zip(numbers), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }
}
