using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says how a truss that does not stand can move, why, and what would stop it; and what makes one that stands weak.</summary>
public static class MechanismWording
{
    /// <summary>A panel by its corners: L1-L2-U2-U1.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="truss">Its truss.</param>
    public static string Name(TrussPanel panel, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(truss);
        return string.Join('-', panel.Corners.Select(c => truss.Joints[c].Name));
    }

    /// <summary>One word for scripts.</summary>
    /// <param name="kind">The kind of movement.</param>
    public static string Kind(MovementKind kind) => kind switch
    {
        MovementKind.WholeTruss => "wholeTruss",
        MovementKind.LooseJoint => "looseJoint",
        MovementKind.Panels => "panels",
        _ => "pieces",
    };

    /// <summary>All there is to say: the count, what moves, how, and the mend.</summary>
    /// <param name="stability">The count and the rank, and what moves.</param>
    /// <param name="truss">The truss.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(Stability stability, Truss truss, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(stability);
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(units);
        string[] joints = [.. stability.MovingJoints.Select(j => truss.Joints[j].Name)];
        var sentences = new List<string>
        {
            $"Mechanism: {RefusalWording.Count(stability)}",
            $"{Counted("Joint", joints)} can move without any member changing its length.",
        };
        if (stability.ReactionCount < 3)
        {
            sentences.Add("Fewer than three reactions cannot hold a truss.");
        }

        if (stability.SupportFault is { } fault)
        {
            sentences.Add(Of(fault, truss, units));
        }

        Movement[] within = [.. stability.WaysToMove.Where(w => w.Kind != MovementKind.WholeTruss)];
        if (within.Length > 1)
        {
            sentences.Add(string.Create(CultureInfo.InvariantCulture, $"It can move in {stability.Movements} independent ways, and as many bars or reactions are missing."));
        }

        sentences.AddRange(within.Select(w => Of(w, truss)).Distinct());
        if (stability.Redundancy > 0)
        {
            sentences.Add(Deceived(stability, truss));
        }

