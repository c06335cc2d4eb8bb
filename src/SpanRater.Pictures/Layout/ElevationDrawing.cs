using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>A drawing of a truss seen from the side, and the names that did not fit at their members.</summary>
/// <param name="Drawing">The drawing.</param>
/// <param name="View">Its view.</param>
/// <param name="Key">Number at the member and what it stands for; empty where every label fits.</param>
internal sealed record Elevation(Drawing Drawing, View View, IReadOnlyList<string> Key);

/// <summary>Draws a truss seen from the side, in equal scale both ways.</summary>
internal sealed class ElevationDrawing
{
    private const double TallestTruss = 470;
    private const double JointSize = 15;
    private const double Beside = 64;

    private readonly List<DrawingPart> parts = [];
    private readonly List<string> key = [];
    private readonly Crowding crowding = new();

    /// <summary>The truss.</summary>
    public required Truss Truss { get; init; }

    /// <summary>Units shown.</summary>
    public required DisplayUnits Units { get; init; }

    /// <summary>Width of the drawing [px].</summary>
    public required double Width { get; init; }

    /// <summary>How each member is drawn.</summary>
    public Func<int, LineStyle> StyleOf { get; init; } = _ => new LineStyle(Ink.Black, 2.4);

    /// <summary>What is written at each member; empty for nothing.</summary>
    public Func<int, string> LabelOf { get; init; } = _ => "";

    /// <summary>True when dimensions are drawn.</summary>
    public bool Dimensioned { get; init; }

    /// <summary>A reaction to be pointed out: joint and direction; null for none.</summary>
    public (int Joint, double Right, double Up)? Reaction { get; init; }

    /// <summary>The axles that stand on the deck; empty for none.</summary>
    public IReadOnlyList<AxleEffect> Axles { get; init; } = [];

    /// <summary>A displaced truss drawn over this one; null for none.</summary>
    public DisplacedTruss? Displaced { get; init; }

    /// <summary>How far the deck rises and sinks, drawn over it; null where that is not shown.</summary>
    public DeckMovement? DeckMovement { get; init; }

    /// <summary>Weights on joints; empty for none.</summary>
    public IReadOnlyList<JointLoad> Loads { get; init; } = [];

    /// <summary>Draws it.</summary>
    public Elevation Draw()
    {
        DrawingPoint[] shown = [.. Truss.Joints.Select(At), .. Displaced?.Joints ?? []];
        double left = shown.Min(j => j.X), right = shown.Max(j => j.X);
        double bottom = shown.Min(j => j.Y), top = shown.Max(j => j.Y);
        double beside = Beside + (Dimensioned ? Dimensions.Beside : 0);
        double room = Width - Beside - beside;
        double scale = Math.Min(right > left ? room / (right - left) : double.MaxValue, top > bottom ? TallestTruss / (top - bottom) : double.MaxValue);
        double below = SupportSymbol.Depth + (Dimensioned ? Dimensions.Below : 0);
        double deckTop = Axles.Count == 0 ? 0 : ((DeckLine.HeightOf(Truss) - top) * scale) + AxleArrows.Height;
        bool loadedAbove = Loads.Any(l => LoadArrows.IsAbove(Truss.Joints[Truss.FindJoint(l.Joint)!.Value], Truss));
        double above = Math.Max(loadedAbove ? LoadArrows.Above : Reaction is null ? 38 : 60, deckTop);

        var view = new View(
            left - ((Beside + ((room - ((right - left) * scale)) / 2)) / scale),
            bottom - (below / scale),
            scale,
            scale);
        double height = below + ((top - bottom) * scale) + above;

        parts.AddRange(DeckLine.Of(Truss, view, Axles.Count > 0));
        DrawMembers(view);
        foreach (Joint joint in Truss.Joints.Where(j => j.Support is not null))
        {
            parts.AddRange(SupportSymbol.Of(joint, view, crowding));
        }

        if (Dimensioned)
        {
            parts.AddRange(Dimensions.Of(Truss, view, Units));
        }

        DrawReaction(view);
        parts.AddRange(DeckMovement?.Strip(view) ?? []);
        parts.AddRange(Displaced?.Parts(view, crowding) ?? []);
        parts.AddRange(DeckMovement?.Line(view, crowding) ?? []);
        MarkJoints(view);
        parts.AddRange(LoadArrows.Of(Loads, Truss, view, Units, crowding));
        parts.AddRange(AxleArrows.Of(Axles, Truss, view, Units, crowding));
        NameJoints(view);
        LabelMembers(view);
        return new Elevation(view.Drawing(Width, height, parts), view, key);
    }

    private static DrawingPoint At(Joint joint) => new(joint.X, joint.Y);

