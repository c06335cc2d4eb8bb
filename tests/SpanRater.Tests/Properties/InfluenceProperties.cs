namespace SpanRater.Tests.Properties;

/// <summary>The influence lines of random trusses against joint loads solved one by one.</summary>
public class InfluenceProperties
{
    private const double Close = 1e-9;

    [Fact]
    public void Of_AnyTruss_OrdinatesAreTheForcesOfAUnitLoad()
    {
        SeededSample.Run(RandomTrusses.All, "0000FnLn0J81", 2_000, sample =>
        {
            (DeterminateTruss system, InfluenceLines lines) = Solve(sample.Truss);
            for (int i = 0; i < sample.Truss.PanelPoints.Count; i++)
            {
                IReadOnlyList<double> forces = Forces(system, (i, 1));
                double scale = Math.Max(1, forces.Max(Math.Abs));
                for (int m = 0; m < forces.Count; m++)
                {
                    Assert.Equal(forces[m], lines.Members[m].Line.Ordinates[i], Close * scale);
                    Assert.Equal(lines.Members[m].Line.Ordinates[i], lines.Members[m].Line.OrdinateAt(sample.Truss.Stations[i]));
                }
            }
        });
    }

    [Fact]
    public void OrdinateAt_MiddleOfAPanel_IsTheForceOfTwoHalfLoads()
    {
        SeededSample.Run(RandomTrusses.All, "0001FnLn0J82", 500, sample =>
        {
            (DeterminateTruss system, InfluenceLines lines) = Solve(sample.Truss);
            for (int i = 1; i < sample.Truss.PanelPoints.Count; i++)
            {
                IReadOnlyList<double> forces = Forces(system, (i - 1, 0.5), (i, 0.5));
                double middle = (sample.Truss.Stations[i - 1] + sample.Truss.Stations[i]) / 2;
                double scale = lines.Members.Max(e => e.Line.Ordinates.Max(Math.Abs));
                for (int m = 0; m < forces.Count; m++)
                {
                    Assert.Equal(forces[m], lines.Members[m].Line.OrdinateAt(middle), Close * scale);
                }
            }
        });
    }

    [Fact]
    public void Of_AnyTruss_VerticalReactionsAddUpToTheLoad()
    {
        SeededSample.Run(RandomTrusses.All, "0002FnLn0J83", 500, sample =>
        {
            (_, InfluenceLines lines) = Solve(sample.Truss);
            for (int i = 0; i < sample.Truss.PanelPoints.Count; i++)
            {
                double up = lines.Reactions.Where(r => r.Name.EndsWith(" up", StringComparison.Ordinal)).Sum(r => r.Line.Ordinates[i]);
                Assert.Equal(1, up, Close);
                Assert.Equal(0, lines.Reactions.Single(r => r.Name == "L0 right").Line.Ordinates[i], Close);
            }
        });
    }

    private static (DeterminateTruss System, InfluenceLines Lines) Solve(Truss truss)
    {
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        Assert.True(InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out _));
        return (system, lines);
    }

    private static IReadOnlyList<double> Forces(DeterminateTruss system, params (int Point, double Weight)[] loads)
    {
        Truss truss = system.Truss;
        var joints = loads.Select(l => new JointLoad(truss.Joints[truss.PanelPoints[l.Point]].Name, 0, -l.Weight));
        Assert.True(system.Solve(new LoadCase("unit", [.. joints])).TryGet(out ForceSolution? solution, out _));
        return solution.MemberForces;
    }
}
