namespace SpanRater.Files;

/// <summary>
/// The most that is read of anything, so that absurd input is refused in good time and with bounded memory. Each is far above what a bridge needs; what goes
/// beyond one is refused with a finding that names it.
/// </summary>
public static class InputLimits
{
    /// <summary>Bytes of a table.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    /// <summary>Bytes of a TOML file, whose syntax tree takes four hundred times their room: some thousand loadings are below it.</summary>
    public const int MostTomlBytes = 1024 * 1024;

    /// <summary>Characters of a line.</summary>
    public const int LongestLine = 100_000;

    /// <summary>Characters of a cell, notes among them.</summary>
    public const int LongestCell = 20_000;

    /// <summary>Cells of a row: ten times the widest table.</summary>
    public const int MostColumns = 500;

    /// <summary>Rows of a table: a catalogue of some thousand vehicles is below it.</summary>
    public const int MostRows = 20_000;

    /// <summary>Joints of a truss: the largest truss bridges have a few hundred. Its equations take the square of this in memory, and the cube in time.</summary>
    public const int MostJoints = 1_000;

    /// <summary>Members of a truss.</summary>
    public const int MostMembers = 3_000;

    /// <summary>Axles of a vehicle, or of vehicles that follow one another in one lane: the search for the worst place takes the square of this in time.</summary>
    public const int MostAxles = 500;

    /// <summary>Errors that are told in one go; after them comes how many more there are.</summary>
    public const int MostErrorsTold = 1_000;

    /// <summary>Characters of a name for which a near one is looked for.</summary>
    public const int LongestNameToGuess = 100;

    /// <summary>What a file that holds nothing may take to be opened: a pipe with no one at its other end never opens.</summary>
    public static readonly TimeSpan LongestOpening = TimeSpan.FromSeconds(2);
}
