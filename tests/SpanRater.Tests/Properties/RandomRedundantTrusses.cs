using System.Globalization;
using CsCheck;

namespace SpanRater.Tests;

/// <summary>A random redundant truss, solved, with two random load cases.</summary>
internal sealed record RedundantTruss(Truss Truss, LinearTruss System, LoadCase One, LoadCase Other);

/// <summary>
/// Random trusses with more than statics can tell: the forms with crossed diagonals that push and pull, and with rollers
/// under lower panel points, with areas over two decades.
/// </summary>
internal static class RandomRedundantTrusses
{
    internal const int Count = 500;

    private static readonly Lazy<RedundantTruss[]> Solved = new(() => SeededCases.Draw(Trusses(), Count));

    /// <summary>The trusses, made once for all properties.</summary>
    internal static IReadOnlyList<RedundantTruss> All => Solved.Value;

    /// <summary>An area between 2 and 200 cm².</summary>
    internal static Gen<double> Area() => Gen.Double[0, 2].Select(decades => 2e-4 * Math.Pow(10, decades));

    /// <summary>A load of up to 50 kN each way at every joint.</summary>
    internal static Gen<LoadCase> Case(Truss truss, string name) =>
        Gen.Select(Gen.Double[-5e4, 5e4], Gen.Double[-5e4, 5e4]).Array[truss.Joints.Count]
            .Select(loads => new LoadCase(name, [.. loads.Select((l, j) => new JointLoad(truss.Joints[j].Name, l.Item1, l.Item2))]));

    /// <summary>The truss made again with other members.</summary>
    internal static Truss With(Truss truss, IEnumerable<Member> members) => Truss.Create(truss.Joints, [.. members]).Truss!;

    private static Gen<RedundantTruss> Trusses() =>
        from form in RandomTrusses.Forms()
        from crossed in Gen.Bool.Array[form.Panels]
        from held in Gen.Int[0, 3].Array[form.Panels]
        let bare = Redundant(form.Build(), crossed, held)
        from areas in Area().Array[bare.Members.Count]
        let truss = With(bare, bare.Members.Select((m, i) => m with { Area = areas[i] }))
        from one in Case(truss, "one")
        from other in Case(truss, "other")
        select new RedundantTruss(truss, LinearTruss.Of(truss).Value!, one, other);

    private static Truss Redundant(Truss truss, bool[] crossed, int[] held)
    {
        var members = truss.Members.ToList();
        for (int i = 0; i < crossed.Length; i++)
        {
            foreach ((string from, string to) in crossed[i] ? new[] { ($"U{i}", $"L{i + 1}"), ($"L{i}", $"U{i + 1}") } : [])
            {
                if (truss.FindJoint(from) is not null && truss.FindJoint(to) is not null && !Joined(members, from, to))
                {
                    members.Add(new Member(from + to, from, to));
                }
            }
        }

        bool isRedundant = members.Count > truss.Members.Count;
        var joints = truss.Joints.Select(j => j.Support is null && j.Name[0] == 'L' && held[int.Parse(j.Name[1..], CultureInfo.InvariantCulture) % held.Length] == 0 ? j with { Support = Support.Roller() } : j).ToList();
        if (!isRedundant && joints.SequenceEqual(truss.Joints))
        {
            int middle = joints.FindIndex(j => j.Support is null);
            joints[middle] = joints[middle] with { Support = Support.Roller() };
        }

        return Truss.Create(joints, members).Truss!;
    }

    private static bool Joined(List<Member> members, string a, string b) =>
        members.Exists(m => (m.From == a && m.To == b) || (m.From == b && m.To == a));
}
