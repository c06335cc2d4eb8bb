namespace SpanRater;

/// <summary>Takes what was lost off a section, one observation after the other.</summary>
internal sealed class Wasting(MemberSection asBuilt, IReadOnlyList<Observation> observations, bool withDoubt)
{
    private readonly Dictionary<(string Part, int Piece), SectionPiece> pieces =
        asBuilt.Parts.SelectMany(p => p.Pieces.Select((piece, i) => (Key: (p.Name, i), piece))).ToDictionary(p => p.Key, p => p.piece);

    private readonly Dictionary<(string Part, int Piece, ShapeDimension? Finer), int> told = [];
    private List<ObservationFault> faults = [];

    public MemberSection Section => new(
        asBuilt.Name, [.. asBuilt.Parts.Select(p => p with { Pieces = [.. p.Pieces.Select((_, i) => pieces[(p.Name, i)])] })]);

    /// <summary>Applies what was seen at a cut, then what is slack; faults of the latter are told elsewhere, unless nothing is left.</summary>
    public void Apply(IReadOnlyList<int> atCut, IReadOnlyList<int> slack, List<ObservationFault> found)
    {
        int before = found.Count;
        faults = found;
        foreach (int index in atCut)
        {
            Apply(index, observations[index]);
        }

        faults = atCut.Count > 0 ? [] : found;
        foreach (int index in slack)
        {
            Apply(index, observations[index]);
        }

        if (found.Count == before && !pieces.Values.Any(p => p.Carries))
        {
            found.Add(new ObservationFault.NothingLeft(atCut.Count > 0 ? atCut[^1] : slack[^1]));
        }
    }

    /// <summary>The part of an observation; null with a fault where the section does not have it.</summary>
    public SectionPart? PartOf(int index, List<ObservationFault> found)
    {
        string name = observations[index].Part;
        SectionPart? part = name.Length == 0 && asBuilt.Parts.Count == 1 ? asBuilt.Parts[0] : asBuilt.FindPart(name);
        if (part is null)
        {
            found.Add(new ObservationFault.UnknownPart(index, name));
        }
        else if (observations[index].Piece is { } piece && !(piece >= 1 && piece <= part.Pieces.Count))
        {
            found.Add(new ObservationFault.UnknownPiece(index, part.Pieces.Count));
            return null;
        }

        return part;
    }

    private void Apply(int index, Observation observation)
    {
        if (PartOf(index, faults) is not { } part)
        {
            return;
        }

        if (observation is Observation.Slack slack)
        {
            Loosen(index, part, slack);
            return;
        }

        // The same fault in each of several pieces is one fault.
        int[] which = observation.Piece is { } one ? [one - 1] : [.. Enumerable.Range(0, part.Pieces.Count)];
        int before = faults.Count;
        foreach (int piece in which)
        {
            if (faults.Count > before)
            {
                return;
            }

            (string, int) key = (part.Name, piece);
            pieces[key] = Of(index, observation, key, pieces[key]);
        }
    }

    private void Loosen(int index, SectionPart part, Observation.Slack slack)
    {
        if (slack.Count >= part.Pieces.Count)
        {
            faults.Add(new ObservationFault.TooManySlack(index, part.Pieces.Count));
            return;
        }

        // Where it is not said which, those that would carry most: the least is left.
        int[] which = slack.Piece is { } one ? [one - 1]
            : [.. Enumerable.Range(0, part.Pieces.Count).Where(i => pieces[(part.Name, i)].Carries).OrderByDescending(i => pieces[(part.Name, i)].Shape.Area).Take(slack.Count)];
        foreach (int piece in which)
        {
            if (Claim(index, (part.Name, piece), null))
            {
                pieces[(part.Name, piece)] = pieces[(part.Name, piece)] with { Carries = false };
            }
        }
    }

    private SectionPiece Of(int index, Observation observation, (string Part, int Piece) key, SectionPiece piece)
    {
        SectionShape? shape = observation switch
        {
            Observation.Remaining remaining => Thinned(index, remaining, key, piece),
            Observation.Hole hole => Pierced(index, hole, piece.Shape),
            Observation.Decay decay => Decayed(index, decay, key, piece),
            _ => piece.Shape,
        };
        return observation is Observation.Gone && Claim(index, key, null) ? piece with { Carries = false } : piece with { Shape = shape ?? piece.Shape };
    }

    private bool Claim(int index, (string Part, int Piece) key, ShapeDimension? finer)
    {
        if (told.TryAdd((key.Part, key.Piece, finer), index))
        {
            return true;
        }

        faults.Add(new ObservationFault.ToldTwice(index, told[(key.Part, key.Piece, finer)]));
        return false;
    }

