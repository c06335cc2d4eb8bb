using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Writes an equation of equilibrium line by line, as terminal text and as TeX: with names, with numbers put in, and solved.</summary>
internal sealed class EquationLines
{
    private readonly WorkedSolution worked;
    private readonly ForceNotation notation;
    private readonly Balance balance;
    private readonly IReadOnlyList<double> forces;
    private readonly List<Piece> pieces = [];

    /// <summary>Begins an equation.</summary>
    /// <param name="worked">The solution it belongs to.</param>
    /// <param name="balance">The equation.</param>
    /// <param name="forces">The forces, of which those known are put in.</param>
    /// <param name="notation">How numbers are shown.</param>
    public EquationLines(WorkedSolution worked, Balance balance, IReadOnlyList<double> forces, ForceNotation notation)
    {
        (this.worked, this.balance, this.forces, this.notation) = (worked, balance, forces, notation);
        foreach (BalanceTerm term in balance.Terms)
        {
            pieces.Add(new Piece(term.Coefficient, term.Force, forces[term.Force]));
        }

        bool moment = balance.Kind == BalanceKind.Moment;
        foreach (int j in balance.Joints)
        {
            Joint joint = worked.Truss.Joints[j];
            (double right, double up) = worked.JointLoads[j];
            AddLoad(moment ? joint.X - balance.X : balance.Y, up);
            AddLoad(moment ? balance.Y - joint.Y : balance.X, right);
        }
    }

    /// <summary>Sum of what is known, in the unit shown.</summary>
    public double KnownSum(IReadOnlyCollection<int> unknown) => pieces.Where(p => p.Force is not { } f || !unknown.Contains(f)).Sum(p => Factor(p) * notation.Shown(p.Value));

    /// <summary>What the equation is called: "ΣY = 0".</summary>
    public string Name => balance.Kind switch
    {
        BalanceKind.Right => "ΣX",
        BalanceKind.Up => "ΣY",
        BalanceKind.Across => $"Σ⊥{worked.Names[balance.Beside!.Value]}",
        _ => $"ΣM about {Centre}",
    };

    private string Centre => BalanceWording.CentreInSum(worked.Truss, balance, notation);

    /// <summary>The equation with names in it.</summary>
    public ResultBlock.Equation WithNames(IReadOnlyCollection<int> all) => Line($"{Name} = 0", NameTex, all);

    /// <summary>The equation with what is known put in as numbers.</summary>
    public ResultBlock.Equation WithNumbers(IReadOnlyCollection<int> unknown) => Line(null, null, unknown);

    /// <summary>The equation solved for its one unknown.</summary>
    public ResultBlock.Equation Solved(int force)
    {
        double coefficient = Factor(pieces.First(p => p.Force == force)), known = KnownSum([force]);
        string name = NameOf(force), result = notation.WithUnit(forces[force]);
        string sum = SumNumber(-known);
        if (Math.Abs(coefficient) == 1)
        {
            return new ResultBlock.Equation($"{name} = {result}", $"{Tex(name)} = {ResultTex(force)}");
        }

        string divisor = FactorNumber(coefficient);
        string below = coefficient < 0 ? $"({divisor})" : divisor;
        return new ResultBlock.Equation(
            $"{name} = {sum} / {below} = {result}",
            $"{Tex(name)} = \\frac{{{Tex(sum)}}}{{{Tex(divisor)}}} = {ResultTex(force)}");
    }

    /// <summary>The equation with every number put in, and what is left of it.</summary>
    public ResultBlock.Equation Closing(double residual)
    {
        (string text, string tex) = Sum([]);
        string left = SumNumber(balance.Kind == BalanceKind.Moment ? notation.ShownLength(notation.Shown(residual)) : notation.Shown(residual));
        return new ResultBlock.Equation($"{Name} at {Where}:  {text} = {left}", $"{NameTex}\\text{{ at {Escaped(Where)}: }} {tex} = {Tex(left)}");
    }

    /// <summary>The terms for a file: name, coefficient, value.</summary>
    public IEnumerable<(string Name, double Coefficient, double Value)> Terms() =>
        pieces.Select(p => (p.Force is { } f ? worked.Names[f] : "load", p.Coefficient, p.Value));

