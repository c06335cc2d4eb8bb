namespace SpanRater.Tests;

/// <summary>Shapes, built-up sections and sections as found, small enough to check by hand; lengths in the unit that makes the figures round.</summary>
public class SectionTests
{
    private static readonly SectionShape Plate = SectionsByHand.Shape(ShapeKind.Plate, (ShapeDimension.Width, 12), (ShapeDimension.Thickness, 2));
    private static readonly SectionShape Web = SectionsByHand.Shape(ShapeKind.StandingPlate, (ShapeDimension.Depth, 10), (ShapeDimension.Thickness, 1));
    private static readonly SectionShape Eyebar = SectionsByHand.Shape(ShapeKind.Eyebar, (ShapeDimension.Width, 4), (ShapeDimension.Thickness, 1));

    [Fact]
    public void Properties_OfAPlateThatLies_AreBHCubedOverTwelve()
    {
        SectionProperties p = Plate.Properties;
        Assert.Equal((24.0, 12 * 8 / 12.0, 2 * 1728 / 12.0), (p.Area, p.Ix, p.Iy));
        Assert.Equal((-6.0, 6.0, -1.0, 1.0, 8.0, 48.0), (p.Left, p.Right, p.Bottom, p.Top, p.TopModulus, p.RightModulus));
    }

    [Fact]
    public void Properties_OfRoundBarAndPipe_AreThoseOfCircles()
    {
        SectionProperties bar = SectionsByHand.Shape(ShapeKind.RoundBar, (ShapeDimension.Diameter, 2)).Properties;
        Assert.Equal(Math.PI, bar.Area, 1e-12);
        Assert.Equal(0.5, bar.Rx, 1e-12);
        SectionProperties pipe = SectionsByHand.Shape(ShapeKind.Pipe, (ShapeDimension.Diameter, 4), (ShapeDimension.Thickness, 1)).Properties;
        Assert.Equal(3 * Math.PI, pipe.Area, 1e-12);
        Assert.Equal(Math.PI * (256 - 16) / 64, pipe.Ix, 1e-12);
    }

    // I of 12 × 2 flanges on a 10 × 1 web: 2 (8 + 24 × 6²) + 1000/12.
    [Fact]
    public void Together_OfAWebAndTwoFlanges_IsASumByHand()
    {
        SectionProperties p = SectionsByHand.Section(
            SectionsByHand.Part("web", Web, new PiecePlacement(3, 7)),
            SectionsByHand.Part("flanges", Plate, new PiecePlacement(3, 1), new PiecePlacement(3, 13))).Properties!;
        Assert.Equal((58.0, 3.0, 7.0), (p.Area, p.X, p.Y));
        Assert.Equal((2 * (8 + (24 * 36))) + (1000 / 12.0), p.Ix, 1e-9);
        Assert.Equal((2 * 288) + (10 / 12.0), p.Iy, 1e-9);
        Assert.Equal((0.0, 14.0), (p.Bottom, p.Top));
    }

    // Four 4 × 4 × 1 angles on a 1-thick web, 22 over the flat legs: each angle 4 × 1 and 3 × 1, by rectangles.
    [Fact]
    public void Placements_OfFourAngles_AreMirroredBothWays()
    {
        SectionShape angle = SectionsByHand.Shape(ShapeKind.Angle, (ShapeDimension.Depth, 4), (ShapeDimension.Width, 4), (ShapeDimension.Thickness, 1));
        SectionProperties p = SectionsByHand.Section(SectionsByHand.Part("angles", angle, 4, new PieceArrangement.Backs(false, 1, 22))).Properties!;
        double ix = 4 * ((4 / 12.0) + (4 * 10.5 * 10.5) + (27 / 12.0) + (3 * 8.5 * 8.5));
        double iy = 4 * ((64 / 12.0) + (4 * 2.5 * 2.5) + (3 / 12.0) + 3);
        Assert.Equal((28.0, 0.0, 0.0), (p.Area, Math.Round(p.X, 12), Math.Round(p.Y, 12)));
        Assert.Equal(ix, p.Ix, 1e-9);
        Assert.Equal(iy, p.Iy, 1e-9);
        Assert.Equal(0, p.Ixy, 1e-9);
        Assert.Equal((-11.0, 11.0, -4.5, 4.5), (p.Bottom, p.Top, p.Left, p.Right));
    }

