using CsCheck;

namespace SpanRater.Tests;

/// <summary>
/// Lane loads, their concentrated loads and trucks on members of random trusses, held against a plain placement: the deck is cut
/// into small pieces, each loaded or not by its middle; the concentrated load stands at every cut; the truck is swept.
/// </summary>
public class LiveLoadProperties
{
    private const int Cases = 300;

    private const int PiecesOfAPanel = 40;

    private const double Lane = 9_300;

    [Fact]
    public void MostOn_ALaneWithAConcentratedLoad_IsThatOfTheFinePlacement() => SeededCases.Check(
        from truss in RandomTrusses.Forms()
        from member in Gen.Double.Unit
        from point in Gen.Double[1e4, 2e5]
        select (Line: LineOf(truss, member), point),
        Cases,
        c =>
        {
            var plan = new LiveLoadPlan(c.Line.Stations, new Loading("lane", VehicleClass.Design, [], new LaneLoad(new ConstantLineLoad(Lane, "test"), null, c.point), "test"));
            foreach (Sense sense in Enum.GetValues<Sense>())
            {
                (double lane, double missed) = FineLane(c.Line, sense);
                double placed = lane + (c.point * Highest(c.Line, sense));
                double exact = Math.Abs(plan.MostOn(c.Line, sense)?.Force ?? 0), equal = 1e-9 * (c.point + Lane);
                Assert.True(exact >= placed - equal, $"{sense}: the placement reaches {placed:R}, the plan {exact:R}.");
                Assert.True(exact <= placed + missed + equal, $"{sense}: the plan reports {exact:R}, the placement {placed:R}, which misses {missed:R} at most.");
            }
        });

    [Fact]
    public void MostOn_ATruckWithALane_IsThatOfTheFinePlacement() => SeededCases.Check(
        from form in RandomTrusses.Forms()
        from member in Gen.Double.Unit
        from first in RandomTrains.For(form.Build().Stations, 0)
        from second in RandomTrains.For(form.Build().Stations, 0)
        select (Line: LineOf(form, member), Step: form.PanelLength / 20, first, second),
        Cases,
        c =>
        {
            Vehicle[] trucks = [Truck("first", c.first), Truck("second", c.second)];
            var plan = new LiveLoadPlan(c.Line.Stations, new Loading("both", VehicleClass.Design, trucks, new LaneLoad(new ConstantLineLoad(Lane, "test")), "test"));
            SteppedSweep[] sweeps = [.. trucks.Select(t => new SteppedSweep(c.Line, t.Train, c.Step, 1))];
            foreach (Sense sense in Enum.GetValues<Sense>())
            {
                (double lane, double missed) = FineLane(c.Line, sense);
                double placed = lane + sweeps.Max(s => s.Highest(sense)), equal = 1e-9 * (c.first.Weight + c.second.Weight + Lane);
                LiveEffect? most = plan.MostOn(c.Line, sense);
                double exact = Math.Abs(most?.Force ?? 0);
                Assert.True(exact >= placed - equal, $"{sense}: the placement reaches {placed:R}, the plan {exact:R}.");
                if (most?.Parts[0] is LivePart.Axles axles)
                {
                    missed += sweeps[Array.IndexOf(trucks, axles.Vehicle)].MostMissed(axles.Peak);
                }

                Assert.True(exact <= placed + missed + equal, $"{sense}: the plan reports {exact:R}, the placement {placed:R}, which misses {missed:R} at most.");
            }
        });

    private static Vehicle Truck(string name, AxleTrain train) => new(name, VehicleClass.Design, train, Vehicle.StandardGauge, "test");

    private static InfluenceLine LineOf(TrussForm form, double member)
    {
        InfluenceLines lines = InfluenceLines.Of(DeterminateTruss.Of(form.Build()).Value!).Value!;
        return lines.Members[Math.Min((int)(member * lines.Members.Count), lines.Members.Count - 1)].Line;
    }

    // A piece over which the line changes its sense holds at most a piece of the panel's change of ordinate too little.
    private static (double Effect, double MostMissed) FineLane(InfluenceLine line, Sense sense)
    {
        double sign = sense == Sense.Tension ? 1 : -1, effect = 0, missed = 0;
        for (int i = 1; i < line.Stations.Count; i++)
        {
            double panel = line.Stations[i] - line.Stations[i - 1], piece = panel / PiecesOfAPanel, left = line.Ordinates[i - 1], rise = line.Ordinates[i] - left;
            missed += Lane * piece * Math.Abs(rise) / PiecesOfAPanel;
            for (int k = 0; k < PiecesOfAPanel; k++)
            {
                effect += Lane * piece * Math.Max(0, sign * (left + (rise * (k + 0.5) / PiecesOfAPanel)));
            }
        }

        return (effect, missed);
    }

    private static double Highest(InfluenceLine line, Sense sense)
    {
        double sign = sense == Sense.Tension ? 1 : -1, highest = 0;
        for (int i = 1; i < line.Stations.Count; i++)
        {
            for (int k = 0; k <= PiecesOfAPanel; k++)
            {
                double part = (double)k / PiecesOfAPanel;
                highest = Math.Max(highest, sign * (((1 - part) * line.Ordinates[i - 1]) + (part * line.Ordinates[i])));
            }
        }

        return highest;
    }
}