    /// <summary>The left side as text, with names.</summary>
    public string LeftSide() => Sum([.. pieces.Select(p => p.Force).OfType<int>()]).Text;

    /// <summary>Name of a force within an equation; a reaction stands in brackets.</summary>
    public string NameOf(int force) => worked.Names.IsMember(force) ? worked.Names[force] : $"({worked.Names[force]})";

    private string Where => string.Join(", ", balance.Joints.Select(j => worked.Truss.Joints[j].Name));

    private string NameTex => balance.Kind switch
    {
        BalanceKind.Right => "\\sum X",
        BalanceKind.Up => "\\sum Y",
        BalanceKind.Across => $"\\sum F_{{\\perp {Tex(worked.Names[balance.Beside!.Value])}}}",
        _ => $"\\sum M_{{{Tex(Centre)}}}",
    };

    private void AddLoad(double coefficient, double load)
    {
        if (load != 0 && Math.Abs(coefficient) > 1e-12)
        {
            pieces.Add(new Piece(coefficient, null, load));
        }
    }

    private ResultBlock.Equation Line(string? lead, string? leadTex, IReadOnlyCollection<int> named)
    {
        (string text, string tex) = Sum(named);
        return new ResultBlock.Equation(
            lead is null ? $"{text} = 0" : $"{lead}:  {text} = 0",
            leadTex is null ? $"{tex} = 0" : $"{leadTex} = 0:\\quad {tex} = 0");
    }

    // Names of some forces, the numbers of the others and of the loads.
    private (string Text, string Tex) Sum(IReadOnlyCollection<int> named)
    {
        var text = new List<string>();
        var tex = new List<string>();
        foreach (Piece piece in pieces)
        {
            double factor = Factor(piece);
            bool isNamed = piece.Force is { } f && named.Contains(f);
            string size = FactorNumber(Math.Abs(factor));
            string number = notation.Number(Math.Abs(piece.Value));

            // What shows as zero has no sign.
            bool negative = factor < 0 != (!isNamed && piece.Value < 0) && (isNamed || number.Any(c => c is >= '1' and <= '9'));
            string of = isNamed ? NameOf(piece.Force!.Value) : number;
            bool plain = size == "1" && balance.Kind != BalanceKind.Moment;
            string sign = negative ? "−" : text.Count == 0 ? "" : "+";
            string gap = text.Count == 0 ? "" : " ";
            text.Add($"{sign}{gap}{(plain ? of : $"{size}·{of}")}");
            tex.Add($"{(negative ? "-" : sign)}{gap}{(plain ? Tex(of) : $"{size} \\cdot {Tex(of)}")}");
        }

        return text.Count == 0 ? ("0", "0") : (string.Join(' ', text), string.Join(' ', tex));
    }

    private double Factor(Piece piece) => balance.Kind == BalanceKind.Moment ? notation.ShownLength(piece.Coefficient) : piece.Coefficient;

    private string FactorNumber(double factor) =>
        balance.Kind == BalanceKind.Moment ? BalanceWording.Trimmed(factor, 4) : ForceNotation.Cosine(Math.Abs(Math.Abs(factor) - 1) < 1e-12 ? Math.Sign(factor) : factor);

    private string SumNumber(double shown) => ResultTable.Figure(shown, notation.Decimals).Replace('-', '−');

    private string ResultTex(int force) => notation.ForceUnit.Length == 0
        ? Tex(notation.Number(forces[force]))
        : $"{Tex(notation.Number(forces[force]))}\\ \\mathrm{{{notation.ForceUnit}}}";

    private static string Tex(string text) => text.Any(char.IsLetter) && !text.StartsWith('−')
        ? $"\\mathrm{{{Escaped(text)}}}"
        : Escaped(text).Replace("−", "-", StringComparison.Ordinal);

    private static string Escaped(string text) => text.Replace("−", "-", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal).Replace(" ", "\\ ", StringComparison.Ordinal);

    private sealed record Piece(double Coefficient, int? Force, double Value);
}
