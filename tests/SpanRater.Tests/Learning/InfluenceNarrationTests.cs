namespace SpanRater.Tests;

/// <summary>The sections and joints that explain influence lines, worked again here by hand or from coordinates.</summary>
public class InfluenceNarrationTests
{
    private const int RandomCount = 300;

    // Ritter's moments: upper chord U2U3 of a Pratt truss about L3, −M/h; L2L3 about U2; the diagonal by the panel's shear.
    [Theory]
    [InlineData("U2U3", "L3", 18.0, 3)]
    [InlineData("L2L3", "U2", 18.0, 2)]
    public void Section_ChordOfAPratt_TakesMomentsAboutTheJointAcross(string member, string about, double arm, int peak)
    {
        InfluenceNarration told = Told(new PrattTruss(6, 16, 18).Build(), member);
        LineSection section = told.Section!;
        Joint centre = told.Lines.Truss.Joints[told.Lines.Truss.FindJoint(about)!.Value];
        Assert.Equal((centre.X, centre.Y), (section.Centre!.Value.X, section.Centre.Value.Y));
        Assert.All(section.Steps, s => Assert.Equal(arm, Math.Abs(s.Lever), 1e-9));
        Assert.Equal(peak, Assert.Single(told.Bends).PanelPoint);
        Assert.True(told.BendsOnlyAtTheSection);

        // A simple beam's moment under a unit load at the centre of moments, a·b/L.
        Assert.Equal(centre.X * (96 - centre.X) / 96 / arm, Math.Abs(told.Line.Ordinates[peak]), 1e-9);
    }

    [Fact]
    public void Section_DiagonalOfAPratt_IsTheShearOfItsPanelOverTheSine()
    {
        InfluenceNarration told = Told(new PrattTruss(6, 16, 18).Build(), "U1L2");
        Assert.True(told.Section!.IsShear);
        Assert.Equal(3, told.Section.Cut.Count);
        Assert.Equal(1, told.Section.PanelLeft);
        double sine = 18 / Math.Sqrt((16 * 16) + (18 * 18));
        Assert.All(told.Section.Steps, s => Assert.Equal(sine, Math.Abs(s.Lever), 1e-12));
        Assert.Equal([1, 2], told.Bends.Select(b => b.PanelPoint));
        Assert.Equal(4.0 / 6 / sine, told.Line.Ordinates[2], 1e-9);
    }

    [Fact]
    public void Section_DiagonalOfAParker_MeetsTheChordsOutsideTheSpan()
    {
        InfluenceNarration told = Told(new ParkerTruss(5, [5, 6, 6.5, 6, 5]).Build(), "U1L2");
        (double x, double y) = told.Section!.Centre!.Value;

        // The upper chord rises from 5 to 6 in one panel of 5: at the deck's level 25 left of U1.
        Assert.Equal(-20, x, 1e-9);
        Assert.Equal(0, y, 1e-9);
    }

    [Fact]
    public void Section_DiagonalOfAK_SharesTheShearWithItsTwin()
    {
        InfluenceNarration told = Told(new KTruss(8, 18, 28).Build(), "M2U3");
        Truss truss = told.Lines.Truss;
        Assert.Equal("M2L3", truss.Members[told.Section!.Twin!.Other!.Value].Name);
        Assert.Equal(-1, told.Section.Twin.Ratio, 1e-12);

        // Both slopes work together: twice the sine of 14 over √(14² + 18²).
        Assert.Equal(2 * 14 / Math.Sqrt((14 * 14) + (18 * 18)), Math.Abs(told.Section.Steps[0].Lever), 1e-12);
    }

    [Fact]
    public void Section_ChordOfAK_RunsThroughTheUprightAndTakesMomentsAtItsFoot()
    {
        InfluenceNarration told = Told(new KTruss(8, 18, 28).Build(), "U2U3");
        Assert.Equal(4, told.Section!.Cut.Count);
        Assert.Equal(0, told.Section.Centre!.Value.Y);
        Assert.All(told.Section.Steps, s => Assert.Equal(28, Math.Abs(s.Lever), 1e-9));
    }

    [Fact]
    public void IsJointAlone_HangerAndPostThatCarriesNothing_AreToldFromTheirJoint()
    {
        InfluenceNarration hanger = Told(new PrattTruss(6, 16, 18).Build(), "U1L1");
        Assert.True(hanger.IsJointAlone);
        Assert.Equal((1.0, 0.0), (hanger.Tie!.OwnLoad, hanger.Tie.Ratio));
        Assert.Null(hanger.Section);

        // The post under the middle of a Pratt's level upper chord.
        InfluenceNarration idle = Told(new PrattTruss(6, 16, 18).Build(), "U3L3");
        Assert.True(idle.IsJointAlone);
        Assert.Equal(0, idle.Tie!.OwnLoad);
        Assert.All(idle.Line.Ordinates, y => Assert.Equal(0, y));
    }

