namespace SpanRater.Tests.Published;

/// <summary>
/// Through trusses with parallel chords, drawn as the textbooks draw them: lower joints L0, L1 … carry the deck, upper
/// joints U1, U2 … stand above them, the diagonals fall toward midspan. Built here and not taken from the program, so
/// that a wrong form cannot agree with itself.
/// </summary>
internal static class ParallelChordTruss
{
    /// <summary>A Pratt truss: verticals, and mains that fall toward midspan.</summary>
    public static SolvedTruss Pratt(int panels, double panel, double height) => PrattWithCounter(panels, panel, height, null);

    /// <summary>A Pratt truss in which one panel of the left half has its counter and no main.</summary>
    public static SolvedTruss PrattWithCounter(int panels, double panel, double height, int? counterPanel)
    {
        var members = Chords(panels);
        for (int i = 1; i < panels; i++)
        {
            members.Add(($"L{i}", $"U{i}"));
        }

        for (int j = 2; j < panels; j++)
        {
            bool falls = (j <= panels / 2) != (j == counterPanel);
            members.Add(falls ? ($"U{j - 1}", $"L{j}") : ($"L{j - 1}", $"U{j}"));
        }

        return SolvedTruss.Of(MainJoints(panels, panel, height), members);
    }

    /// <summary>
    /// A K-truss: every vertical but the middle one has a mid-joint M1, M2 … halfway up, from which two diagonals run to
    /// the upper and the lower joint of the next panel point toward midspan.
    /// </summary>
    public static SolvedTruss K(int panels, double panel, double height)
    {
        var members = Chords(panels);
        List<Joint> joints = [.. MainJoints(panels, panel, height)];
        int middle = panels / 2;
        members.Add(($"L{middle}", $"U{middle}"));
        for (int i = 1; i < panels; i++)
        {
            if (i == middle)
            {
                continue;
            }

            int next = i < middle ? i + 1 : i - 1;
            joints.Add(new Joint($"M{i}", i * panel, height / 2));
            members.AddRange([($"L{i}", $"M{i}"), ($"M{i}", $"U{i}"), ($"M{i}", $"U{next}"), ($"M{i}", $"L{next}")]);
        }

        return SolvedTruss.Of(joints, members);
    }

    /// <summary>A Warren truss with verticals: the diagonals fall and rise in turn, from the end post on.</summary>
    public static SolvedTruss WarrenWithVerticals(int panels, double panel, double height)
    {
        var members = Chords(panels);
        for (int i = 1; i < panels; i++)
        {
            members.Add(($"L{i}", $"U{i}"));
        }

        for (int j = 2; j < panels; j++)
        {
            members.Add(j % 2 == 0 ? ($"U{j - 1}", $"L{j}") : ($"L{j - 1}", $"U{j}"));
        }

        return SolvedTruss.Of(MainJoints(panels, panel, height), members);
    }

    // Both chords and the end posts.
    private static List<(string From, string To)> Chords(int panels)
    {
        var members = new List<(string From, string To)> { ("L0", "U1"), ($"U{panels - 1}", $"L{panels}") };
        for (int i = 0; i < panels; i++)
        {
            members.Add(($"L{i}", $"L{i + 1}"));
        }

        for (int i = 1; i < panels - 1; i++)
        {
            members.Add(($"U{i}", $"U{i + 1}"));
        }

        return members;
    }

    private static List<Joint> MainJoints(int panels, double panel, double height)
    {
        var joints = new List<Joint>();
        for (int i = 0; i <= panels; i++)
        {
            Support? support = i == 0 ? Support.Pin : i == panels ? Support.Roller() : null;
            joints.Add(new Joint($"L{i}", i * panel, 0, support, IsPanelPoint: true));
        }

        for (int i = 1; i < panels; i++)
        {
            joints.Add(new Joint($"U{i}", i * panel, height));
        }

        return joints;
    }
}