    [Fact]
    public void Placements_BacksOut_EndAtTheDistanceOverBacks()
    {
        SectionShape channel = SectionsByHand.Shape(ShapeKind.Channel, (ShapeDimension.Depth, 8), (ShapeDimension.Width, 2.26), (ShapeDimension.Web, 0.22), (ShapeDimension.Flange, 0.39));
        SectionProperties p = SectionsByHand.Section(SectionsByHand.Part("channels", channel, 2, new PieceArrangement.Backs(true, 12, null))).Properties!;
        Assert.Equal((-6.0, 6.0), (p.Left, p.Right));
        double arm = 6 - channel.Properties.X;
        Assert.Equal(2 * (channel.Properties.Iy + (channel.Area * arm * arm)), p.Iy, 1e-9);
    }

    [Fact]
    public void Properties_WherePositionsAreNotGiven_AreNotThereAndTheAreaIs()
    {
        MemberSection section = SectionsByHand.Section(SectionsByHand.Part("bars", Eyebar, null, null));
        Assert.Null(section.Properties);
        Assert.Equal(["bars"], section.PartsNotPlaced);
        Assert.Equal(8, section.Area);
        Assert.NotNull(SectionsByHand.Section(SectionsByHand.Part("bar", Eyebar, (PiecePlacement?)null)).Properties);
    }

    [Fact]
    public void NetArea_WithoutHolesHeadOrThread_IsNotKnown()
    {
        MemberSection section = SectionsByHand.Section(SectionsByHand.Part("web", Web, new PiecePlacement(0, 0)) with { Holes = new HolePath(2, 1, [new(2, 4)]) }, SectionsByHand.Part("bar", Eyebar, new PiecePlacement(0, 9)));
        Assert.Null(section.NetArea);
        Assert.Equal(["bar"], section.PartsWithoutNetArea);
        Assert.Equal(10 - 2 + 0.25, section.Parts[0].NetArea!.Value, 1e-12);
    }

    [Fact]
    public void NetArea_OfEyebarAndRod_IsThatOfHeadAndThread()
    {
        SectionShape bar = SectionsByHand.Shape(ShapeKind.Eyebar, (ShapeDimension.Width, 4), (ShapeDimension.Thickness, 1), (ShapeDimension.HeadWidth, 9), (ShapeDimension.PinHole, 3));
        Assert.Equal(6, bar.OwnNetArea!.Value, 1e-12);
        SectionShape rod = SectionsByHand.Shape(ShapeKind.RoundBar, (ShapeDimension.Diameter, 1), (ShapeDimension.Root, 0.8));
        Assert.Equal(Math.PI * 0.16, rod.OwnNetArea!.Value, 1e-12);
    }

    [Fact]
    public void Create_SlackEyebars_CarryNothingAnywhere()
    {
        FoundSection found = SectionsByHand.Found(
            SectionsByHand.Section(SectionsByHand.Part("bars", Eyebar, null, null, null)),
            new Observation.Slack(1) { Part = "bars" }, new Observation.Remaining(ShapeDimension.Thickness, 0.75) { Place = "L1", Part = "bars", Piece = 3, Doubt = 0.25 });
        Assert.Equal((12.0, 8.0), (found.AsBuilt.Area, found.AllAlong.Area));
        Assert.Equal((7.0, 6.0), (found.Cuts[0].AsRead.Area, found.Cuts[0].Least.Area));
        Assert.Equal(2, found.Cuts[0].Observations.Count);
    }

    // Two bars of 4, one wasted to 3: which is slack is not known, so the sound one.
    [Fact]
    public void Create_SlackWithoutSayingWhich_LeavesTheLeast()
    {
        MemberSection pair = SectionsByHand.Section(SectionsByHand.Part("bars", Eyebar, null, null));
        Observation thin = new Observation.Remaining(ShapeDimension.Thickness, 0.75) { Place = "L1", Piece = 1 };
        Assert.Equal(3, SectionsByHand.Found(pair, new Observation.Slack(1), thin).Cuts[0].AsRead.Area);
        Assert.Equal(4, SectionsByHand.Found(pair, new Observation.Slack(1) { Piece = 1 }, thin).Cuts[0].AsRead.Area);
    }