        sentences.Add("No forces are given.");
        return string.Join(' ', sentences);
    }

    /// <summary>Why the supports cannot hold the truss, and the mend.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="truss">The truss.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(SupportFault fault, Truss truss, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(units);
        string[] names = [.. truss.Joints.Where(j => j.Support is not null).Select(j => j.Name)];
        string supports = $"support{(names.Length == 1 ? "" : "s")} at {Listed(names)}";
        return fault switch
        {
            SupportFault.Parallel { Up: 0 } => $"The reactions are all parallel, straight up ({supports}): the truss can slide to the right or the left. Make one of them a pin.",
            SupportFault.Parallel { Right: 0 } => $"The reactions are all parallel, level ({supports}): the truss can slide up or down. Add a support that holds it upward.",
            SupportFault.Parallel p => string.Create(
                CultureInfo.InvariantCulture,
                $"The reactions are all parallel ({supports}): the truss can slide along a line at {Math.Atan2(p.Up, p.Right) * 180 / Math.PI:0.#}° to the horizontal. Make one of them a pin, or turn a roller."),
            SupportFault.Concurrent c => $"All reactions pass through one point ({Place(c, truss, units)}; {supports}): the truss can turn about it. Add or turn a support, so that one reaction passes beside that point.",
            SupportFault.OneLine => $"All reactions act along one line ({supports}): the truss can slide across it and turn. Add a support beside that line and one across it.",
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "Every fault has a sentence."),
        };
    }

    /// <summary>How the truss moves in itself, and the mend.</summary>
    /// <param name="movement">The movement; not that of the whole truss.</param>
    /// <param name="truss">The truss.</param>
    public static string Of(Movement movement, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(truss);
        string bar = movement.Mends.Count == 0 ? "" : $", such as one from {Joint(movement.Mends[0].From)} to {Joint(movement.Mends[0].To)}";
        string[] panels = [.. movement.Panels.Select(p => Name(p, truss))];
        switch (movement.Kind)
        {
            case MovementKind.LooseJoint:
                int loose = movement.Joints[0];
                string[] bars =
                [
                    .. Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == loose || truss.ToJoint(m) == loose).Select(m => truss.Members[m].Name),
                    .. truss.Joints[loose].Support is null ? (string[])[] : ["its roller"],
                ];
                return bars.Length == 1
                    ? $"Joint {Joint(loose)} hangs on the one bar {bars[0]} and can swing: add a bar to it{bar}."
                    : $"Joint {Joint(loose)} is held by bars in one line ({Listed(bars)}), and nothing holds it square to them: add a bar to it{bar}.";
            case MovementKind.Panels when panels.Length == 1 && movement.Panels[0].Corners.Count == 4 && movement.Mends.Count > 0:
                return $"Panel {panels[0]} can sway: add its diagonal, {string.Join(" or ", movement.Mends.Select(m => $"{Joint(m.From)} to {Joint(m.To)}"))}.";
            case MovementKind.Panels when panels.Length == 1:
                return $"Panel {panels[0]} can change its shape: add a bar{bar}.";
            case MovementKind.Panels:
                return $"Panels {Listed(panels)} change their shape together: one bar stops them all{bar}.";
            default:
                return movement.Hinges.Count == 0
                    ? $"A piece with {Counted("joint", [.. Piece(movement.Joints[0], truss).Select(Joint)])} is loose from the rest: join it with more bars{bar}."
                    : $"Pieces of it turn against one another about {Counted("joint", [.. movement.Hinges.Select(Joint)])}: add a bar between them{bar}.";
        }

        string Joint(int joint) => truss.Joints[joint].Name;
    }

    /// <summary>What makes a truss that stands ill-conditioned.</summary>
    /// <param name="weak">The facts.</param>
    /// <param name="truss">The truss.</param>
    public static string Of(WeakGeometry weak, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(weak);
        ArgumentNullException.ThrowIfNull(truss);
        string[] members = [.. weak.Members.Select(m => truss.Members[m].Name)];
        string cause = members.Length > 8
            ? string.Create(CultureInfo.InvariantCulture, $"{members.Length} members share in it, so it is the whole truss, very slender for its length")
            : weak.OffLine < 0.02
                ? string.Create(CultureInfo.InvariantCulture, $"at joint {truss.Joints[weak.Joint].Name} the members meet within {weak.OffLine * 180 / Math.PI:0.####}° of one line; {Listed(members)} take the most")
                : $"it shows most at joint {truss.Joints[weak.Joint].Name} and in {Listed(members)}";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"warning: the geometry is near to a mechanism, condition number {weak.Condition:0.0e+0}, above {WeakGeometry.Limit:0e+0}: {cause}. A small slip of a coordinate there changes forces greatly: check x and y, or add a bar.");
    }

    // The joints that members join to one.
    private static SortedSet<int> Piece(int joint, Truss truss)
    {
        var piece = new SortedSet<int> { joint };
        while (Enumerable.Range(0, truss.Members.Count).FirstOrDefault(m => piece.Contains(truss.FromJoint(m)) != piece.Contains(truss.ToJoint(m)), -1) is var next and >= 0)
        {
            piece.Add(truss.FromJoint(next));
            piece.Add(truss.ToJoint(next));
        }

        return piece;
    }

    private static string Deceived(Stability s, Truss truss)
    {
        int unknowns = s.MemberCount + s.ReactionCount;
        string among = string.Join(", ", s.StressedMembers.Select(m => truss.Members[m].Name));
        string[] spare = [.. s.SparePanels.Select(p => Name(p, truss))];
        string[] wanting = [.. s.WaysToMove.SelectMany(w => w.Panels).Distinct().Select(p => Name(p, truss))];
        if (unknowns == s.EquationCount && spare.Length > 0 && s.StressedSupports.Count == 0 && wanting.Length > 0)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"The count is {unknowns} = {s.EquationCount}, but {Counted("panel", spare)} {(spare.Length == 1 ? "has a spare bar" : "have spare bars")} (one of {among}) and {Counted("panel", wanting)} {(wanting.Length == 1 ? "has" : "have")} none: the count is deceived, the rank is not.");
        }

        if (s.SupportFault is not null && s.StressedSupports.Count > 0)
        {
            return $"The supports at {Listed([.. s.StressedSupports.Select(j => truss.Joints[j].Name)])} only strain against one another: the count is deceived, the rank is not.";
        }

        string supports = s.StressedSupports.Count == 0 ? "" : $"{(among.Length == 0 ? "" : " and ")}the supports at {Listed([.. s.StressedSupports.Select(j => truss.Joints[j].Name)])}";
        return $"Elsewhere there is a member{(s.StressedSupports.Count == 0 ? "" : " or a reaction")} too many, among {among}{supports}: the count is deceived, the rank is not.";
    }

    private static string Place(SupportFault.Concurrent point, Truss truss, DisplayUnits units)
    {
        double size = truss.Joints.Max(j => j.X) - truss.Joints.Min(j => j.X);
        if (truss.Joints.FirstOrDefault(j => double.Hypot(j.X - point.X, j.Y - point.Y) <= 1e-6 * size) is { } joint)
        {
            return $"joint {joint.Name}";
        }

        string unit = units.Symbol(Quantity.Length);
        return $"x = {ResultTable.Figure(units.From(Quantity.Length, point.X), 2)} {unit}, y = {ResultTable.Figure(units.From(Quantity.Length, point.Y), 2)} {unit}";
    }

    private static string Counted(string noun, string[] names) => $"{noun}{(names.Length == 1 ? "" : "s")} {Listed(names)}";

    private static string Listed(string[] names) => names.Length < 2 ? string.Concat(names) : $"{string.Join(", ", names[..^1])} and {names[^1]}";
}
