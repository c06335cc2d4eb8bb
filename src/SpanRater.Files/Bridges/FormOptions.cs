namespace SpanRater.Files;

/// <summary>The measures of a form as somebody typed them; null where nothing was.</summary>
public sealed record FormOptions
{
    /// <summary>Name of the form.</summary>
    public string? Form { get; init; }

    /// <summary>Distance between the supports, with its unit.</summary>
    public string? Span { get; init; }

    /// <summary>Length of a panel, with its unit.</summary>
    public string? Panel { get; init; }

    /// <summary>Number of panels.</summary>
    public string? Panels { get; init; }

    /// <summary>Height between the chords, with its unit.</summary>
    public string? Height { get; init; }

    /// <summary>Heights over the inner panel points, each with its unit, parted by commas.</summary>
    public string? Heights { get; init; }

    /// <summary>bottom or top.</summary>
    public string? Deck { get; init; }

    /// <summary>Whether it is called a pony truss.</summary>
    public bool Pony { get; init; }

    /// <summary>one, crossed or open.</summary>
    public string? Centre { get; init; }

    /// <summary>strut or tie.</summary>
    public string? SubDiagonal { get; init; }

    /// <summary>Area of every member, with its unit.</summary>
    public string? Area { get; init; }

    /// <summary>Name of the bridge.</summary>
    public string? Name { get; init; }

    /// <summary>Dead load of components on one truss, per length, with its unit.</summary>
    public string? Dead { get; init; }

    /// <summary>Dead load of the wearing surface on one truss, per length, with its unit.</summary>
    public string? Wearing { get; init; }
}
