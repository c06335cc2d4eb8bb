using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests;

/// <summary>
/// A beam with a rod below it, against continuous beams (tables of any handbook, from memory) where nothing yields but the beam in bending, and against a stiffness method
/// of its own where everything does.
/// </summary>
public class TrussedBeamTests
{
    private const double Rigid = 1e18;

    // Two spans l under w: the middle support takes 10/8 w l, and M = -w l^2/8 there; V = 3/8 w l at the ends. Handbooks, from memory.
    [Fact]
    public void OnePost_ThatDoesNotYield_IsABeamOverTwoSpans()
    {
        var beam = new TrussedBeam(12, 1, 0, 1.5, 2e7, Rigid, Rigid);

        Assert.Equal(10 / 8.0 * 6, Even(beam, beam.Post), 1e-6);
        Assert.Equal(-36 / 8.0, Even(beam, x => beam.Moment(6, x)), 1e-6);
        Assert.Equal(3 / 8.0 * 6, beam.ShearLine(0, true, true).Over(0, 12), 1e-6);
        Assert.Equal(5 / 8.0 * 6, beam.ShearLine(6, false, false).Over(0, 12), 1e-6);
    }

    // Three equal spans: inner supports 11/10 w l and -w l^2/10; ends 4/10 w l. Handbooks, from memory.
    [Fact]
    public void TwoPosts_ThatDoNotYield_AreABeamOverThreeSpansUnderAnEvenLoad()
    {
        var beam = new TrussedBeam(12, 2, 4, 1.5, 2e7, Rigid, Rigid);

        Assert.Equal(1.1 * 4, Even(beam, beam.Post), 1e-6);
        Assert.Equal(-1.6, Even(beam, x => beam.Moment(4, x)), 1e-6);
        Assert.Equal(0.4 * 4, beam.ShearLine(0, true, true).Over(0, 12), 1e-6);
        Assert.Equal(0.5 * 4, beam.ShearLine(4, true, true).Over(0, 12), 1e-6);
    }

    // A load over the post: no bending. In the middle of one of two spans: 11/16 on the middle support, 13/64 P l under the load, -3/32 P l over the post. Handbooks, from memory.
    [Fact]
    public void OnePost_UnderOneLoad_IsABeamOverTwoSpans()
    {
        var beam = new TrussedBeam(12, 1, 0, 1.5, 2e7, Rigid, Rigid);

        Assert.Equal(1, beam.Post(6), 1e-6);
        Assert.Equal(0, beam.Moment(6, 6), 1e-6);
        Assert.Equal(11 / 16.0, beam.Post(3), 1e-6);
        Assert.Equal(13 / 64.0 * 6, beam.Moment(3, 3), 1e-6);
        Assert.Equal(-3 / 32.0 * 6, beam.Moment(6, 3), 1e-6);
    }

    // A rod without stiffness leaves a simple beam.
    [Fact]
    public void Rod_OfNoStiffness_LeavesASimpleBeam()
    {
        var beam = new TrussedBeam(12, 1, 0, 1.5, 2e7, 1e9, 1e-3);

        Assert.Equal(3, beam.Moment(6, 6), 1e-6);
        Assert.Equal(0.25, beam.Shear(6, true, 3) * -1, 1e-6);
        Assert.Equal(0.75, beam.Shear(0, true, 3), 1e-6);
    }

    public static TheoryData<int, double, double, double, double, double> Beams() => new()
    {
        { 1, 0, 0.45, 4.1e6, 7.7e8, 3.1e8 },
        { 2, 1.8, 0.45, 4.1e6, 7.7e8, 3.1e8 },
        { 2, 3.5, 0.9, 2.6e7, 2.1e9, 9.0e7 },
        { 2, 0.4, 0.2, 1.3e6, 5.5e8, 6.0e8 },
    };

    [Theory]
    [MemberData(nameof(Beams))]
    public void Forces_ByVirtualWorkAndByStiffness_Agree(int posts, double spacing, double drop, double bending, double axial, double rod)
    {
        const double span = 4.9;
        var beam = new TrussedBeam(span, posts, spacing, drop, bending, axial, rod);
        foreach (double x in (double[])[0.31, 1.2, 2.2, 2.6, 3.3, 4.4])
        {
            (double pull, double underLoad, double atPost) = ByStiffness(beam, bending, axial, rod, x);

            Assert.Equal(pull, beam.Compression(x), 1e-9);
            Assert.Equal(underLoad, beam.Moment(x, x), 1e-9);
            Assert.Equal(atPost, beam.Moment(beam.EndField, x), 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Beams))]
    public void Lines_AreMirroredAboutTheMiddle_AndNoLoadBetweenTheTrussesSlackensTheRod(int posts, double spacing, double drop, double bending, double axial, double rod)
    {
        const double span = 4.9;
        var beam = new TrussedBeam(span, posts, spacing, drop, bending, axial, rod);
        for (double x = 0.05; x < span; x += 0.11)
        {
            Assert.Equal(beam.Rod(x), beam.Rod(span - x), 1e-12);
            Assert.Equal(beam.Moment(1.7, x), beam.Moment(span - 1.7, span - x), 1e-12);
            Assert.Equal(beam.Shear(1.7, true, x), -beam.Shear(span - 1.7, false, span - x), 1e-12);
            Assert.True(beam.Rod(x) > 0);
        }

        // No force from a load over a truss.
        Assert.Equal(0, beam.Rod(0), 1e-15);
        Assert.Equal(0, beam.Rod(span), 1e-15);
    }