    [Fact]
    public void Create_OneBarGoneAndOneSlack_LeavesNothing()
    {
        MemberSection pair = SectionsByHand.Section(SectionsByHand.Part("bars", Eyebar, null, null));
        Observation gone = new Observation.Gone { Place = "L1", Piece = 1 };
        Assert.Equal([new ObservationFault.NothingLeft(1)], FoundSection.Create(pair, [new Observation.Slack(1), gone]).Faults);
        Assert.Equal(4, SectionsByHand.Found(pair, new Observation.Slack(1) { Piece = 1 }, gone).Cuts[0].AsRead.Area);
    }

    [Fact]
    public void Create_DecayOfTheSameFaceTwice_IsToldTwice()
    {
        MemberSection post = SectionsByHand.Section(SectionsByHand.Part("post", SectionsByHand.Shape(ShapeKind.Timber, (ShapeDimension.Width, 8), (ShapeDimension.Depth, 10)), (PiecePlacement?)null));
        Observation Of(SectionFace? face) => new Observation.Decay(1, face) { Place = "foot" };
        Assert.Equal([new ObservationFault.ToldTwice(1, 0)], FoundSection.Create(post, [Of(SectionFace.Left), Of(SectionFace.Left)]).Faults);
        Assert.Equal([new ObservationFault.ToldTwice(1, 0)], FoundSection.Create(post, [Of(null), Of(SectionFace.Top)]).Faults);
        Assert.Equal(60, SectionsByHand.Found(post, Of(SectionFace.Left), Of(SectionFace.Right)).Cuts[0].AsRead.Area, 1e-12);
    }

    // Half of the web's thickness goes from one side: 10 × 0.5, its middle 0.25 to the other side.
    [Fact]
    public void Create_LossOnOneFace_MovesTheCentroidAway()
    {
        MemberSection web = SectionsByHand.Section(SectionsByHand.Part("web", Web, new PiecePlacement(0, 0)));
        FoundCut left = SectionsByHand.Found(web, new Observation.Remaining(ShapeDimension.Thickness, 0.5, SectionFace.Left) { Place = "mid" }).Cuts[0];
        FoundCut even = SectionsByHand.Found(web, new Observation.Remaining(ShapeDimension.Thickness, 0.5) { Place = "mid" }).Cuts[0];
        Assert.Equal((0.25, 0.0), (left.ShiftX!.Value, even.ShiftX!.Value));
        Assert.Equal(5, left.AsRead.Area, 1e-12);
    }

    // As drawn the back of an angle looks left; mirrored it looks right.
    [Fact]
    public void Create_LossOnAFaceOfAMirroredPiece_IsOnThatSideOfTheSection()
    {
        SectionShape angle = SectionsByHand.Shape(ShapeKind.Angle, (ShapeDimension.Depth, 4), (ShapeDimension.Width, 4), (ShapeDimension.Thickness, 1));
        MemberSection pair = SectionsByHand.Section(SectionsByHand.Part("angles", angle, 2, new PieceArrangement.Backs(false, 2, null)));
        FoundCut cut = SectionsByHand.Found(pair, new Observation.Remaining(ShapeDimension.UprightLeg, 0.5, SectionFace.Left) { Place = "mid" }).Cuts[0];
        Assert.True(cut.ShiftX > 0);
        Assert.Equal(14 - (3 * 0.5) - 2, cut.AsRead.Area, 1e-12);
        Assert.Equal(-5, cut.AsRead.Properties!.Left, 1e-12);
    }

    [Fact]
    public void Create_DecayOfEachFace_LeavesTheSoundMiddle()
    {
        SectionShape timber = SectionsByHand.Shape(ShapeKind.Timber, (ShapeDimension.Width, 8), (ShapeDimension.Depth, 10));
        MemberSection section = SectionsByHand.Section(SectionsByHand.Part("post", timber, (PiecePlacement?)null));
        FoundCut all = SectionsByHand.Found(section, new Observation.Decay(1, null) { Place = "foot" }).Cuts[0];
        Assert.Equal((48.0, 6 * 512 / 12.0), (all.AsRead.Area, Math.Round(all.AsRead.Properties!.Ix, 9)));
        FoundCut top = SectionsByHand.Found(section, new Observation.Decay(2, SectionFace.Top) { Place = "foot" }).Cuts[0];
        Assert.Equal((64.0, -1.0), (top.AsRead.Area, Math.Round(top.ShiftY!.Value, 12)));
    }

