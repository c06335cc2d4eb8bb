using CsCheck;

namespace SpanRater.Tests;

/// <summary>Why a placement is the peak: the slopes on both sides, and the placements that it beat.</summary>
public class PlacementNarrationTests
{
    private const int Cases = 600;

    // A triangle 12 + 12 of height 1 under axles 10, 30, 10 at 4: 30 on the apex. To the right 10 rises no more by 1/12 but falls.
    [Fact]
    public void Of_ThreeAxlesOnATriangle_TheHeavyOneStandsOnTheApexAndTheSumOfLoadTimesSlopeChangesSign()
    {
        var line = new InfluenceLine([0, 12, 24], [0, 1, 0]);
        var plan = new RollingPlan(line.Stations, new AxleTrain([10, 30, 10], [AxleGap.Fixed(4), AxleGap.Fixed(4)]));
        PlacementNarration told = PlacementNarration.Of(plan, line, Sense.Tension, 3)!;
        Assert.Equal(30 + (2 * 10 * 8 / 12.0), told.Peak.Force, 1e-12);
        Assert.Equal(1, told.Axles[1].PanelPoint);
        Assert.Equal((1 / 12.0, -1 / 12.0), (told.Axles[1].SlopeLeft, told.Axles[1].SlopeRight));

        // Front axle already past the apex: (10 + 30 − 10)/12 on the left, (10 − 30 − 10)/12 on the right.
        Assert.Equal(-30 / 12.0, told.ChangeToTheLeft, 1e-12);
        Assert.Equal(-30 / 12.0, told.ChangeToTheRight, 1e-12);
        Assert.Equal(told.Peak.Force, told.OtherWay!.Force, 1e-12);

        // Three axles times three panel points, both ways; no two fall together.
        Assert.Equal(18, told.Candidates.Positions);

        // Next come those with the front or the last axle on the apex: 10 + 30 × 8/12 + 10 × 4/12.
        Assert.Equal([43.333333, 33.333333, 33.333333], told.Candidates.Right.Select(p => Math.Round(p.Force, 6)));
        Assert.Null(PlacementNarration.Of(plan, line, Sense.Compression, 3));
    }

    [Fact]
    public void Of_LinesOfTrussesAndRandomTrains_ThePeakFallsEitherWayAndBeatsEveryCandidate() => SeededCases.Check(
        from form in RandomTrusses.Forms()
        let truss = form.Build()
        from train in RandomTrains.For(truss.Stations, 1)
        from member in Gen.Int[0, truss.Members.Count - 1]
        select (truss, train, member),
        Cases,
        c =>
        {
            InfluenceLine line = InfluenceLines.Of(c.truss).Value!.Members[c.member].Line;
            var plan = new RollingPlan(line.Stations, c.train);
            foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
            {
                if (PlacementNarration.Of(plan, line, sense, 5) is not { } told)
                {
                    Assert.Null(plan.PeaksOf(line).Of(sense));
                    continue;
                }

                double sign = sense == Sense.Tension ? 1 : -1, round = 1e-9 * c.train.Weight;

                // Where an axle at an end of the deck makes the force jump, it may rise up to the jump.
                if (!told.Jumps)
                {
                    Assert.True(sign * told.ChangeToTheLeft <= round, "rises to the left");
                    Assert.True(sign * told.ChangeToTheRight <= round, "rises to the right");

                    // Short of the next position the change is the slope times the way.
                    double near = (line.Stations[^1] - line.Stations[0]) * 1e-7;
                    Assert.Equal(told.ChangeToTheRight * near, told.ForceMoved(near) - told.Peak.Force, 1e-11 * c.train.Weight);
                    Assert.Equal(told.ChangeToTheLeft * near, told.ForceMoved(-near) - told.Peak.Force, 1e-11 * c.train.Weight);
                }

                Peak[] all = [.. told.Candidates.Right, .. told.Candidates.Left];
                Assert.Equal(sign * told.Peak.Force, all.Max(p => sign * p.Force), round);
                Assert.All(all, p => Assert.Equal(p.Force, p.Axles.Sum(a => a.Effect), round));
                foreach (IReadOnlyList<Peak> way in (IReadOnlyList<Peak>[])[told.Candidates.Right, told.Candidates.Left])
                {
                    Assert.True(way.Count <= 5);
                    Assert.Equal(way.Select(p => sign * p.Force).OrderDescending(), way.Select(p => sign * p.Force), (a, b) => Math.Abs(a - b) <= round);
                }
            }
        });

    [Fact]
    public void Jumps_LineThatIsNotZeroAtItsEnd_IsSaid()
    {
        var line = new InfluenceLine([0, 10], [1, 0]);
        var plan = new RollingPlan(line.Stations, new AxleTrain([10], []));
        Assert.True(PlacementNarration.Of(plan, line, Sense.Tension, 1)!.Jumps);
    }

    [Fact]
    public void CandidatesOf_OtherStationsOrNone_AreRefused()
    {
        var plan = new RollingPlan([0, 10], new AxleTrain([10], []));
        Assert.Throws<ArgumentException>(() => plan.CandidatesOf(new InfluenceLine([0, 9], [0, 1]), Sense.Tension, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => plan.CandidatesOf(new InfluenceLine([0, 10], [0, 1]), Sense.Tension, 0));
    }
}
