namespace SpanRater;

/// <summary>How several equal pieces of a part lie beside each other.</summary>
public abstract record PieceArrangement
{
    private PieceArrangement()
    {
    }

    /// <summary>Where each piece lies, from left to right, those below first; null where the arrangement does not go with the shape or the count.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="count">How many.</param>
    /// <param name="x">x of the middle of all [m].</param>
    /// <param name="y">y of the middle of all; of a pair of angles that of their heels [m].</param>
    /// <param name="turned">How each is turned [deg].</param>
    /// <param name="upsideDown">Whether top and bottom of all are exchanged.</param>
    public abstract IReadOnlyList<PiecePlacement>? Placements(SectionShape shape, int count, double x, double y, double turned, bool upsideDown);

    /// <summary>Two or four angles or two channels about the y axis.</summary>
    /// <param name="BacksOut">Whether the backs look outwards; else they look at each other.</param>
    /// <param name="Between">Distance between the backs: clear where they look at each other, over all where they look outwards [m].</param>
    /// <param name="Rise">Of four angles, distance between the heels of the upper and the lower pair [m].</param>
    public sealed record Backs(bool BacksOut, double Between, double? Rise) : PieceArrangement
    {
        /// <inheritdoc/>
        public override IReadOnlyList<PiecePlacement>? Placements(SectionShape shape, int count, double x, double y, double turned, bool upsideDown)
        {
            ArgumentNullException.ThrowIfNull(shape);
            bool isFour = count == 4 && shape.Kind == ShapeKind.Angle && Rise is not null;
            if (!shape.Kind.HasBack || turned != 0 || !(isFour || (count == 2 && Rise is null)))
            {
                return null;
            }

            // As drawn a shape runs to the right of its back.
            IEnumerable<PiecePlacement> Pair(double height, bool turnedOver) =>
                [new(x - (Between / 2), height, 0, Mirrored: !BacksOut, turnedOver), new(x + (Between / 2), height, 0, Mirrored: BacksOut, turnedOver)];
            return isFour ? [.. Pair(y - (Rise!.Value / 2), false), .. Pair(y + (Rise.Value / 2), true)] : [.. Pair(y, upsideDown)];
        }
    }

    /// <summary>Pieces in a row with equal clear distances.</summary>
    /// <param name="Gap">Clear distance between neighbours [m].</param>
    /// <param name="IsStack">Whether they stand above each other; else beside each other.</param>
    public sealed record Row(double Gap, bool IsStack) : PieceArrangement
    {
        /// <inheritdoc/>
        public override IReadOnlyList<PiecePlacement>? Placements(SectionShape shape, int count, double x, double y, double turned, bool upsideDown)
        {
            ArgumentNullException.ThrowIfNull(shape);
            if (count < 2)
            {
                return null;
            }

            // The middle of all is that of their extents, wherever the origin of the drawing is.
            SectionProperties one = new PiecePlacement(0, 0, turned, false, upsideDown).Of(shape);
            double step = Gap + (IsStack ? one.Top - one.Bottom : one.Right - one.Left);
            double offX = IsStack ? 0 : (one.Left + one.Right) / 2, offY = IsStack ? (one.Bottom + one.Top) / 2 : 0;
            return
            [
                .. Enumerable.Range(0, count).Select(i => (i - ((count - 1) / 2.0)) * step)
                    .Select(d => new PiecePlacement(x - offX + (IsStack ? 0 : d), y - offY + (IsStack ? d : 0), turned, false, upsideDown)),
            ];
        }
    }
}
