using System.Globalization;

namespace SpanRater.Files;

/// <summary>The words for forms of truss and their measures.</summary>
public static class FormWords
{
    /// <summary>The words by which a centre is asked for, and what they mean.</summary>
    public static IReadOnlyList<(string Word, CentrePanel Centre)> Centres { get; } =
        [("one", CentrePanel.OneDiagonal), ("crossed", CentrePanel.CrossedRods), ("open", CentrePanel.Open)];

    /// <summary>"a Pratt truss", "a king post truss", "a K-truss".</summary>
    /// <param name="kind">The form.</param>
    public static string WithArticle(FormKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return "a " + Truss(kind);
    }

    /// <summary>"Pratt truss", "K-truss", "Warren truss with verticals".</summary>
    /// <param name="kind">The form.</param>
    public static string Truss(FormKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return kind.Name.EndsWith("truss", StringComparison.Ordinal) ? kind.Name
            : kind.Name.StartsWith("Warren ", StringComparison.Ordinal) ? kind.Name.Replace("Warren ", "Warren truss ", StringComparison.Ordinal)
            : $"{kind.Name} truss";
    }

    /// <summary>How many panels the form has: "from 3 to 200 panels".</summary>
    /// <param name="kind">The form.</param>
    public static string PanelsOf(FormKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        string range = string.Create(CultureInfo.InvariantCulture, $"from {kind.Fewest} to {kind.Most}");
        return kind.Fewest == kind.Most ? string.Create(CultureInfo.InvariantCulture, $"{kind.Fewest} panels")
            : kind.Step == 1 ? $"{range} panels"
            : kind.Step == 2 ? $"an even number of panels, {range}"
            : string.Create(CultureInfo.InvariantCulture, $"a number of panels that is a multiple of {kind.Step}, {range}");
    }

    /// <summary>What runs in the centre: "one diagonal in the centre panel". Empty where there is no choice.</summary>
    /// <param name="kind">The form.</param>
    /// <param name="panels">Number of panels.</param>
    /// <param name="centre">The choice.</param>
    public static string Centre(FormKind kind, int panels, CentrePanel centre)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (kind.Centres.Count == 0 || (!kind.CentreIsAtMidspan && int.IsEvenInteger(panels)))
        {
            return "";
        }

        string where = kind.CentreIsAtMidspan ? "across midspan" : "in the centre panel";
        return centre switch
        {
            CentrePanel.OneDiagonal => $"one diagonal {where}",
            CentrePanel.CrossedRods => $"two crossed rods that only pull {where}",
            _ => kind.CentreIsAtMidspan ? "no diagonal across midspan" : "the centre panel open",
        };
    }
}
