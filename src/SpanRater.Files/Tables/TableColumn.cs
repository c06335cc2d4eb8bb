namespace SpanRater.Files;

/// <summary>A column that a table may have.</summary>
/// <param name="Name">Its name in the header, without the unit.</param>
/// <param name="Quantity">What its cells measure; null for text.</param>
/// <param name="Required">True when the table is refused without it.</param>
/// <param name="Units">Units to write in place of the commonest of the quantity, such as "in or mm"; null for those.</param>
internal sealed record TableColumn(string Name, Quantity? Quantity = null, bool Required = false, string? Units = null)
{
    /// <summary>Two units that suit the column, for a mend.</summary>
    public string Suggestion => Units ?? Unit.Suggestion(Quantity ?? Files.Quantity.Number);
}
