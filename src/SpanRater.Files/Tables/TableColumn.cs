namespace SpanRater.Files;

/// <summary>A column that a table may have.</summary>
/// <param name="Name">Its name in the header, without the unit.</param>
/// <param name="Quantity">What its cells measure; null for text.</param>
/// <param name="Required">True when the table is refused without it.</param>
internal sealed record TableColumn(string Name, Quantity? Quantity = null, bool Required = false);