    [Fact]
    public void Create_AHoleInTheMiddleOfAWall_TakesItsRectangle()
    {
        MemberSection web = SectionsByHand.Section(SectionsByHand.Part("web", Web, (PiecePlacement?)null));
        SectionProperties p = SectionsByHand.Found(web, new Observation.Hole(null, 1, 2) { Place = "mid" }).Cuts[0].AsRead.Properties!;
        Assert.Equal(8, p.Area, 1e-12);
        Assert.Equal((1000 - 8) / 12.0, p.Ix, 1e-9);
        Assert.Equal(10, p.Top - p.Bottom);
    }

    [Fact]
    public void Create_GoneAtOnePlaceAndThinAtAnother_AreTwoCuts()
    {
        FoundSection found = SectionsByHand.Found(
            SectionsByHand.Section(SectionsByHand.Part("web", Web, new PiecePlacement(0, 0)), SectionsByHand.Part("cover", Plate, new PiecePlacement(0, 6))),
            new Observation.Gone { Place = "a", Part = "cover" }, new Observation.Remaining(ShapeDimension.Thickness, 1) { Place = "b", Part = "cover" });
        Assert.Equal(["a", "b"], found.Cuts.Select(c => c.Place));
        Assert.Equal([10.0, 22.0], found.Cuts.Select(c => c.AsRead.Area));
        Assert.Equal(-(24 * 6) / 34.0, found.Cuts[0].ShiftY!.Value, 1e-12);
    }

    // Published 4.75 in² where the outline gives 4.75: lowered in the ratio of the outlines.
    [Fact]
    public void Create_ATableShapeThinned_IsLoweredInTheRatioOfItsOutlines()
    {
        SectionShape channel = ShapeTable.Find("c 8 × 11.5")!.Shape;
        SectionShape drawn = SectionsByHand.Shape(ShapeKind.Channel, [.. channel.Kind.Needed.Select(d => (d, channel[d]!.Value))]);
        Observation thin = new Observation.Remaining(ShapeDimension.Web, channel[ShapeDimension.Web]!.Value / 2) { Place = "mid" };
        MemberSection Of(SectionShape shape) => SectionsByHand.Section(SectionsByHand.Part("c", shape, (PiecePlacement?)null));
        SectionProperties table = SectionsByHand.Found(Of(channel), thin).Cuts[0].AsRead.Properties!, outline = SectionsByHand.Found(Of(drawn), thin).Cuts[0].AsRead.Properties!;
        Assert.Equal(outline.Area / drawn.Area, table.Area / channel.Area, 1e-12);
        Assert.Equal(outline.Ix / drawn.Properties.Ix, table.Ix / channel.Properties.Ix, 1e-12);
        Assert.Equal(outline.X - drawn.Properties.X, table.X - channel.Properties.X, 1e-12);
    }

    [Fact]
    public void Create_BowCrackAndPackRust_AreKeptAndMakeNoCut()
    {
        FoundSection found = SectionsByHand.Found(
            SectionsByHand.Section(SectionsByHand.Part("web", Web, (PiecePlacement?)null)),
            new Observation.Bow(0.5, false), new Observation.Crack { Part = "web" }, new Observation.PackRust());
        Assert.Empty(found.Cuts);
        Assert.Equal((1, 1, 1), (found.Bows.Count(), found.Cracks.Count(), found.PackRust.Count()));
    }

    [Fact]
    public void HolePath_WithAsManyStaggersAsHoles_IsABugOfTheCaller() =>
        Assert.Equal("staggers", Assert.Throws<ArgumentException>(() => new HolePath(1, 1, [new(1, 1)])).ParamName);

    [Fact]
    public void Together_OfNothing_IsABugOfTheCaller() =>
        Assert.Equal("parts", Assert.Throws<ArgumentException>(() => SectionProperties.Together([])).ParamName);
}
