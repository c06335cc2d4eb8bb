namespace SpanRater;

/// <summary>Metal members in compression.</summary>
internal static class CompressionCapacity
{
    /// <summary>No wall is thinner: what is left of a wasted leg may come out as nothing by round-off [m].</summary>
    private const double LeastRadius = 1e-6;

    public static IReadOnlyList<ModeAtCut> Modes(MemberMake make, MetalMaterial metal, StrengthRules rules, List<MissingDatum> missing)
    {
        missing.AddRange(new[] { metal.MissingYield, metal.MissingModulus }.OfType<MissingDatum>());
        MemberSection asBuilt = make.Section.AsBuilt;
        if (asBuilt.PartsNotPlaced.Count > 0)
        {
            missing.Add(new MissingDatum.Positions(asBuilt.Name, string.Join(", ", asBuilt.PartsNotPlaced)));
        }

        bool isSingleAngle = asBuilt.IsSingleAngle;
        if (!isSingleAngle && make.Ends is null && (make.InPlaneFactor is null || (make.OutOfPlaneFactor is null && make.Pony is null)))
        {
            missing.Add(new MissingDatum.Ends());
        }

        if (make.OutOfPlaneLength is null && make.Pony is null)
        {
            missing.Add(new MissingDatum.HeldSideways(string.Join(", ", make.LooseJoints)));
        }

        if (make.Binding is null && MemberCapacity.Carrying(asBuilt).Count() > 1)
        {
            missing.Add(new MissingDatum.PartsHeld(asBuilt.Name));
        }

        if (missing.Count > 0)
        {
            return [];
        }

        var modes = new List<ModeAtCut>();
        foreach ((string? place, MemberSection section, FoundCut? cut) in MemberCapacity.Cuts(make))
        {
            if (AxesOf(make, section, metal.Modulus!.Value, isSingleAngle, missing) is not { } axes)
            {
                return [];
            }

            ColumnStrength column = rules.Column(metal.Strength!).Strength(section.Area, metal.Strength!.Yield, axes.Governing.ElasticForce);
            modes.Add(new ModeAtCut(place, section, column) { Axes = axes });
            (double x, double y) = MemberCapacity.Eccentricity(make, cut);
            if (x + y > 0)
            {
                (double moment, double eccentricity) = TensionCapacity.TogetherOn(section.Properties!, metal.Strength, rules, x, y);
                double inPlane = x > 0 ? axes.Governing.ElasticForce : axes.InPlane.ElasticForce;
                modes.Add(new ModeAtCut(place, section, rules.Combined.Compression(column, inPlane, moment, eccentricity)) { Axes = axes, EccentricityX = x, EccentricityY = y });
            }
        }

        return modes;
    }

    private static ColumnAxes? AxesOf(MemberMake make, MemberSection section, double modulus, bool isSingleAngle, List<MissingDatum> missing)
    {
        SectionProperties properties = section.Properties!;
        if (isSingleAngle)
        {
            return OfSingleAngle(make, section, modulus, missing);
        }

        double factor = make.Ends is { } ends ? EffectiveLength.Factor(ends == EndFastening.Pinned ? MemberEnds.Pinned : MemberEnds.Riveted) : 1;
        BucklingAxis inPlane = Axis(modulus, section.Area, make.InPlaneFactor ?? factor, make.InPlaneLength, properties.Rx);
        if (make.Pony is { } hold)
        {
            var chord = new PonyChord(modulus, properties.Iy, hold.PanelLength, hold.Frame.Stiffness);
            if (chord.Missing is { } table && hold.GivenFactor is null)
            {
                missing.Add(table);
                return null;
            }

            double elastic = chord.ElasticForce ?? chord.ElasticForceFor(hold.GivenFactor!.Value);
            double used = chord.ElasticForce is null ? hold.GivenFactor!.Value : chord.EffectiveLengthFactor;
            BucklingAxis whole = new(used, hold.PanelLength, properties.Ry, used * hold.PanelLength / properties.Ry, elastic) { Pony = chord };
            return Bound(make, section, modulus, inPlane, whole);
        }

        return Bound(make, section, modulus, inPlane, Axis(modulus, section.Area, make.OutOfPlaneFactor ?? factor, make.OutOfPlaneLength!.Value, properties.Ry));
    }

    private static BucklingAxis Axis(double modulus, double area, double factor, double length, double radius)
    {
        double slenderness = factor * length / radius;
        return new BucklingAxis(factor, length, radius, slenderness, ElasticBuckling.Force(modulus, area, slenderness));
    }

