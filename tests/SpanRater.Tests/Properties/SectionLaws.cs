using CsCheck;

namespace SpanRater.Tests;

/// <summary>Random sections: what does not depend on the axes, and strips summed in place of the integrals.</summary>
public class SectionLaws
{
    private const int Cases = 300;

    private static readonly Gen<SectionShape> Shapes =
        from kind in Gen.Int[0, ShapeKind.All.Count - 1]
        from depth in Gen.Double[0.1, 0.6]
        from width in Gen.Double[0.3, 1]
        from wall in Gen.Double[0.05, 0.15]
        from flange in Gen.Double[0.1, 0.15]
        select Of(ShapeKind.All[kind], depth, depth * width, depth * width * wall, depth * width * flange);

    private static readonly Gen<PiecePlacement> Places =
        from x in Gen.Double[-1, 1]
        from y in Gen.Double[-1, 1]
        from turned in Gen.Double[-200, 400]
        from mirrored in Gen.Bool
        from over in Gen.Bool
        select new PiecePlacement(x, y, turned, mirrored, over);

    private static readonly Gen<(SectionShape Shape, PiecePlacement Place)[]> Sections =
        (from shape in Shapes from place in Places select (shape, place)).Array[1, 5];

    [Fact]
    public void Together_WhereverTheOriginIs_HasTheSameMoments() =>
        SeededCases.Check(from parts in Sections from dx in Gen.Double[-9, 9] from dy in Gen.Double[-9, 9] select (parts, dx, dy), Cases, drawn =>
        {
            SectionProperties here = Properties(drawn.parts);
            SectionProperties there = Properties([.. drawn.parts.Select(p => (p.Shape, p.Place with { X = p.Place.X + drawn.dx, Y = p.Place.Y + drawn.dy }))]);
            Same(here.Moved(drawn.dx, drawn.dy), there);
        });

    [Fact]
    public void Together_TurnedByAQuarter_ExchangesItsAxes() =>
        SeededCases.Check(Sections, Cases, parts =>
        {
            SectionProperties here = Properties(parts);
            SectionProperties turned = Properties([.. parts.Select(p => (p.Shape, p.Place with { X = -p.Place.Y, Y = p.Place.X, Turned = p.Place.Turned + 90 }))]);
            Same(here.QuarterTurned(), turned);
            Assert.Equal(1, turned.Ix / here.Iy, 1e-9);
            Assert.Equal(1, turned.Iy / here.Ix, 1e-9);
            Assert.Equal(1, turned.LargestMoment / here.LargestMoment, 1e-9);
        });

    [Fact]
    public void Together_TurnedByAnyAngle_KeepsItsPrincipalMoments() =>
        SeededCases.Check(from shape in Shapes from place in Places select (shape, place), Cases, drawn =>
        {
            SectionProperties own = drawn.shape.Properties, turned = Properties([(drawn.shape, drawn.place)]);
            Assert.Equal(1, turned.LargestMoment / own.LargestMoment, 1e-9);
            Assert.Equal(1, turned.LeastMoment / own.LeastMoment, 1e-8);
            Assert.Equal(own.Area, turned.Area);

            // By the angle to the principal axis: I = (I1 + I2)/2 + (I1 − I2)/2 cos 2θ about the x axis.
            double twice = 2 * turned.PrincipalAngle * Math.PI / 180;
            Assert.Equal(turned.Ix, ((turned.LargestMoment + turned.LeastMoment) / 2) + ((turned.LargestMoment - turned.LeastMoment) / 2 * Math.Cos(twice)), 1e-12);
            Assert.Equal(turned.Ixy, -(turned.LargestMoment - turned.LeastMoment) / 2 * Math.Sin(twice), 1e-12);
        });

    // Second route: the outline of the placed piece itself, its corners turned, cut into fine strips along x and along y.
    [Fact]
    public void Placement_OfAPolygon_IsTheSumOfItsStrips() =>
        SeededCases.Check(from shape in Shapes where shape.Outline.Polygons.Count == 1 from place in Places select (shape, place), 60, drawn =>
        {
            SectionProperties placed = Properties([(drawn.shape, drawn.place)]);
            SectionPoint[] corners = [.. drawn.shape.Outline.Polygons[0].Select(drawn.place.Map)];
            (double area, double y, double ix) = Strips(corners);
            (double sameArea, double x, double iy) = Strips([.. corners.Select(c => new SectionPoint(c.Y, c.X))]);
            double size = Math.Max(placed.Right - placed.Left, placed.Top - placed.Bottom);
            Assert.Equal(1, area / placed.Area, 2e-3);
            Assert.Equal(1, sameArea / placed.Area, 2e-3);
            Assert.Equal(placed.X, x, 2e-3 * size);
            Assert.Equal(placed.Y, y, 2e-3 * size);
            Assert.Equal(placed.Ix, ix, 5e-3 * placed.LargestMoment);
            Assert.Equal(placed.Iy, iy, 5e-3 * placed.LargestMoment);
        });