    private SectionShape? Thinned(int index, Observation.Remaining remaining, (string Part, int Piece) key, SectionPiece piece)
    {
        SectionShape shape = piece.Shape;
        IReadOnlyList<ShapeDimension> finer = shape.Kind.FinerOf(remaining.Dimension);
        if (!shape.Kind.CanBeLost.Contains(remaining.Dimension) || !finer.All(shape.Has))
        {
            faults.Add(new ObservationFault.NoSuchDimension(index, shape.Kind));
            return null;
        }

        double original = shape.AsBuilt(remaining.Dimension)!.Value;
        double value = remaining.Value - (withDoubt ? remaining.Doubt : 0);
        if (remaining.Value > original * (1 + 1e-9))
        {
            faults.Add(new ObservationFault.MoreThanBuilt(index, original));
            return null;
        }

        if (!(value > 0))
        {
            faults.Add(new ObservationFault.NothingRemains(index, remaining.Value > 0));
            return null;
        }

        double loss = Math.Max(0, original - value);
        foreach (ShapeDimension measure in finer)
        {
            if (!Claim(index, key, measure))
            {
                return null;
            }

            if (LossAtFaces(shape.Kind.SenseOf(measure), remaining.Face, piece, loss) is not { } faces)
            {
                faults.Add(new ObservationFault.NoSuchFace(index));
                return null;
            }

            shape = shape.Trimmed(measure, faces.Low, faces.High);
        }

        return shape;
    }

    private static (double Low, double High)? LossAtFaces(MeasureSense sense, SectionFace? face, SectionPiece piece, double loss)
    {
        if (face is not { } told)
        {
            return sense is MeasureSense.LeftToRight or MeasureSense.BottomToTop ? (loss / 2, loss / 2) : (0, loss);
        }

        return ((piece.Placement ?? new PiecePlacement(0, 0)).OwnFace(told), sense) switch
        {
            (SectionFace.Left, MeasureSense.LeftToRight) or (SectionFace.Bottom, MeasureSense.BottomToTop) => (loss, 0),
            (SectionFace.Right, MeasureSense.LeftToRight) or (SectionFace.Top, MeasureSense.BottomToTop) => (0, loss),
            _ => null,
        };
    }

    private SectionShape? Pierced(int index, Observation.Hole hole, SectionShape shape)
    {
        IReadOnlyList<ShapeDimension> walls = shape.Kind.Walls;
        if (hole.Wall is null ? walls.Count != 1 : !walls.Contains(hole.Wall.Value))
        {
            faults.Add(walls.Count == 0 || (hole.Wall is { } said && shape.Kind.FinerOf(said).Count == 1) ? new ObservationFault.NoSuchDimension(index, shape.Kind) : new ObservationFault.WallNotSaid(index, shape.Kind));
            return null;
        }

        ShapeDimension wall = hole.Wall ?? walls[0];
        double length = hole.Count * (hole.Diameter + (withDoubt ? hole.Doubt : 0)), there = shape.LengthOf(wall);
        if (length >= there)
        {
            faults.Add(new ObservationFault.HoleTooLarge(index, there));
            return null;
        }

        return shape.WithHole(wall, length);
    }

    private SectionShape? Decayed(int index, Observation.Decay decay, (string Part, int Piece) key, SectionPiece piece)
    {
        SectionShape shape = piece.Shape;
        if (!shape.Kind.HasFourFaces)
        {
            faults.Add(new ObservationFault.NotTimber(index, shape.Kind));
            return null;
        }

        double depth = decay.Depth + (withDoubt ? decay.Doubt : 0);
        SectionFace? own = decay.Face is { } face ? (piece.Placement ?? new PiecePlacement(0, 0)).OwnFace(face) : null;
        if (decay.Face is not null && own is null)
        {
            faults.Add(new ObservationFault.NoSuchFace(index));
            return null;
        }

        foreach ((ShapeDimension measure, SectionFace low, SectionFace high) in
            ((ShapeDimension, SectionFace, SectionFace)[])[(ShapeDimension.Width, SectionFace.Left, SectionFace.Right), (ShapeDimension.Depth, SectionFace.Bottom, SectionFace.Top)])
        {
            double atLow = own is null || own == low ? depth : 0, atHigh = own is null || own == high ? depth : 0;
            if (atLow + atHigh == 0)
            {
                continue;
            }

            // Decay of two faces adds; with a remaining dimension it would count twice.
            if (told.TryGetValue((key.Part, key.Piece, measure), out int first)
                && !(observations[first] is Observation.Decay { Face: { } other } && decay.Face is { } here && other != here))
            {
                faults.Add(new ObservationFault.ToldTwice(index, first));
                return null;
            }

            told[(key.Part, key.Piece, measure)] = index;
            if (shape.Now(measure) <= atLow + atHigh)
            {
                faults.Add(new ObservationFault.NothingRemains(index, shape.Now(measure) > (atLow + atHigh) - (withDoubt ? 2 * decay.Doubt : 0)));
                return null;
            }

            shape = shape.Trimmed(measure, atLow, atHigh);
        }

        return shape;
    }
}
