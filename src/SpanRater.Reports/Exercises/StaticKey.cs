using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The work of a key for joint loads: the reactions, then joint after joint until every asked member is found.</summary>
internal sealed class StaticKey(Exercise exercise, DisplayUnits units)
{
    private readonly Truss truss = exercise.Truss;
    private readonly string unit = units.Symbol(Quantity.Force);
    private int line;

    /// <summary>The numbered lines.</summary>
    public List<ResultBlock> Lines()
    {
        List<ResultBlock> blocks = Reactions();
        int last = exercise.Items.Max(i => ExerciseWords.KeyLineOf(exercise, i));
        var known = new HashSet<int>();
        foreach (JointStep step in exercise.Steps.Take(last - 1))
        {
            blocks.AddRange(Joint(step, known));
            known.UnionWith(step.Found);
        }

        return blocks;
    }

    private List<ResultBlock> Reactions()
    {
        Joint left = truss.Joints[exercise.Reactions[0].Joint], right = truss.Joints[exercise.Reactions[1].Joint];
        string length = units.Symbol(Quantity.Length), span = Length(right.X - left.X);
        (string Text, string Tex)[] arms = [.. exercise.Loads.Loads.Select(l => ($"{Force(-l.Up)} × {Length(ArmOf(l))}", $"{Force(-l.Up)} \\cdot {Length(ArmOf(l))}"))];
        string total = string.Join(" + ", exercise.Loads.Loads.Select(l => Force(-l.Up)));
        string rightUp = Force(exercise.Reactions[1].Up), leftUp = Force(exercise.Reactions[0].Up);
        return
        [
            Heading("Reactions"),
            new ResultBlock.Paragraph($"Moments about {left.Name}, in {unit} and {length}, give the reaction at {right.Name}; the sum of upright forces gives the one at {left.Name}."),
            new ResultBlock.Equation(
                $"R({right.Name}) = ({string.Join(" + ", arms.Select(a => a.Text))}) / {span} = {rightUp} {unit}",
                $"R_{{{right.Name}}} = \\frac{{{string.Join(" + ", arms.Select(a => a.Tex))}}}{{{span}}} = {rightUp}\\ \\text{{{unit}}}"),
            new ResultBlock.Equation($"R({left.Name}) = {total} − {rightUp} = {leftUp} {unit}", $"R_{{{left.Name}}} = {total} - {rightUp} = {leftUp}\\ \\text{{{unit}}}"),
        ];

        double ArmOf(JointLoad load) => truss.Joints[truss.FindJoint(load.Joint)!.Value].X - left.X;
    }

    private IEnumerable<ResultBlock> Joint(JointStep step, HashSet<int> known)
    {
        Joint joint = truss.Joints[step.Joint];
        string found = string.Join(" and ", step.Found.Select(m => truss.Members[m].Name));
        yield return Heading($"Joint {joint.Name}: {found}");
        if (step.Across is { } line)
        {
            (double alongX, double alongY) = Direction(line, step.Joint);
            string[] others = [.. MembersAt(step.Joint).Where(m => !known.Contains(m) && !step.Found.Contains(m)).Select(m => truss.Members[m].Name)];
            yield return new ResultBlock.Paragraph(
                others.Length == 1
                    ? $"At right angles to {others[0]}, which is not known yet and drops out:"
                    : $"{string.Join(" and ", others)} are not known yet and lie in one line; at right angles to it they drop out:");
            yield return Sum(step, known, "⟂", "\\perp", -alongY, alongX);
        }
        else
        {
            // One unknown takes one equation: the one in which it has the larger part.
            (double partX, double partY) = Direction(step.Found[0], step.Joint);
            bool right = step.Found.Count == 2 || Math.Abs(partX) >= Math.Abs(partY), up = step.Found.Count == 2 || !right;
            yield return new ResultBlock.Paragraph(right && up ? "Sum of forces to the right, and upward:" : right ? "Sum of forces to the right:" : "Sum of forces upward:");
            if (right)
            {
                yield return Sum(step, known, "→", "\\rightarrow", 1, 0);
            }

            if (up)
            {
                yield return Sum(step, known, "↑", "\\uparrow", 0, 1);
            }
        }

        string[] results = [.. step.Found.Select(m => $"{truss.Members[m].Name} = {Words.ForceInWords(Rounded(exercise.KeyForces[m]), units)}")];
        yield return new ResultBlock.Paragraph(string.Join("; ", results) + ".", Strong: true);
    }

