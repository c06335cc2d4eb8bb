using CsCheck;

namespace SpanRater.Tests;

/// <summary>
/// How ratings must follow what was found, on random determinate trusses of riveted double angles: without rods, and with loss on both faces
/// alike, so that no centroid moves.
/// </summary>
public class FindingProperties
{
    private const int Cases = 40;

    private const double Inch = 0.0254, Foot = 0.3048, Ksi = 6_894_757.293168361;

    private static readonly Vehicle Truck = new(
        "truck", VehicleClass.Legal, new AxleTrain([70_000, 75_000, 75_000], [AxleGap.Fixed(15 * Foot), AxleGap.Fixed(4 * Foot)]), Vehicle.StandardGauge, "made up for the test");

    [Fact]
    public void Factor_AsLossGrows_NeverRises() => SeededCases.Check(Given(), Cases, c =>
    {
        double? last = double.PositiveInfinity;
        foreach (double part in (double[])[1.0, 0.9, 0.75, 0.5])
        {
            BridgeRating rating = Rated(c.Bridge(Loss(c.Thickness, part), null), c.Method);
            double lowest = rating.MemberRows.Where(r => r.MemberIndex == c.Member && r.Factor is not null).Min(r => r.Factor) ?? double.PositiveInfinity;
            Assert.True(lowest <= last + 1e-12, $"{lowest:R} with {part} of the thickness, {last:R} with more.");
            last = lowest;
        }
    });

    [Fact]
    public void Findings_Swapped_SwapTheResultsOfTheTrusses() => SeededCases.Check(Given(), Cases, c =>
    {
        Observation[] one = Loss(c.Thickness, 0.8), other = Loss(c.Thickness, 0.6);
        MemberRow[] here = Of(c.Bridge(one, other), c.Method), there = Of(c.Bridge(other, one), c.Method);

        foreach (string truss in (string[])["left", "right"])
        {
            string opposite = truss == "left" ? "right" : "left";
            Assert.Equal(here.Where(r => r.Truss == truss).Select(r => (r.Status, r.Factor)), there.Where(r => r.Truss == opposite).Select(r => (r.Status, r.Factor)));
        }

        Assert.Contains(here, r => r is { Truss: "left", Factor: not null });
    });

    [Fact]
    public void Findings_ThatFindNothingLost_ChangeNothing() => SeededCases.Check(Given(), Cases, c =>
    {
        MemberRow[] bare = Of(c.Bridge([], null), c.Method), seen = Of(c.Bridge(Loss(c.Thickness, 1), null), c.Method);
        Assert.Equal(bare.Select(r => (r.Status, r.Capacity, r.Factor)), seen.Select(r => (r.Status, r.Capacity, r.Factor)));
    });

    [Fact]
    public void Capacity_AsTheMemberGrowsLonger_NeverRises() => SeededCases.Check(Given(), Cases, c =>
    {
        RatingMethod method = RatingMethod.Find(c.Method)!;
        MemberMake make = c.MakeOf(Loss(c.Thickness, 0.8), 1);
        double last = double.PositiveInfinity;
        foreach (double length in (double[])[0.5, 1, 2, 4, 6, 9])
        {
            MemberMake longer = make with { InPlaneLength = length, OutOfPlaneLength = length };
            double value = MemberCapacity.Of(longer, Sense.Compression, method.StrengthsAt(method.LevelsOf(VehicleClass.Legal, new RatingSettings())[0])!, Condition.Fair).Resistance!.Value;
            Assert.True(value <= last * (1 + 1e-12), $"{value:R} N at {length} m, {last:R} N when shorter.");
            last = value;
        }
    });

