namespace SpanRater.Files;

/// <summary>What a row of members.csv says of the member's make and of how it is held.</summary>
internal sealed record MemberHold
{
    public static readonly TableColumn[] Columns =
    [
        new("section"),
        new("ends"),
        new("in-plane length", Quantity.Length),
        new("out-of-plane length", Quantity.Length),
        new("in-plane k", Quantity.Number),
        new("out-of-plane k", Quantity.Number),
        new("shear lag", Quantity.Number),
    ];

    private static readonly (string Word, EndFastening Ends)[] EndWords =
        [("pinned", EndFastening.Pinned), ("riveted", EndFastening.Riveted), ("bolted", EndFastening.Bolted), ("welded", EndFastening.Welded)];

    public string? Section { get; init; }

    public EndFastening? Ends { get; init; }

    public double? InPlaneLength { get; init; }

    public double? OutOfPlaneLength { get; init; }

    public double? InPlaneFactor { get; init; }

    public double? OutOfPlaneFactor { get; init; }

    public double? ShearLag { get; init; }

    public static MemberHold Read(TableRow row, FindingList findings) => new()
    {
        Section = row["section"].IsBlank ? null : row["section"].Text,
        Ends = EndsOf(row["ends"], findings),
        InPlaneLength = row.PositiveValue("in-plane length", "in-plane length"),
        OutOfPlaneLength = row.PositiveValue("out-of-plane length", "out-of-plane length"),
        InPlaneFactor = FactorOf(row, "in-plane k", findings),
        OutOfPlaneFactor = FactorOf(row, "out-of-plane k", findings),
        ShearLag = ShearLagOf(row, findings),
    };

    private static EndFastening? EndsOf(TableCell cell, FindingList findings)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        int index = Array.FindIndex(EndWords, w => string.Equals(w.Word, cell.Text, StringComparison.OrdinalIgnoreCase));
        if (index >= 0)
        {
            return EndWords[index].Ends;
        }

        findings.Error(cell.Where, $"ends \"{cell.Text}\" is not known.{NearestName.Question(cell.Text, EndWords.Select(w => w.Word))} Write {string.Join(", ", EndWords.Select(w => w.Word))}, or leave it blank.");
        return null;
    }

    private static double? FactorOf(TableRow row, string column, FindingList findings)
    {
        double? value = row.Value(column);
        if (value is null or (>= 0.5 and <= 3))
        {
            return value;
        }

        findings.Error(row[column].Where, $"{column} = {row[column].Text}: an effective length factor is from 0.5 (both ends fixed) to 3.");
        return null;
    }

    private static double? ShearLagOf(TableRow row, FindingList findings)
    {
        double? value = row.Value("shear lag");
        if (value is null or (>= 0.3 and <= 1))
        {
            return value;
        }

        findings.Error(row["shear lag"].Where, $"shear lag = {row["shear lag"].Text}: write the part of the net section that works, from 0.3 to 1; 1 where every part of the section is connected.");
        return null;
    }
}