    [Fact]
    public void Beam_WhosePostsStandOutside_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new TrussedBeam(4, 2, 4, 1, 1e6, 1e9, 1e8));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TrussedBeam(4, 1, 1, 1, 1e6, 1e9, 1e8));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TrussedBeam(4, 3, 1, 1, 1e6, 1e9, 1e8));
    }

    // A unit of load on each metre, by 20,000 strips.
    private static double Even(TrussedBeam beam, Func<double, double> line) =>
        Enumerable.Range(0, 20000).Sum(i => line(beam.Span * (i + 0.5) / 20000) * beam.Span / 20000);

    // Beam elements with axial force, rods as bars, posts as a tie of the heights of their two ends: displacements are the unknowns.
    private static (double Pull, double UnderLoad, double AtPost) ByStiffness(TrussedBeam beam, double bending, double axial, double rod, double load)
    {
        double[] posts = beam.Posts == 1 ? [beam.Span / 2] : [beam.EndField, beam.Span - beam.EndField];
        double[] nodes = [.. ((double[])[0, load, beam.Span, .. posts]).Distinct().Order()];
        int Node(double x) => Array.FindIndex(nodes, n => Math.Abs(n - x) < 1e-12);
        int beamUnknowns = 3 * nodes.Length, all = beamUnknowns + posts.Length;
        var stiffness = Matrix<double>.Build.Dense(all, all);
        void Add(double factor, params (int Unknown, double By)[] stretch)
        {
            foreach ((int i, double a) in stretch)
            {
                foreach ((int j, double b) in stretch)
                {
                    stiffness[i, j] += factor * a * b;
                }
            }
        }

        for (int e = 0; e + 1 < nodes.Length; e++)
        {
            double l = nodes[e + 1] - nodes[e];
            int a = 3 * e, b = a + 3;
            Add(axial / l, (a, -1), (b, 1));
            double[,] k = { { 12, 6 * l, -12, 6 * l }, { 6 * l, 4 * l * l, -6 * l, 2 * l * l }, { -12, -6 * l, 12, -6 * l }, { 6 * l, 2 * l * l, -6 * l, 4 * l * l } };
            int[] at = [a + 1, a + 2, b + 1, b + 2];
            for (int i = 0; i < 4; i++)
            {
                for (int j = 0; j < 4; j++)
                {
                    stiffness[at[i], at[j]] += bending / (l * l * l) * k[i, j];
                }
            }
        }

        // The foot of a post moves along by itself and up with the beam.
        double slant = Math.Sqrt((beam.EndField * beam.EndField) + (beam.Drop * beam.Drop)), c = beam.EndField / slant, s = beam.Drop / slant;
        int FootAlong(int p) => beamUnknowns + p;
        int Up(double x) => (3 * Node(x)) + 1;
        Add(rod / slant, (0, -c), (1, s), (FootAlong(0), c), (Up(posts[0]), -s));
        Add(rod / slant, (3 * (nodes.Length - 1), c), ((3 * (nodes.Length - 1)) + 1, s), (FootAlong(posts.Length - 1), -c), (Up(posts[^1]), -s));
        if (posts.Length == 2)
        {
            Add(rod / beam.PostSpacing, (FootAlong(0), -1), (FootAlong(1), 1));
        }

        int[] held = [0, 1, (3 * (nodes.Length - 1)) + 1];
        int[] free = [.. Enumerable.Range(0, all).Except(held)];
        var reduced = Matrix<double>.Build.Dense(free.Length, free.Length, (i, j) => stiffness[free[i], free[j]]);
        var loads = Vector<double>.Build.Dense(free.Length, i => free[i] == Up(load) ? -1 : 0);
        Vector<double> found = reduced.Solve(loads);
        double Of(int unknown) => Array.IndexOf(free, unknown) is var i and >= 0 ? found[i] : 0;
        double pull = c * rod / slant * ((c * (Of(FootAlong(0)) - Of(0))) + (s * (Of(1) - Of(Up(posts[0])))));
        double MomentAt(int node)
        {
            double l = nodes[node] - nodes[node - 1];
            int a = 3 * (node - 1), b = a + 3;
            return bending / (l * l) * ((6 * Of(a + 1)) + (2 * l * Of(a + 2)) - (6 * Of(b + 1)) + (4 * l * Of(b + 2)));
        }

        return (pull, MomentAt(Node(load)), MomentAt(Node(posts[0])));
    }
}
