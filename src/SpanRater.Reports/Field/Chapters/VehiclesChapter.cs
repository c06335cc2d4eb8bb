using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>The vehicles as they were rated, drawn to scale, and what of each one truss carries.</summary>
internal static class VehiclesChapter
{
    /// <summary>Anchor of the fold that works the share of every arrangement.</summary>
    public const string ShareWorked = "share-worked";

    /// <summary>The chapter.</summary>
    public static ReportChapter Of(BridgeRating rating, IReadOnlyList<LiveLoad> asked, DisplayUnits units)
    {
        LiveLoad[] drawn = [.. asked.SelectMany(Drawn).DistinctBy(l => l.Name)];
        IReadOnlyList<VehicleShares> shares = VehicleShares.Of(rating.Bridge.Deck, asked, rating.Method);
        IReadOnlyList<StripShares> strips = StripShares.Of(rating.Bridge.Deck, asked, rating.Method);
        ResultBlock[] share = [.. SharePage.Of(rating.Bridge, rating.Method, shares, strips, units).Blocks.Skip(1)];
        ResultBlock[] inShort = [.. share.TakeWhile(b => b is not ResultBlock.Paragraph { Strong: false } and not ResultBlock.Heading)];
        IReadOnlyList<(CrossSection Section, Drawing Drawing)> sections = CrossSectionPicture.Drawings(rating.Bridge.Deck, shares, strips, units);
        return new ReportChapter("vehicles", "Vehicles and what one truss carries of them", [new ResultBlock.Paragraph("Axle spacings are to scale within each sketch, and the front axle is at the left. A spacing that varies is drawn at its least, dashed; the rating looks for the worst in its range. What has no axles or tracks, crowds and lane loads, is told in the list below.")])
        {
            Parts =
            [
                new ReportPart.Gallery([.. drawn.Select(l => SketchOf(l, units)).OfType<ReportPart.Sketch>()]),
                new ReportPart.Fold("loads", "Every vehicle, loading and crowd with its axles and its source", [.. asked.Concat(drawn).DistinctBy(l => l.Name).Select(l => new ReportPart.Said(VehiclesPage.One(l, units).Blocks))]),
                new ReportPart.Said([new ResultBlock.Heading("Share of one truss"), .. inShort]),
                .. sections.Select((s, i) => new ReportPart.Fold($"share-{i + 1}", ReportPart.Brief(s.Section.Heading), [new ReportPart.Sketch(s.Drawing, s.Section.Sum, InWords(s.Section, units))], IsOpen: i == 0)),
                .. sections.Count == 0 ? (ReportPart[])[] : [new ReportPart.Said([new ResultBlock.Paragraph(CrossSectionPicture.SignsOf([.. sections.Select(s => s.Section)]))])],
                new ReportPart.Fold(ShareWorked, "The lever rule worked for every arrangement", [new ReportPart.Said([.. share.Skip(inShort.Length), .. TooWide(shares, rating.Bridge.Deck, units)])]),
            ],
        };
    }

    private static IEnumerable<ResultBlock> TooWide(IReadOnlyList<VehicleShares> shares, Deck deck, DisplayUnits units) => shares
        .Select(s => (s.Vehicles, s.Gauge, TooWide: s.Outcome as ShareOutcome.TooWide)).Where(s => s.TooWide is not null)
        .Select(s => SheetUnits.Step($"{Told.List(s.Vehicles.Select(v => v.Name))}: wheel lines {Told.Length(s.Gauge, units)} apart and 2·{Told.Length((s.TooWide!.Needed - s.Gauge) / 2, units)} to the kerbs = {Told.Length(s.TooWide.Needed, units)}; of the roadway of {Told.Length(deck.Roadway!.Value, units)} {Told.Length(s.TooWide.Needed - s.TooWide.Roadway, units)} lacks"));

    // A loading is drawn by its trains.
    private static IEnumerable<LiveLoad> Drawn(LiveLoad load) => load is Loading loading ? loading.Trains : [load];

    private static ReportPart.Sketch? SketchOf(LiveLoad load, DisplayUnits units)
    {
        string words = ReportPart.Brief($"{load.Name}: {LiveLoadWording.Describe(load, units)}");
        return load switch
        {
            Vehicle vehicle => new ReportPart.Sketch(VehicleSketch.Of(vehicle, units), words, $"Side view. {words}, from the front axle back."),
            TrackedVehicle tracked => new ReportPart.Sketch(VehicleSketch.Of(tracked, units), words, $"Side view. {words}."),
            _ => null,
        };
    }

    private static string InWords(CrossSection section, DisplayUnits units)
    {
        string[] wheels = [.. section.Wheels.Select(w => Told.Length(w, units))];
        string[] strips = [.. section.Strips.Select(s => $"{section.StripWords} from {Told.Length(s.From, units)} to {Told.Length(s.To, units)}")];
        string stands = wheels.Length > 0 ? $"Wheel lines at {string.Join(", ", wheels)} from the truss considered." : $"{string.Join(", ", strips)} from the truss considered.";
        return $"Cross-section of the deck. {section.Heading} {stands} {section.Reaction}. {section.Sum}";
    }
}
