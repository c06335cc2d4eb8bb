namespace SpanRater.Tests.Published.RatingParameters;

/// <summary>
/// Factors of AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), AASHTO LRFD, AASHTO Standard Specifications, 17th ed. (2002), and
/// of the guides and laws named row by row; marks stand there too. Each row is a number of the program, or is not used, and why.
/// </summary>
public class RatingParameterTests
{
    private const double RoundOff = 1e-9;

    private static readonly IReadOnlyList<PublishedRow> Table = PublishedTable.Read("RatingParameters/rating-parameters.csv");

    public static IEnumerable<TheoryDataRow<string, string, double>> Rows() => Table.Select(row =>
    {
        (string Topic, string Item) key = KeyOf(row);
        string use = RatingParameters.NotUsed.TryGetValue(key, out string? why) ? $"not used, {why}" : "used";
        return new TheoryDataRow<string, string, double>(key.Topic, key.Item, row.Number("value")) { Label = row.Label($"{key.Topic}, {key.Item}: {row["value"]}, {use}") };
    });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Parameter_IsTheProgramsNumber_OrIsNotUsedForAReason(string topic, string item, double published)
    {
        bool isUsed = RatingParameters.Used.TryGetValue((topic, item), out Func<double[]>? numbers);
        Assert.NotEqual(isUsed, RatingParameters.NotUsed.ContainsKey((topic, item)));
        Assert.All(numbers?.Invoke() ?? [], number => Assert.Equal(published, number, RoundOff));
    }

    [Fact]
    public void EveryUseAndReason_BelongsToARow()
    {
        (string, string)[] rows = [.. Table.Select(KeyOf)];
        Assert.Equal(rows.Order(), RatingParameters.Used.Keys.Concat(RatingParameters.NotUsed.Keys).Order());
        Assert.All(RatingParameters.Used.Values, numbers => Assert.NotEmpty(numbers()));
    }

    private static (string Topic, string Item) KeyOf(PublishedRow row) => (row["topic"], row["item"]);
}
