using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests;

/// <summary>
/// The principle of Müller-Breslau: the deck of a truss of which one member is shortened by one unit takes the shape of the
/// member's influence line. The two come by different ways: one from forces under unit loads, one from lengths.
/// Source: R. C. Hibbeler, Structural Analysis, chapter on influence lines, from memory.
/// </summary>
public class UnitShorteningTests
{
    private const int RandomCount = 200;

    [Theory]
    [InlineData("garrow-landing")]
    [InlineData("tansy-weir")]
    public void DeckRise_EveryMemberOfASample_IsItsInfluenceLine(string sample) =>
        AssertIsInfluenceLine(InfluenceLines.Of(BridgeFolder.Read(Repository.Sample(sample), []).Bridge!.Truss).Value!);

    [Fact]
    public void DeckRise_EveryMemberOfRandomTrusses_IsItsInfluenceLine() =>
        SeededCases.CheckEach([.. RandomTrusses.All.Take(RandomCount)], t => AssertIsInfluenceLine(t.Lines));

    // While a set of rods acts, the slack ones hold nothing, and the rest is such a truss.
    [Theory]
    [InlineData("hollis-fork")]
    [InlineData("mossback-lane")]
    public void DeckRise_RodsOfASampleUnderDeadLoad_IsTheLineOfThatSet(string sample)
    {
        Bridge bridge = BridgeFolder.Read(Repository.Sample(sample), []).Bridge!;
        RodTruss rods = RodTruss.Of(bridge.Truss).Value!;
        InfluenceLines lines = rods.Lines([.. rods.SlackUnder(rods.Solve(bridge.DeadLoad!).Value!)]).Value!;
        Assert.NotEmpty(lines.Slack!);
        AssertIsInfluenceLine(lines);
        for (int m = 0; m < lines.Members.Count; m++)
        {
            InfluenceNarration told = InfluenceNarration.Of(lines, m);
            Assert.Equal(lines.Slack!.Contains(m), told.IsSlack);
            Assert.DoesNotContain(told.Section?.Cut ?? [], c => lines.Slack!.Contains(c));
        }
    }

    // A king post of half span a and height h: its tie is pulled by a/(2h) under a load at midspan. Lengthened it lets the deck sink.
    [Fact]
    public void DeckRise_TieOfAKingPost_RisesByTheClosedForm()
    {
        Truss truss = new KingPostTruss(4, 3).Build();
        UnitShortening moved = UnitShortening.Of(truss, truss.FindMember("L0L1")!.Value).Value!;
        Assert.Equal(4.0 / (2 * 3), moved.DeckRise(truss)[1], 1e-12);
    }

    [Fact]
    public void Of_ShortenedMember_ShortensByOneAndNoOtherMemberChanges()
    {
        Truss truss = new PrattTruss(6, 5, 6).Build();
        for (int shortened = 0; shortened < truss.Members.Count; shortened++)
        {
            UnitShortening moved = UnitShortening.Of(truss, shortened).Value!;
            for (int m = 0; m < truss.Members.Count; m++)
            {
                (int a, int b) = (truss.FromJoint(m), truss.ToJoint(m));
                double dx = truss.Joints[b].X - truss.Joints[a].X, dy = truss.Joints[b].Y - truss.Joints[a].Y;
                double longer = ((dx * (moved.Shifts[b].Right - moved.Shifts[a].Right)) + (dy * (moved.Shifts[b].Up - moved.Shifts[a].Up))) / Math.Sqrt((dx * dx) + (dy * dy));
                Assert.Equal(m == shortened ? -1 : 0, longer, 1e-9);
            }
        }
    }

    [Fact]
    public void Of_TrussThatGeometryAloneDoesNotMove_IsRefused()
    {
        Truss pratt = new PrattTruss(6, 5, 6).Build();
        Truss crossed = Truss.Create(pratt.Joints, [.. pratt.Members, new Member("L1U2", "L1", "U2")]).Truss!;
        Assert.IsType<Refusal.Redundant>(UnitShortening.Of(crossed, 0).Refusal);
        Truss swaying = Truss.Create(pratt.Joints, [.. pratt.Members.Where(m => m.Name != "U1L2")]).Truss!;
        Assert.IsType<Refusal.Mechanism>(UnitShortening.Of(swaying, 0).Refusal);
        Truss rods = Truss.Create(pratt.Joints, [.. pratt.Members.Select(m => m with { TensionOnly = m.Name == "U1L2" })]).Truss!;
        Assert.IsType<Refusal.RodsThatOnlyPull>(UnitShortening.Of(rods, 0).Refusal);
    }

    private static void AssertIsInfluenceLine(InfluenceLines lines)
    {
        for (int m = 0; m < lines.Members.Count; m++)
        {
            if (lines.Slack?.Contains(m) == true)
            {
                Assert.IsType<Refusal.RodsThatOnlyPull>(UnitShortening.Of(lines.Truss, m, lines.Slack).Refusal);
                continue;
            }

            Assert.True(UnitShortening.Of(lines.Truss, m, lines.Slack).TryGet(out UnitShortening? moved, out _));
            IReadOnlyList<double> rise = moved.DeckRise(lines.Truss), ordinates = lines.Members[m].Line.Ordinates;
            for (int i = 0; i < rise.Count; i++)
            {
                Assert.Equal(ordinates[i], rise[i], 1e-9);
            }
        }
    }
}
