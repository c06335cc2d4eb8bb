namespace SpanRater.Tests.Published.StaticsIdentities;

/// <summary>
/// Closed forms of statics for simple trusses with parallel chords, load on the lower chord: a chord's line is a triangle
/// with apex a b / (L h) at the moment centre, a diagonal carries the shear of its panel over its sine, the arms of a K
/// half of it each. The values were computed from these forms, not printed in a book.
/// </summary>
public class TrussIdentityTests
{
    /// <summary>The values carry six decimals, the zero points and chord forces as many or fewer.</summary>
    private const double Tolerance = 1e-6;

    public static IEnumerable<TheoryDataRow<string, int, double, double, int, double>> PrattRows() =>
        Rows("pratt").Select(row =>
            new TheoryDataRow<string, int, double, double, int, double>(
                row["identity"], row.Whole("panels"), row.Number("panel"), row.Number("height"), row.Whole("joint"), row.Number("value"))
            {
                Label = row.Label($"{row["panels"]} x {row["panel"]} by {row["height"]}, {row["identity"]}, joint {row["joint"]}: {row["value"]}"),
            });

    public static IEnumerable<TheoryDataRow<int, double, double, int, int, double>> KRows() => LoadedAtOneJoint("k");

    public static IEnumerable<TheoryDataRow<int, double, double, int, int, double>> CrossedRows() => LoadedAtOneJoint("x");

    [Theory]
    [MemberData(nameof(PrattRows))]
    public void Line_OfAPrattTruss_FollowsTheClosedForm(string identity, int panels, double panel, double height, int joint, double value)
    {
        SolvedTruss truss = ParallelChordTruss.Pratt(panels, panel, height);
        string diagonal = $"U{joint - 1}L{joint}", upper = $"U{joint - 1}U{joint}", lower = $"L{joint}L{joint + 1}";
        double actual = identity switch
        {
            "top chord peak" => truss.Line(upper).Ordinates.Min(),
            "bottom chord peak" => truss.Line(lower).Ordinates.Max(),
            "full uniform chord force" => truss.Line(lower).Area(Sense.Tension) + truss.Line(lower).Area(Sense.Compression),
            "diagonal max ordinate" => truss.Line(diagonal).Ordinates.Max(),
            "diagonal min ordinate" => truss.Line(diagonal).Ordinates.Min(),
            "diagonal zero point" => truss.Line(diagonal).NeutralPoints().Single(),
            "hanger peak" => truss.Line($"L{joint}U{joint}").Ordinates.Max(),
            "end post peak" => truss.Line("L0U1").Ordinates.Min(),
            "reaction IL" => truss.Reaction("L0 up").OrdinateAt(joint * panel),
            _ => throw new ArgumentOutOfRangeException(nameof(identity), identity, "No such closed form."),
        };

        Assert.Equal(value, actual, Tolerance);
    }

    // The arm that falls toward midspan is pulled by a positive shear, the one that rises is pressed as much.
    [Theory]
    [MemberData(nameof(KRows))]
    public void Arms_OfAKPanel_CarryHalfTheShearEach(int panels, double panel, double height, int joint, int loadAt, double value)
    {
        SolvedTruss truss = ParallelChordTruss.K(panels, panel, height);

        Assert.Equal(value, truss.Line($"M{joint - 1}L{joint}").OrdinateAt(loadAt * panel), Tolerance);
        Assert.Equal(-value, truss.Line($"M{joint - 1}U{joint}").OrdinateAt(loadAt * panel), Tolerance);
    }

    // A panel crossed by two rods that only pull is two determinate trusses, of which the shear chooses one: that with the
    // main where the shear is positive, that with the counter where it is negative. The rod chosen must be pulled by the
    // published force, and the other, were it there instead, pressed: so it is slack.
    [Theory]
    [MemberData(nameof(CrossedRows))]
    public void ActiveRod_OfACrossedPanel_CarriesTheShearAlone(int panels, double panel, double height, int joint, int loadAt, double value)
    {
        double withMain = ParallelChordTruss.Pratt(panels, panel, height)
            .Line($"U{joint - 1}L{joint}").OrdinateAt(loadAt * panel);
        double withCounter = ParallelChordTruss.PrattWithCounter(panels, panel, height, joint)
            .Line($"L{joint - 1}U{joint}").OrdinateAt(loadAt * panel);
        bool shearIsPositive = loadAt >= joint;

        Assert.Equal(value, shearIsPositive ? withMain : withCounter, Tolerance);
        Assert.Equal(-value, shearIsPositive ? withCounter : withMain, Tolerance);
    }

    private static IEnumerable<PublishedRow> Rows(string web) =>
        PublishedTable.Read("StaticsIdentities/identities.csv").Where(row => row["web"] == web);

    private static IEnumerable<TheoryDataRow<int, double, double, int, int, double>> LoadedAtOneJoint(string web) =>
        Rows(web).Select(row =>
            new TheoryDataRow<int, double, double, int, int, double>(
                row.Whole("panels"),
                row.Number("panel"),
                row.Number("height"),
                row.Whole("joint"),
                row.Whole("load_at"),
                row.Number("value"))
            {
                Label = row.Label($"{row["panels"]} x {row["panel"]} by {row["height"]}, {row["identity"]}, joint {row["joint"]}, load at {row["load_at"]}: {row["value"]}"),
            });
}