    // Fastened to gussets in the plane of the truss by its upright leg.
    private static ColumnAxes? OfSingleAngle(MemberMake make, MemberSection section, double modulus, List<MissingDatum> missing)
    {
        SectionShape shape = MemberCapacity.Carrying(section).Single().Shape;
        SectionProperties properties = section.Properties!;
        double connected = shape.AsBuilt(ShapeDimension.Depth)!.Value, outstanding = shape.AsBuilt(ShapeDimension.Width)!.Value;
        double length = Math.Max(make.InPlaneLength, make.OutOfPlaneLength ?? 0);
        if (outstanding / connected >= SingleAngle.LargestLegRatio || connected / outstanding >= SingleAngle.LargestLegRatio)
        {
            missing.Add(new MissingDatum.LegsTooUnlike());
            return null;
        }

        double slenderness = connected >= outstanding
            ? SingleAngle.Slenderness(length, properties.Ry)
            : SingleAngle.SlendernessByShorterLeg(length, properties.Ry, properties.LeastRadius, outstanding / connected);
        var axis = new BucklingAxis(null, length, properties.Ry, slenderness, ElasticBuckling.Force(modulus, section.Area, slenderness));
        return new ColumnAxes(axis, axis);
    }

    // Parts slide along each other where the member bends across the direction in which they lie side by side.
    private static ColumnAxes Bound(MemberMake make, MemberSection section, double modulus, BucklingAxis inPlane, BucklingAxis outOfPlane)
    {
        SectionPiece[] pieces = [.. MemberCapacity.Carrying(section)];
        if (make.Binding is not { } binding || pieces.Length < 2 || binding is Binding.Solid)
        {
            return new ColumnAxes(inPlane, outOfPlane);
        }

        SectionProperties[] placed = [.. pieces.Select(p => p.Placement!.Of(p.Shape))];
        SectionProperties whole = section.Properties!;
        double across = placed.Sum(p => p.Area * (p.X - whole.X) * (p.X - whole.X)), along = placed.Sum(p => p.Area * (p.Y - whole.Y) * (p.Y - whole.Y));
        bool isOutOfPlane = across >= along;
        SectionProperties[] legs = [.. placed.Where((_, i) => pieces[i].Shape.Kind != ShapeKind.Plate && pieces[i].Shape.Kind != ShapeKind.StandingPlate)];
        legs = legs.Length == 0 ? placed : legs;
        BucklingAxis bound = Bound(binding, section.Area, modulus, isOutOfPlane ? outOfPlane : inPlane, legs, isOutOfPlane);
        return isOutOfPlane ? new ColumnAxes(inPlane, bound) : new ColumnAxes(bound, outOfPlane);
    }

    private static BucklingAxis Bound(Binding binding, double area, double modulus, BucklingAxis axis, SectionProperties[] legs, bool isOutOfPlane)
    {
        double legRadius = Math.Max(LeastRadius, legs.Min(l => l.LeastRadius));
        switch (binding)
        {
            case Binding.Stitched stitched:
                double separation = isOutOfPlane ? legs.Max(l => l.X) - legs.Min(l => l.X) : legs.Max(l => l.Y) - legs.Min(l => l.Y);
                double partRadius = stitched.Connection == BuiltUpConnection.Welded ? legs.Min(l => isOutOfPlane ? l.Ry : l.Rx) : legRadius;
                double wholeSlenderness = ElasticBuckling.Slenderness(modulus, area, axis.ElasticForce);
                double slenderness = BuiltUpColumn.Slenderness(wholeSlenderness, stitched.Pitch, partRadius, stitched.Connection, separation);
                return axis with
                {
                    Slenderness = slenderness,
                    ElasticForce = ElasticBuckling.Force(modulus, area, slenderness),
                    Binding = binding,
                    Bound = new BoundParts(axis.ElasticForce, wholeSlenderness, partRadius, stitched.Pitch) { Separation = stitched.Connection == BuiltUpConnection.Welded ? separation : null },
                };
            case Binding.Laced laced:
                return Sheared(binding, axis, area, modulus, laced.Lacing.ShearFlexibility(modulus), laced.Lacing.FreeLength(laced.MissingInRow), legRadius);
            case Binding.Battened battened:
                double legInertia = legs.Min(l => isOutOfPlane ? l.Iy : l.Ix);
                double give = new Battens(battened.Pitch, battened.Separation, battened.BattenInertia, legInertia).ShearFlexibility(modulus);
                return Sheared(binding, axis, area, modulus, give, battened.Pitch, legRadius, legInertia);
            default:
                return axis;
        }
    }

    private static BucklingAxis Sheared(Binding binding, BucklingAxis axis, double area, double modulus, double flexibility, double freeLength, double legRadius, double? legInertia = null)
    {
        double whole = BuiltUpColumn.ElasticForce(axis.ElasticForce, flexibility), legs = BuiltUpColumn.ElasticForceOfLegs(modulus, area, freeLength, legRadius);
        double elastic = Math.Min(whole, legs);
        var parts = new BoundParts(axis.ElasticForce, ElasticBuckling.Slenderness(modulus, area, axis.ElasticForce), legRadius, freeLength) { ShearFlexibility = flexibility, LegInertia = legInertia };
        return axis with { Slenderness = ElasticBuckling.Slenderness(modulus, area, elastic), ElasticForce = elastic, LegForce = legs, Binding = binding, Bound = parts };
    }
}
