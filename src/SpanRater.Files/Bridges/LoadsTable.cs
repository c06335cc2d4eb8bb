using System.Globalization;

namespace SpanRater.Files;

/// <summary>loads.csv: static joint loads on one truss, by case.</summary>
internal sealed class LoadsTable
{
    private static readonly TableColumn[] Columns =
    [
        new("case", Required: true),
        new("joint", Required: true),
        new("right", Quantity.Force),
        new("up", Quantity.Force),
        new("moves right", Quantity.Length),
        new("moves up", Quantity.Length),
    ];

    private static readonly string[] DeadCases = [Bridge.ComponentsCase, Bridge.WearingSurfaceCase];

    private readonly IReadOnlyList<(string Name, Place Where)> places;

    private LoadsTable(IReadOnlyList<LoadCase> cases, IReadOnlyList<(string Name, Place Where)> places)
    {
        Cases = cases;
        this.places = places;
    }

    public IReadOnlyList<LoadCase> Cases { get; }

    /// <summary>Where a case stands first.</summary>
    public Place PlaceOf(string name) => places.First(p => p.Name == name).Where;

    /// <summary>The cases; null where the table cannot be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="joints">The joints; null where they could not be read.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static LoadsTable? Read(string text, string file, JointsTable? joints, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        string[]? known = joints?.Names.ToArray();
        var cases = new List<(string Name, Place Where, List<JointLoad> Loads, List<SupportMovement> Movements)>();
        foreach (TableRow row in table.Rows)
        {
            string? name = row.Required("case"), joint = row.Required("joint");
            double? right = row.Value("right"), up = row.Value("up");
            if (name is null || joint is null)
            {
                continue;
            }

            SupportMovement? movement = MovementOf(row, name, joint, joints?.Joints, findings);
            if (movement is null && row["right"].IsBlank && row["up"].IsBlank)
            {
                findings.Error(row.Where, $"the load on \"{joint}\" has no size: write right or up (a weight is negative up).");
            }

            if (known is not null && !known.Contains(joint, StringComparer.Ordinal))
            {
                findings.Error(
                    row["joint"].Where,
                    $"case \"{name}\" loads joint \"{joint}\", which joints.csv does not have.{NearestName.Question(joint, known)} A load between joints bends a member, and pin-joint forces alone are not enough.");
            }

            string? dead = Array.Find(DeadCases, d => string.Equals(d, name, StringComparison.OrdinalIgnoreCase));
            if (dead is not null && name != dead)
            {
                findings.Error(row["case"].Where, $"case \"{name}\": the dead load case is written {dead}.");
            }

            if (dead == name && movement is null)
            {
                WarnOfOddDeadLoad(row, name, joint, right ?? 0, up, findings);
                if (cases.Exists(c => c.Name == name && c.Loads.Exists(l => l.Joint == joint)))
                {
                    findings.Warning(row["joint"].Where, $"case {name} loads joint \"{joint}\" a second time: the loads add up. If one row is a slip, remove it.");
                }
            }

            int index = cases.FindIndex(c => c.Name == name);
            if (index < 0)
            {
                index = cases.Count;
                cases.Add((name, row["case"].Where, [], []));
            }

            if (movement is not null)
            {
                cases[index].Movements.Add(movement);
            }

            if (right is not null || up is not null)
            {
                cases[index].Loads.Add(new JointLoad(joint, right ?? 0, up ?? 0));
            }
        }

        foreach ((string name, Place where, List<JointLoad> loads, _) in cases)
        {
            double up = loads.Sum(l => l.Up);
            if (name is Bridge.ComponentsCase or Bridge.WearingSurfaceCase && up > 0)
            {
                findings.Error(where, string.Create(CultureInfo.InvariantCulture, $"the dead load of case {name} adds up to {up / 1000:0.###} kN ({up / Unit.Find("kip")!.Size:0.###} kip) upward: a weight is negative under up."));
            }
        }

        return table.HasBrokenRows ? null : new LoadsTable([.. cases.Select(c => new LoadCase(c.Name, c.Loads) { Movements = c.Movements })], [.. cases.Select(c => (c.Name, c.Where))]);
    }

    private static SupportMovement? MovementOf(TableRow row, string name, string joint, IReadOnlyList<Joint>? joints, FindingList findings)
    {
        double? right = row.Value("moves right"), up = row.Value("moves up");
        if (row["moves right"].IsBlank && row["moves up"].IsBlank)
        {
            return null;
        }

        Place where = row[row["moves up"].IsBlank ? "moves right" : "moves up"].Where;
        Support? support = joints?.FirstOrDefault(j => j.Name == joint)?.Support;
        if (DeadCases.Contains(name))
        {
            findings.Error(where, $"case {name} is dead load, and the movement of a support is none: give it a case of its own.");
        }
        else if (joints is not null && joints.Any(j => j.Name == joint) && support is null)
        {
            findings.Error(where, $"case \"{name}\" moves joint \"{joint}\", which is not supported: only a pin or a roller moves with the ground.");
        }
        else if (support is { Kind: SupportKind.Roller } && Math.Abs((support.NormalX * (right ?? 0)) + (support.NormalY * (up ?? 0))) < 1e-12)
        {
            findings.Warning(where, $"case \"{name}\" moves the roller at \"{joint}\" along its path, which it does anyway: that has no effect.");
        }

        return new SupportMovement(joint, right ?? 0, up ?? 0);
    }

    // A sign, a blank or a shifted cell in the dead load moves a factor past 1 without a word.
    private static void WarnOfOddDeadLoad(TableRow row, string name, string joint, double right, double? up, FindingList findings)
    {
        if (up > 0)
        {
            findings.Warning(row["up"].Where, $"case {name} lifts joint \"{joint}\" by {row["up"].Text}: a weight is negative under up. Check the sign.");
        }

        if (row["up"].IsBlank)
        {
            findings.Warning(row.Where, $"case {name} puts no weight on joint \"{joint}\": up is blank. Is a cell missing, or in the wrong column?");
        }

        if (right != 0)
        {
            findings.Warning(row["right"].Where, $"case {name} pushes joint \"{joint}\" sideways by {row["right"].Text}, which dead load does not do. Is the cell in the wrong column?");
        }
    }
}
