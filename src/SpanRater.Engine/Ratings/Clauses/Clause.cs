namespace SpanRater;

/// <summary>How a value of a standard came to be known.</summary>
public enum ClauseMark
{
    /// <summary>Read in the standard, or in a copy of it.</summary>
    Found,

    /// <summary>Remembered; the owner's copy decides.</summary>
    Memory,

    /// <summary>What the trade does, without a clause to quote.</summary>
    Practice,
}

/// <summary>What a formula of the program takes from a standard.</summary>
/// <param name="Name">Short name, unique among all clauses.</param>
/// <param name="Standard">The standard.</param>
/// <param name="Article">Article, table or figure; empty where there is none.</param>
/// <param name="Says">What is taken, in our own words.</param>
/// <param name="Values">The values or the formula, as the program has them.</param>
/// <param name="Mark">How they came to be known.</param>
public sealed record Clause(string Name, Standard Standard, string Article, string Says, string Values, ClauseMark Mark)
{
    /// <summary>Why the value is doubtful, so that the user is asked to look it up; null where it is not.</summary>
    public string? Doubt { get; init; }

    /// <summary>Whether the user is asked to look the value up.</summary>
    public bool ToConfirm => Doubt is not null;

    /// <summary>Standard, edition and article.</summary>
    public string Citation => Article.Length == 0 ? Edited : Standard.Edition.Length == 0 ? $"{Edited} {Article}" : $"{Edited}, {Article}";

    /// <summary>Standard, edition, article and whether the values are from memory.</summary>
    public string CitationWithMark => Mark == ClauseMark.Memory ? $"{Citation}, from memory" : Citation;

    /// <summary>Standard and edition.</summary>
    internal string Edited => Standard.Edition is not { Length: > 0 } edition ? Standard.Name
        : edition.StartsWith('(') ? $"{Standard.Name} {edition}"
        : $"{Standard.Name}, {edition}";
}
