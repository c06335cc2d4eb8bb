namespace SpanRater.Pictures;

/// <summary>
/// Where a cross-section stands: x is from the middle between the trusses, right positive [m]; heights are pixels above the deck,
/// carried over into metres.
/// </summary>
internal sealed class CrossSectionFrame
{
    /// <summary>Room outside the outermost truss or kerb [px].</summary>
    public const double Margin = 132;

    /// <summary>Size of texts [px].</summary>
    public const double TextSize = 14;

    /// <summary>Foot of the floorbeam [px].</summary>
    public const double BeamFoot = -46;

    /// <summary>Begins a frame.</summary>
    /// <param name="deck">The deck; its truss spacing and roadway must be given.</param>
    /// <param name="section">What stands on it.</param>
    public CrossSectionFrame(Deck deck, CrossSection section)
    {
        (Deck, Section) = (deck, section);
        Spacing = deck.TrussSpacing ?? throw new ArgumentException("The spacing of the trusses is not given.", nameof(deck));
        double roadway = deck.Roadway ?? throw new ArgumentException("The width of the roadway is not given.", nameof(deck));
        (LeftKerb, RightKerb) = (deck.RoadwayOffset - (roadway / 2), deck.RoadwayOffset + (roadway / 2));
        Toward = section.Truss == 0 ? 1 : -1;
        double reach = Math.Max(Spacing / 2, (roadway / 2) + Math.Abs(deck.RoadwayOffset));
        Scale = (Sheet.InnerWidth - (2 * Margin)) / (2 * reach);
    }

    /// <summary>The deck.</summary>
    public Deck Deck { get; }

    /// <summary>What stands on it.</summary>
    public CrossSection Section { get; }

    /// <summary>Distance between the trusses [m].</summary>
    public double Spacing { get; }

    /// <summary>x of the left kerb [m].</summary>
    public double LeftKerb { get; }

    /// <summary>x of the right kerb [m].</summary>
    public double RightKerb { get; }

    /// <summary>1 where distances from the truss considered run to the right, else -1.</summary>
    public double Toward { get; }

    /// <summary>Pixels a metre [px/m].</summary>
    public double Scale { get; }

    /// <summary>Whether a kerb lies at or beyond a truss: such a deck lies on top of them.</summary>
    public bool Overhangs => Math.Min(LeftKerb + (Spacing / 2), (Spacing / 2) - RightKerb) * Scale < 5;

    /// <summary>A point.</summary>
    /// <param name="x">x [m].</param>
    /// <param name="up">Height above the deck [px].</param>
    public DrawingPoint At(double x, double up) => new(x, up / Scale);

    /// <summary>x of a distance from the truss considered [m].</summary>
    public double From(double distance) => Toward * (distance - (Spacing / 2));

    /// <summary>A straight stroke.</summary>
    public static Stroke Line(string shows, DrawingPoint from, DrawingPoint to, Ink ink, double weight, Dash dash = Dash.Solid) =>
        new(shows, [from, to], ink, weight, dash);

    /// <summary>The slash that ends a dimension.</summary>
    public Stroke Slash(string shows, double x, double row) =>
        new(shows, [At(x - (4 / Scale), row - 4), At(x + (4 / Scale), row + 4)], Ink.Black, 1.6);
}