    [Fact]
    public void Create_WhereNothingIsLost_ChangesNothing() =>
        SeededCases.Check(Sections, Cases, parts =>
        {
            MemberSection section = SectionOf(parts);
            Observation[] seen =
            [
                .. section.Parts.SelectMany(p => p.Pieces[0].Shape.Kind.CanBeLost.Where(d => Finest(p.Pieces[0].Shape, d) && p.Pieces[0].Shape[d] is not null)
                    .Select(d => new Observation.Remaining(d, p.Pieces[0].Shape[d]!.Value) { Place = "mid", Part = p.Name })),
            ];
            FoundCut cut = Assert.Single(SectionsByHand.Found(section, seen).Cuts);
            Same(section.Properties!, cut.AsRead.Properties!);
            Same(section.Properties!, cut.Least.Properties!);
            Assert.Equal(0, cut.ShiftX!.Value, 1e-12);
        });

    [Fact]
    public void Create_TheMoreIsLost_TheLessAreaIsLeft() =>
        SeededCases.Check(from parts in Sections from which in Gen.Int[0, 4] from part in Gen.Double[0.1, 0.95] select (parts, which, part), Cases, drawn =>
        {
            MemberSection section = SectionOf(drawn.parts);
            SectionPart worn = section.Parts[drawn.which % section.Parts.Count];
            SectionShape shape = worn.Pieces[0].Shape;
            ShapeDimension dimension = shape.Kind.CanBeLost.First(d => shape[d] is not null);
            MemberSection At(double part, double doubt) => SectionsByHand.Found(section, new Observation.Remaining(dimension, shape[dimension]!.Value * part) { Place = "mid", Part = worn.Name, Doubt = doubt }).Cuts[0].Least;
            double more = At(drawn.part, 0).Area, less = At(drawn.part * 0.9, 0).Area, doubted = At(drawn.part, shape[dimension]!.Value * drawn.part * 0.05).Area;
            Assert.True(less < more && more < section.Area && doubted < more, $"{less} {doubted} {more} {section.Area}");
        });

    private static bool Finest(SectionShape shape, ShapeDimension dimension) =>
        shape.Kind.FinerOf(dimension) is [var only] && only == dimension;

    private static SectionShape Of(ShapeKind kind, double depth, double width, double wall, double flange)
    {
        var dimensions = kind.Needed.ToDictionary(d => d, d => d switch
        {
            ShapeDimension.Depth or ShapeDimension.Diameter => depth,
            ShapeDimension.Width => width,
            ShapeDimension.Flange => flange,
            _ => wall,
        });
        return SectionsByHand.Shape(kind, [.. dimensions.Select(d => (d.Key, d.Value))]);
    }

    private static MemberSection SectionOf((SectionShape Shape, PiecePlacement Place)[] parts) =>
        SectionsByHand.Section([.. parts.Select((p, i) => SectionsByHand.Part($"{i}", p.Shape, p.Place))]);

    private static SectionProperties Properties((SectionShape Shape, PiecePlacement Place)[] parts) => SectionOf(parts).Properties!;

    private static void Same(SectionProperties one, SectionProperties other)
    {
        double scale = one.LargestMoment, size = Math.Max(one.Right - one.Left, one.Top - one.Bottom);
        Assert.Equal(1, one.Area / other.Area, 1e-12);
        Assert.All(((double, double)[])[(one.X, other.X), (one.Y, other.Y), (one.Left, other.Left), (one.Right, other.Right), (one.Bottom, other.Bottom), (one.Top, other.Top)],
            p => Assert.Equal(p.Item1, p.Item2, 1e-9 * (size + 9)));
        Assert.All(((double, double)[])[(one.Ix, other.Ix), (one.Iy, other.Iy), (one.Ixy, other.Ixy)], p => Assert.Equal(p.Item1, p.Item2, 1e-9 * scale));
    }

    // Area, y of the centroid and second moment about the axis through it, by strips of equal height; the polygon's sides are crossed an even number of times.
    private static (double Area, double Y, double Moment) Strips(SectionPoint[] corners)
    {
        const int Count = 20_000;
        double bottom = corners.Min(c => c.Y), height = (corners.Max(c => c.Y) - bottom) / Count;
        double area = 0, first = 0, second = 0;
        for (int i = 0; i < Count; i++)
        {
            double y = bottom + ((i + 0.5) * height);
            double[] crossings =
            [
                .. Enumerable.Range(0, corners.Length).Select(k => (From: corners[k], To: corners[(k + 1) % corners.Length]))
                    .Where(s => s.From.Y < y != s.To.Y < y).Select(s => s.From.X + ((s.To.X - s.From.X) * (y - s.From.Y) / (s.To.Y - s.From.Y))).Order(),
            ];
            double strip = height * Enumerable.Range(0, crossings.Length / 2).Sum(k => crossings[(2 * k) + 1] - crossings[2 * k]);
            (area, first, second) = (area + strip, first + (strip * y), second + (strip * y * y));
        }

        return (area, first / area, second - (first * first / area));
    }
}
