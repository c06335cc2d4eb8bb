namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The invented Tansy Weir footbridge: pony Warren with verticals, 18 m in six panels of 3 m, 1.8 m deep, trusses 2.4 m
/// apart, deck 2.0 m wide. Our own regression anchors, computed independently by an elimination solver, not published.
/// </summary>
public class TansyWeirTests
{
    /// <summary>A crowd of 4.5 kN/m² on half of a deck 2.0 m wide [N/m].</summary>
    private const double Crowd = 4500;

    /// <summary>Half the second decimal [kN].</summary>
    private const double Tolerance = 0.005 + 1e-9;

    private static readonly SolvedTruss Truss = ParallelChordTruss.WarrenWithVerticals(6, 3, 1.8);

    /// <summary>EN 1991-2:2003, 5.6.3 (from memory): vehicle of 80 and 40 kN, 3.0 m apart.</summary>
    private static readonly AxleTrain ServiceVehicle = PublishedVehicles.Train("EN service vehicle");

    [Theory]
    [InlineData("L2L3", 101.25)]
    [InlineData("U1U2", -90.00)]
    [InlineData("U1L2", 39.36)]
    [InlineData("L2U3", -13.12)]
    [InlineData("L2U2", 0)]
    public void Force_CrowdOnTheWholeDeck_IsTheAnchor(string member, double kilonewtons)
    {
        InfluenceLine line = Truss.Line(member);

        Assert.Equal(kilonewtons, Crowd * (line.Area(Sense.Tension) + line.Area(Sense.Compression)) / 1000, Tolerance);
        Assert.Equal(kilonewtons, Truss.Force(member, CrowdOnThePanelPoints()) / 1000, Tolerance);
    }

    // L2U3 in tension is 10.496 kN; the anchor was first noted as 10.49, its digits cut off and not rounded. The closed form
    // below bears out the rounded value.
    [Theory]
    [InlineData("U1L2", Sense.Tension, 41.98)]
    [InlineData("L2U3", Sense.Compression, -23.62)]
    [InlineData("L2U3", Sense.Tension, 10.50)]
    public void Force_CrowdWhereItDoesMost_IsTheAnchor(string member, Sense sense, double kilonewtons) =>
        Assert.Equal(kilonewtons, Crowd * Truss.Line(member).Area(sense) / 1000, Tolerance);

    // Method of sections: shear of the panel over the sine of its diagonal, on a triangle that ends at the neutral point.
    // U1L2 has 4/6 under L2 and 14.4 m; L2U3 has 3/6 under L3 on 10.8 m and 2/6 under L2 on 7.2 m.
    [Theory]
    [InlineData("U1L2", Sense.Tension, 4 / 6.0, 14.4)]
    [InlineData("L2U3", Sense.Compression, -3 / 6.0, 10.8)]
    [InlineData("L2U3", Sense.Tension, 2 / 6.0, 7.2)]
    public void Area_OfADiagonal_IsTheTriangleOfThePanelShear(string member, Sense sense, double shear, double length)
    {
        double sine = 1.8 / Math.Sqrt((3 * 3) + (1.8 * 1.8));

        Assert.Equal(shear / sine * length / 2, Truss.Line(member).Area(sense), 1e-9);
    }

    // EN 1991-2:2003, 5.3.2.1 (from memory): 2.0 + 120/(L + 30), between 2.5 and 5.0 kN/m², L the loaded length.
    [Theory]
    [InlineData("U1L2", Sense.Tension, 14.4, 4.70, 43.87)]
    [InlineData("L2U3", Sense.Compression, 10.8, 4.94, -25.93)]
    [InlineData("L2U3", Sense.Tension, 7.2, 5.00, 11.66)]
    [InlineData("L1U1", Sense.Tension, 6.0, 5.00, 15.00)]
    public void Force_CrowdByLoadedLength_IsTheAnchor(string member, Sense sense, double loadedLength, double crowd, double kilonewtons)
    {
        InfluenceLine line = Truss.Line(member);
        double length = line.Regions(sense).Sum(r => r.Length);
        double q = Math.Clamp(2.0 + (120 / (length + 30)), 2.5, 5.0);

        Assert.Equal(loadedLength, length, 1e-9);
        Assert.Equal(crowd, q, 0.005);
        Assert.Equal(kilonewtons, q * line.Area(sense), Tolerance);
    }

    [Fact]
    public void Ordinates_OfAVerticalOverAnUnloadedCrossing_AreZero()
    {
        Assert.All(Truss.Line("L2U2").Ordinates, y => Assert.Equal(0, y));
        Assert.All(Truss.Line("L4U4").Ordinates, y => Assert.Equal(0, y));
    }

    [Fact]
    public void Area_OfTheMiddleLowerChord_IsTheSimpleMomentOverTheDepth()
    {
        // Method of sections about U3: a b / (2 h) with a = b = 9 m and h = 1.8 m.
        Assert.Equal(22.5, 9 * 9 / (2 * 1.8), 1e-12);
        Assert.Equal(22.5, Truss.Line("L2L3").Area(Sense.Tension), 1e-9);
    }

    [Theory]
    [InlineData("L2L3", 266.7)]
    [InlineData("L1U1", 80.0)]
    public void PeaksOf_TheServiceVehicle_AreTheAnchor(string member, double kilonewtons) =>
        Assert.Equal(kilonewtons, Truss.Peaks(member, ServiceVehicle).Tension!.Force / 1000, 0.05);

    // Wheels 0.3 and 1.6 m from the truss: (2.1 + 0.8) / (2 x 2.4).
    [Fact]
    public void Share_OfTheServiceVehicleAtTheKerb_IsTheAnchor()
    {
        var deck = new Deck { TrussSpacing = 2.4, Roadway = 2.0, WheelToKerb = 0.1 };

        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.Share(deck, 1.3, 1, _ => 1));

        Assert.Equal((2.1 + 0.8) / (2 * 2.4), found.Left.Value, 1e-12);
        Assert.Equal(0.604, found.Left.Value, 0.0005);
    }

    // The second route: the crowd gathered at the panel points, one panel's worth each, half of it at the ends.
    private static IEnumerable<(string Joint, double Down)> CrowdOnThePanelPoints() =>
        Enumerable.Range(0, 7).Select(i => ($"L{i}", Crowd * (i is 0 or 6 ? 1.5 : 3.0)));
}
