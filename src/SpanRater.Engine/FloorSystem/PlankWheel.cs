namespace SpanRater;

/// <summary>
/// One wheel on a timber deck that spans from stringer to stringer. Sources: AASHTO Standard Specifications, 17th ed. (2002), 3.30 (contact), 3.25.1 (spread and span), 3.25.4 (continuous
/// decks), and National Design Specification (2018), 3.4.3.1 (place of a moving load in shear), all from memory.
/// </summary>
public sealed record PlankWheel
{
    private const double Inch = 0.0254, PoundForce = 4.4482216152605;

    private PlankWheel()
    {
    }

    /// <summary>The wheel load [N].</summary>
    public required double Load { get; init; }

    /// <summary>Width of the contact along the deck's span, across traffic [m].</summary>
    public required double ContactWidth { get; init; }

    /// <summary>Span that counts [m].</summary>
    public required double Span { get; init; }

    /// <summary>Width of deck that carries the wheel [m].</summary>
    public required double Spread { get; init; }

    /// <summary>Moment on the spread width [N·m].</summary>
    public required double Moment { get; init; }

    /// <summary>Shear on the spread width [N].</summary>
    public required double Shear { get; init; }

    /// <summary>What it rests on.</summary>
    public required IReadOnlyList<Clause> Clauses { get; init; }

    /// <summary>The wheel on the deck.</summary>
    /// <param name="load">Wheel load, positive [N].</param>
    /// <param name="clear">Clear distance between stringers, positive [m].</param>
    /// <param name="stringerWidth">Width of a stringer's top [m]; 0 where it is not known.</param>
    /// <param name="plankWidth">Width of one plank [m].</param>
    /// <param name="thickness">Thickness of the deck [m].</param>
    /// <param name="type">Plank, nail laminated or glued laminated.</param>
    /// <param name="isContinuous">Whether it runs over more than two spans.</param>
    public static PlankWheel Of(double load, double clear, double stringerWidth, double plankWidth, double thickness, DeckType type, bool isContinuous)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(load);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(clear);

        // Area 0.01 P in square inches, P in pounds, 2.5 times as wide as long.
        double contact = Math.Sqrt(0.01 * (load / PoundForce) * 2.5) * Inch, along = contact / 2.5;
        double span = Math.Min(clear + (stringerWidth / 2), clear + thickness), within = Math.Min(contact, span);
        double simple = load * within / contact * ((span / 4) - (within / 8));

        // The near edge of the contact a depth from the support; where there is no room for that, half of the wheel.
        double free = Math.Min(contact, Math.Max(0, span - thickness)), shear = span <= thickness + contact ? load / 2 : load * (span - thickness - (free / 2)) / span;
        return new PlankWheel
        {
            Load = load,
            ContactWidth = contact,
            Span = span,
            Spread = type == DeckType.Plank ? plankWidth : 15 * Inch,
            Moment = isContinuous ? 0.8 * simple : simple,
            Shear = Math.Max(load / 2, shear),
            Clauses = [FloorClauses.Contact, FloorClauses.PlankSpan, type == DeckType.Plank ? FloorClauses.PlankSpread : FloorClauses.LaminatedSpread, .. isContinuous ? [FloorClauses.ContinuousDeck] : Array.Empty<Clause>(), FloorClauses.PlankShear],
        };
    }
}