    [Fact]
    public void Tie_UprightOfAK_IsThatOfTheDiagonalBesideIt()
    {
        InfluenceNarration told = Told(new KTruss(8, 18, 28).Build(), "U2M2");
        Assert.Null(told.Section);
        Assert.Equal("M1U2", told.Lines.Truss.Members[told.Tie!.Other!.Value].Name);
        Assert.Equal(-14 / Math.Sqrt((14 * 14) + (18 * 18)), told.Tie.Ratio, 1e-12);
    }

    // Every member of every form: what is told gives the ordinates again, from reactions and coordinates alone.
    [Fact]
    public void Of_RandomTrusses_NothingIsToldThatDoesNotGiveTheLine() => SeededCases.CheckEach([.. RandomTrusses.All.Take(RandomCount)], truss =>
    {
        for (int m = 0; m < truss.Lines.Members.Count; m++)
        {
            InfluenceNarration told = InfluenceNarration.Of(truss.Lines, m);
            double largest = Math.Max(1e-3, told.Line.Ordinates.Max(Math.Abs));
            if (told.Section is { } section)
            {
                Assert.All(section.Steps, s => AssertBalances(truss.Lines, m, section, s, 1e-8 * largest));
                Assert.True(told.BendsOnlyAtTheSection, $"{truss.Form.Name}: {truss.Lines.Members[m].Name}");
            }

            if (told.Tie is { } tie)
            {
                for (int p = 0; p < told.Line.Ordinates.Count; p++)
                {
                    double own = truss.Lines.Truss.PanelPoints[p] == tie.Joint ? tie.OwnLoad : 0;
                    double other = tie.Other is { } o ? tie.Ratio * truss.Lines.Members[o].Line.Ordinates[p] : 0;
                    Assert.Equal(told.Line.Ordinates[p], own + other, 1e-8 * largest);
                }
            }
        }
    });

    // The post at the crown of a Parker and the middle post of a K have two diagonals or chords at both ends: for them nothing simple holds.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Of_EveryMemberOfCommonForms_HasSomethingToTellButMiddlePosts(bool top)
    {
        DeckChord deck = top ? DeckChord.Top : DeckChord.Bottom;
        TrussForm[] forms = [new PrattTruss(6, 5, 6, deck), new HoweTruss(6, 5, 6, deck), new WarrenTruss(6, 5, 6), new WarrenTrussWithVerticals(6, 5, 6, deck), new ParkerTruss(5, [5, 6, 6.5, 6, 5]), new KTruss(8, 18, 28), new KingPostTruss(4, 3)];
        foreach (Truss truss in forms.Select(f => f.Build()))
        {
            for (int m = 0; m < truss.Members.Count; m++)
            {
                InfluenceNarration told = InfluenceNarration.Of(InfluenceLines.Of(truss).Value!, m);
                bool middle = truss.Members[m].Name is "U3L3" or "U4L4";
                Assert.True(middle || told.Section is not null || told.Tie is not null, truss.Members[m].Name);
            }
        }
    }

    // The bare part under its reactions and the members cut, with their true forces: its moment about any point is nil, and
    // without the members that the section leaves out what is left is the equation that is told.
    private static void AssertBalances(InfluenceLines lines, int member, LineSection section, SectionStep step, double tolerance)
    {
        Truss truss = lines.Truss;
        (double x, double y) = section.Centre ?? (1.234, -5.678);
        double moment = 0, across = 0, size = truss.Stations[^1] - truss.Stations[0];
        void Add(Joint at, double right, double up)
        {
            moment += ((at.X - x) * up) - ((at.Y - y) * right);
            across += (right * section.Normal.X) + (up * section.Normal.Y);
        }

        foreach (Reaction reaction in step.Reactions)
        {
            Add(truss.Joints[reaction.Joint], reaction.Right, reaction.Up);
        }

        foreach (int m in section.Cut)
        {
            int from = truss.FromJoint(m), to = truss.ToJoint(m);
            bool fromIsBare = section.LeftJoints.Contains(from) != step.LoadIsLeft;
            (Joint near, Joint far) = fromIsBare ? (truss.Joints[from], truss.Joints[to]) : (truss.Joints[to], truss.Joints[from]);
            double dx = far.X - near.X, dy = far.Y - near.Y, length = Math.Sqrt((dx * dx) + (dy * dy)), force = lines.Members[m].Line.Ordinates[step.PanelPoint];
            Add(near, force * dx / length, force * dy / length);
        }

        Assert.Equal(0, moment, 10 * size * Math.Max(1e-9, tolerance));
        Assert.Equal(0, across, 10 * Math.Max(1e-9, tolerance));
        Assert.Equal(lines.Members[member].Line.Ordinates[step.PanelPoint], step.Force, tolerance);
        Assert.Equal(step.Force, -step.Effect / step.Lever, tolerance);
    }

    private static InfluenceNarration Told(Truss truss, string member) => InfluenceNarration.Of(InfluenceLines.Of(truss).Value!, truss.FindMember(member)!.Value);
}