    // A bow adds a moment, and in neither sense does it strengthen.
    [Fact]
    public void Capacity_AsABowGrows_NeverRises() => SeededCases.Check(Given(), Cases, c =>
    {
        RatingMethod method = RatingMethod.Find(c.Method)!;
        StrengthRules rules = method.StrengthsAt(method.LevelsOf(VehicleClass.Legal, new RatingSettings())[0])!;
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            double last = MemberCapacity.Of(c.MakeOf([], 3), sense, rules, null).Resistance!.Value;
            foreach (double bow in (double[])[0.002, 0.01, 0.04])
            {
                double value = MemberCapacity.Of(c.MakeOf([new Observation.Bow(bow, InPlane: null)], 3), sense, rules, null).Resistance!.Value;
                Assert.True(value < last, $"{sense}: {value:R} N with a bow of {bow} m, {last:R} N with less.");
                last = value;
            }
        }
    });

    private static MemberRow[] Of(Bridge bridge, string method) => [.. Rated(bridge, method).MemberRows.OrderBy(r => r.MemberIndex).ThenBy(r => r.Sense).ThenBy(r => r.Level.Name)];

    private static BridgeRating Rated(Bridge bridge, string method) => BridgeRater.Rate(bridge, RatingMethod.Find(method)!, [Truck]).Value!;

    private static Observation[] Loss(double thickness, double part) =>
        [new Observation.Remaining(ShapeDimension.Thickness, part * thickness) { Place = "mid", Part = "angles" }];

    private static Gen<Case> Given() =>
        from form in RandomTrusses.Forms()
        let truss = form.Build()
        from member in Gen.Int[0, truss.Members.Count - 1]
        from leg in Gen.Double[2.5, 6]
        from thickness in Gen.Double[0.25, 0.6]
        from method in Gen.Int[0, 2].Select(i => RatingMethod.All[i].Name)
        select new Case(truss, member, leg * Inch, thickness * Inch, method);

    private sealed record Case(Truss Truss, int Member, double Leg, double Thickness, string Method)
    {
        public Bridge Bridge(IReadOnlyList<Observation> left, IReadOnlyList<Observation>? right)
        {
            MemberMake?[] Makes(IReadOnlyList<Observation> seen) => [.. Truss.Members.Select((m, i) => MakeOf(i == Member ? seen : [], LengthOf(m)))];
            string[] points = [.. Truss.Joints.Where(j => j.IsPanelPoint).Select(j => j.Name)];
            return new Bridge(
                "random",
                1930,
                Truss,
                new Deck { TrussShare = 0.6 },
                new RatingSettings { Condition = Condition.Fair },
                [new LoadCase(SpanRater.Bridge.ComponentsCase, [.. points.Select(p => new JointLoad(p, 0, -4_000))])],
                [.. Truss.Members.Select(_ => GivenCapacities.None)])
            { Makes = Makes(left), RightMakes = right is null ? null : Makes(right) };
        }

        public MemberMake MakeOf(IReadOnlyList<Observation> seen, double length)
        {
            SectionShape angle = SectionShape.Create(
                ShapeKind.Angle, new Dictionary<ShapeDimension, double> { [ShapeDimension.Depth] = Leg, [ShapeDimension.Width] = Leg, [ShapeDimension.Thickness] = Thickness }).Shape!;
            IReadOnlyList<PiecePlacement> places = new PieceArrangement.Backs(BacksOut: false, 0.3 * Inch, null).Placements(angle, 2, 0, 0, 0, false)!;
            var section = new MemberSection("angles", [new SectionPart("angles", [.. places.Select(p => new SectionPiece(angle, p))]) { Holes = new HolePath(1, 0.8 * Inch, []) }]);
            return new MemberMake
            {
                Section = FoundSection.Create(section, seen).Section!,
                Material = new MetalMaterial("steel", MaterialKind.Steel, MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.Steel, 1930)!, 1930), null, 1930),
                Ends = EndFastening.Riveted,
                InPlaneLength = length,
                OutOfPlaneLength = length,
                ShearLag = 0.85,
                Binding = new Binding.Stitched(20 * Inch, BuiltUpConnection.Riveted),
            };
        }

        private double LengthOf(Member member)
        {
            (Joint from, Joint to) = (Truss.Joints[Truss.FindJoint(member.From)!.Value], Truss.Joints[Truss.FindJoint(member.To)!.Value]);
            return double.Hypot(to.X - from.X, to.Y - from.Y);
        }
    }
}