    private void DrawMembers(View view)
    {
        for (int m = 0; m < Truss.Members.Count; m++)
        {
            DrawingPoint from = At(Truss.Joints[Truss.FromJoint(m)]), to = At(Truss.Joints[Truss.ToJoint(m)]);
            LineStyle style = StyleOf(m);
            parts.Add(new Stroke(Truss.Members[m].Name, [from, to], style.Ink, style.Weight, style.Dash));
            crowding.Take(view.Pixels(from), view.Pixels(to), m);
        }
    }

    private void MarkJoints(View view)
    {
        foreach (Joint joint in Truss.Joints)
        {
            parts.Add(new Mark(joint.Name, At(joint), MarkShape.Circle, 9, Ink.Black, Filled: joint.IsPanelPoint));
            DrawingPoint at = view.Pixels(At(joint));
            crowding.Take(new Box(at.X, at.Y, 13, 13));
        }
    }

    private void NameJoints(View view)
    {
        double middle = (Truss.Joints.Min(j => j.Y) + Truss.Joints.Max(j => j.Y)) / 2;
        foreach (Joint joint in Truss.Joints)
        {
            DrawingPoint at = view.Pixels(At(joint));
            Box box = Box.Of(joint.Name, JointSize, at);
            int outward = joint.Y >= middle ? 1 : -1;
            (double Right, double Up)[] ways = [(0, outward), (-0.75, outward), (0.75, outward), (-1, 0), (1, 0), (-1, -outward), (1, -outward), (0, -outward)];
            Box chosen = crowding.Choose(
                from distance in (double[])[9, 14, 20]
                from way in ways
                select box with
                {
                    X = at.X + (way.Right * ((box.Width / 2) + distance)),
                    Y = at.Y + (way.Up * ((box.Height / 2) + distance)),
                });
            parts.Add(new Text(joint.Name, Back(chosen, view), joint.Name, JointSize, Ink.Black, OnPaper: Displaced is not null));
        }
    }

    // A label stands on its member, in a gap of the line, readable from below or from the right. Labels that would be longer
    // than their member are given a number instead, and the key says what it stands for.
    private void LabelMembers(View view)
    {
        for (int m = 0; m < Truss.Members.Count; m++)
        {
            string label = LabelOf(m);
            if (label.Length == 0)
            {
                continue;
            }

            DrawingPoint start = view.Pixels(At(Truss.Joints[Truss.FromJoint(m)])), end = view.Pixels(At(Truss.Joints[Truss.ToJoint(m)]));
            double length = double.Hypot(end.X - start.X, end.Y - start.Y);
            double angle = Math.Round(Math.Atan2(end.Y - start.Y, end.X - start.X) * 180 / Math.PI, 6);
            angle = angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle;
            double size = ((double[])[13.5, 12.5, 11.5, 10.5]).FirstOrDefault(s => Lettering.Width(label, s) + 30 <= length);
            if (size == 0)
            {
                string number = (key.Count + 1).ToString(CultureInfo.InvariantCulture);
                key.Add($"{number} = {label}");
                (label, size) = (number, 12);
            }

            Box box = Box.Of(label, size, start, angle);
            double room = Math.Max(0, 1 - ((box.Width + 22) / length)) / 2;
            Box chosen = crowding.Choose(
                from part in (double[])[0, -0.3, 0.3, -0.55, 0.55, -0.8, 0.8, -1, 1]
                let t = 0.5 + (part * room)
                select box with { X = start.X + (t * (end.X - start.X)), Y = start.Y + (t * (end.Y - start.Y)) },
                m);
            parts.Add(new Text(Truss.Members[m].Name, Back(chosen, view), label, size, Ink.Black, Angle: angle, OnPaper: true));
        }
    }

    private void DrawReaction(View view)
    {
        if (Reaction is not { } reaction)
        {
            return;
        }

        Joint joint = Truss.Joints[reaction.Joint];
        double dx = reaction.Right, dy = reaction.Up;

        // The arrow stands clear of the support's symbol: an upward one rises from the joint, one to the right leaves it.
        DrawingPoint From(double along, double across) => view.Moved(At(joint), (along * dx) - (across * dy), (along * dy) + (across * dx));
        parts.Add(new Stroke("reaction", [From(8, 0), From(42, 0)], Ink.Black, 4));
        parts.Add(new Area("reaction", [From(56, 0), From(40, 8), From(40, -8)], Ink.Black));
        crowding.Take(view.Pixels(From(8, 0)), view.Pixels(From(56, 0)));
    }

    private static DrawingPoint Back(Box box, View view) => new(view.Left + (box.X / view.ScaleX), view.Bottom + (box.Y / view.ScaleY));
}