    private ResultBlock.Equation Sum(JointStep step, HashSet<int> known, string arrow, string arrowTex, double x, double y)
    {
        Term[] terms = [.. Terms(step, known, x, y)];
        return new ResultBlock.Equation(
            $"{arrow}: {Joined(terms.Select(t => t.Text))} = 0",
            $"{arrowTex}: {Joined(terms.Select(t => t.Tex))} = 0");
    }

    // Every force at the joint along a direction: unknown members first, then known ones, the reaction, the load.
    private IEnumerable<Term> Terms(JointStep step, HashSet<int> known, double x, double y)
    {
        foreach (int member in MembersAt(step.Joint).OrderBy(m => known.Contains(m)))
        {
            (double memberX, double memberY) = Direction(member, step.Joint);
            double part = (memberX * x) + (memberY * y);
            if (Math.Abs(part) < 1e-9 || (step.Across is not null && !known.Contains(member) && !step.Found.Contains(member)))
            {
                continue;
            }

            string name = truss.Members[member].Name, size = ResultTable.Figure(Math.Abs(part), 4).TrimEnd('0').TrimEnd('.'), sign = part < 0 ? "−" : "+";
            bool isOne = size == "1";
            if (!known.Contains(member))
            {
                yield return new Term($"{sign} {(isOne ? "" : size + " ")}{name}", $"{Tex(sign)} {(isOne ? "" : size + "\\,")}S_{{{name}}}");
            }
            else if (Rounded(exercise.KeyForces[member]) != 0)
            {
                string force = Force(exercise.KeyForces[member]), set = force.StartsWith('-') ? $"({force.Replace('-', '−')})" : force;
                yield return new Term(isOne ? $"{sign} {set}" : $"{sign} {size} × {set}", isOne ? $"{Tex(sign)} {Tex(set)}" : $"{Tex(sign)} {size} \\cdot {Tex(set)}");
            }
        }

        double reaction = exercise.Reactions.Where(r => r.Joint == step.Joint).Sum(r => (r.Right * x) + (r.Up * y));
        double load = exercise.Loads.Loads.Where(l => l.Joint == truss.Joints[step.Joint].Name).Sum(l => (l.Right * x) + (l.Up * y));
        foreach (double value in (double[])[reaction, load])
        {
            if (Math.Abs(value) > 1e-6)
            {
                string sign = value < 0 ? "−" : "+";
                yield return new Term($"{sign} {Force(Math.Abs(value))}", $"{Tex(sign)} {Force(Math.Abs(value))}");
            }
        }
    }

    private ResultBlock.Heading Heading(string text) => new(string.Create(CultureInfo.InvariantCulture, $"K{++line} {text}"), 3);

    private IEnumerable<int> MembersAt(int joint) => Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint);

    private (double X, double Y) Direction(int member, int joint)
    {
        Joint here = truss.Joints[joint], there = truss.Joints[truss.FromJoint(member) == joint ? truss.ToJoint(member) : truss.FromJoint(member)];
        return ((there.X - here.X) / truss.Length(member), (there.Y - here.Y) / truss.Length(member));
    }

    // A zero bar is said to be zero, whatever round-off left in it.
    private double Rounded(double force) => Math.Abs(force) < 1e-9 * exercise.Loads.Loads.Sum(l => Math.Abs(l.Up)) ? 0 : force;

    private string Force(double newtons) => Short(units.From(Quantity.Force, newtons));

    private string Length(double metres) => Short(units.From(Quantity.Length, metres));

    private static string Short(double value)
    {
        string text = ResultTable.Figure(value, 3);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    private static string Tex(string text) => text.Replace('−', '-');

    private static string Joined(IEnumerable<string> terms)
    {
        string text = string.Join(' ', terms);
        return text.StartsWith("+ ", StringComparison.Ordinal) ? text[2..] : text;
    }

    private readonly record struct Term(string Text, string Tex);
}
