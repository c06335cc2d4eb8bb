namespace SpanRater;

/// <summary>A question with its answer by two routes, and what comes out of the usual mistakes.</summary>
/// <param name="Question">The question.</param>
/// <param name="Answer">The answer by the equations of the whole truss at once [N; - for an ordinate].</param>
/// <param name="Key">The answer joint by joint [N; - for an ordinate].</param>
/// <param name="Placement">Where the train stands for a peak, found by hand's way of placing it; else null.</param>
/// <param name="Mistakes">What the usual mistakes give; values that pass for the right one are left out.</param>
public sealed record ExerciseItem(
    ExerciseQuestion Question,
    double Answer,
    double Key,
    TrainPlacement? Placement,
    IReadOnlyList<MistakenValue> Mistakes);

/// <summary>
/// An exercise with friendly numbers: the same for the same form, level, units and seed. Every answer was found twice, for the
/// whole truss at once and joint by joint.
/// </summary>
public sealed record Exercise
{
    /// <summary>The kind of form.</summary>
    public required FormKind Kind { get; init; }

    /// <summary>How much it asks for.</summary>
    public required ExerciseLevel Level { get; init; }

    /// <summary>The seed from which it was made.</summary>
    public required int Seed { get; init; }

    /// <summary>The measures of the form.</summary>
    public required FormMeasures Measures { get; init; }

    /// <summary>The truss.</summary>
    public required Truss Truss { get; init; }

    /// <summary>The joint loads; none at the hard level.</summary>
    public required LoadCase Loads { get; init; }

    /// <summary>The train of the hard level; else null.</summary>
    public required AxleTrain? Train { get; init; }

    /// <summary>The reactions under the loads [N]; none at the hard level.</summary>
    public required IReadOnlyList<Reaction> Reactions { get; init; }

    /// <summary>The forces of all members under the loads, joint by joint [N]; none at the hard level.</summary>
    public required IReadOnlyList<double> KeyForces { get; init; }

    /// <summary>The steps of the work, joint by joint, from the end that comes sooner to the last member asked for.</summary>
    public required IReadOnlyList<JointStep> Steps { get; init; }

    /// <summary>Ordinates of each asked member at the panel points, joint by joint [-]; empty but at the hard level.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<double>> KeyOrdinates { get; init; }

    /// <summary>The questions.</summary>
    public required IReadOnlyList<ExerciseItem> Items { get; init; }
}
