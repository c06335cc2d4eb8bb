namespace SpanRater.Tests.Published.Connections;

/// <summary>
/// Every row of fasteners-pins-gussets.csv, whose values are from memory of the standards named there: the program has the value, or the row is not used, for the reason given.
/// </summary>
public sealed class FastenersPinsGussetsTests
{
    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch, Inch = 0.0254;

    private static readonly Dictionary<string, string> NotUsed = new()
    {
        ["rivet shear allowable ksi ASR inventory|A502 Grade 1"] = "bearing of rivets by ASR is not remembered, so that ASR does not rate them",
        ["rivet shear allowable ksi ASR inventory|A502 Grade 2"] = "the same",
        ["pin ASR x Fy|bearing, subject to rotation"] = "pins of trusses do not turn in service",
        ["bolt LRFD|A325 shear threads excluded coefficient (to 7th ed.)"] = "the 8th edition is used, and the clause says so",
        ["bolt LRFD|A325 shear threads included coefficient (to 7th ed.)"] = "the same",
        ["eyebar|pin diameter / body width, at least"] = "a rule of design, not of strength",
        ["eyebar|pin hole over pin diameter, at most in"] = "a rule of design, not of strength",
        ["gusset|Omega (2009): uniform"] = "the value of 2014 is used, and the clause says so",
        ["gusset|Omega (2009): flexural shear"] = "the same",
        ["gusset|free edge a/t coefficient x sqrt(E/Fy)"] = "a rule of design, not of strength",
        ["gusset|free edge a/t limit Fy=36"] = "the same",
        ["gusset|free edge a/t limit Fy=50"] = "the same",
    };

    public static IEnumerable<TheoryDataRow<string, string, double>> Rows() =>
        from row in PublishedTable.Read("Connections/fasteners-pins-gussets.csv")
        select new TheoryDataRow<string, string, double>(row["group"], row["item"], row.Number("value")) { Label = row.Label($"{row["group"]}, {row["item"]}: {row["value"]}") };

    [Theory]
    [MemberData(nameof(Rows))]
    public void EveryRow_IsWhatTheProgramHas_OrIsNotUsedForAReason(string group, string item, double value)
    {
        if (NotUsed.TryGetValue($"{group}|{item}", out string? why))
        {
            Assert.NotEmpty(why);
            return;
        }

        Assert.Equal(value, OfProgram(group, item), 1e-9);
    }

    private static double OfProgram(string group, string item)
    {
        ConnectionRule lrfr = ConnectionRule.LoadAndResistance, asr = ConnectionRule.Allowable(AllowableLevel.Inventory);
        double fy = 36 * Ksi, d = 3 * Inch, circle = Math.PI * d * d / 4;
        return (group, item) switch
        {
            ("rivet shear phiF ksi LRFR", "constructed prior to 1936 or of unknown origin") => PerArea(FastenerGrade.RivetBefore1936),
            ("rivet shear phiF ksi LRFR", "constructed after 1936 but of unknown origin") => PerArea(FastenerGrade.RivetFrom1936),
            ("rivet shear phiF ksi LRFR", "ASTM A502 Grade 1") => PerArea(FastenerGrade.RivetGrade1),
            ("rivet shear phiF ksi LRFR", "ASTM A502 Grade 2") => PerArea(FastenerGrade.RivetGrade2),
            ("pin ASR x Fy", "bending extreme fibre") => asr.PinBending(fy, d, 0).Value / (Math.PI * d * d * d / 32) / fy,
            ("pin ASR x Fy", "shear") => asr.PinShear(fy, d)!.Value / circle / fy,
            ("pin ASR x Fy", "bearing, not subject to rotation") => asr.PinBearing(fy, d, Inch).Value / (d * Inch) / fy,
            ("pin LRFD", "bearing Rn = 1.5 t D Fy coefficient") => lrfr.PinBearing(fy, d, Inch).Value / (d * Inch * fy),
            ("pin LRFD", "interaction 6M/(phi_f D^3 Fy) + [2.2V/(phi_v D^2 Fy)]^3 limit") => Interaction(lrfr, fy, d),
            ("bolt LRFD", "excluded (8th ed. on)") => PerArea(FastenerGrade.BoltThreadsOut) / 0.80 / 120,
            ("bolt LRFD", "included (8th ed. on)") => PerArea(FastenerGrade.BoltThreadsIn) / 0.80 / 120,
            ("bolt LRFD", "A325 Fub ksi") => ConnectionRule.BoltUltimate / Ksi,
            ("eyebar", "head net section through pin hole / body area, at least") => TensionRule.LeastHead,
            ("gusset", "Whitmore dispersion angle deg") => Math.Atan((Gusset(4).WhitmoreWidth - (3 * Inch)) / 2 / (9 * Inch)) * 180 / Math.PI,
            ("gusset", "shear yield coefficient") => Plane(ConnectionMode.PlaneRupture).Nominal / (10 * Inch * Inch * 60 * Ksi),
            ("gusset", "Omega (2014 MBE)") => Plane(ConnectionMode.PlaneYield).Nominal / (12 * Inch * Inch * fy) / 0.58,
            ("gusset", "phi_vy") => Plane(ConnectionMode.PlaneYield).Factors.Single().Value,
            ("gusset", "phi_vu") => Plane(ConnectionMode.PlaneRupture).Factors.Single().Value,
            ("gusset", "K (2014 MBE, Lmid)") => EffectiveLength(),
            _ => throw new ArgumentException($"No check of {group}, {item}.", nameof(item)),
        };
    }

    private static double PerArea(FastenerGrade grade)
    {
        var one = new FastenerConnection("one", 0, PartKind.Rivets, 0, 0, grade, 1, Inch, 1, Inch);
        return ConnectionRule.LoadAndResistance.FastenerShear(one)!.Value / (Math.PI * Inch * Inch / 4) / Ksi;
    }

    // At a moment and a shear that use the pin up the sum is the limit.
    private static double Interaction(ConnectionRule rule, double fy, double d)
    {
        double shear = 0.3 * d * d * fy, moment = rule.PinBending(fy, d, shear).Value;
        return (6 * moment / (d * d * d * fy)) + Math.Pow(2.2 * shear / (d * d * fy), 3);
    }

    private static GussetConnection Gusset(int perLine) => new("g", 0, 0, 0, 1, Inch, 2, perLine, 3 * Inch, 3 * Inch, 2 * Inch, Inch, 10 * Inch);

    private static MetalStrength Metal => new(36 * Ksi, 60 * Ksi, new StrengthOrigin.Given("a test"));

    private static ConnectionStrength Plane(ConnectionMode mode) =>
        ConnectionRule.LoadAndResistance.Plane(new GussetShear("p", 0, 0, [0], 1, Inch, 12 * Inch, 2 * Inch), Metal).Single(s => s.Mode == mode);

    // π² E A/(K L/r)² with r = t/√12.
    private static double EffectiveLength()
    {
        ConnectionStrength strength = ConnectionRule.LoadAndResistance.Gusset(Gusset(4), Metal, 29_000 * Ksi, Sense.Compression).Single();
        double pe = strength.Terms.Single(t => t.Term == ConnectionTerm.ElasticForce).Value, area = Gusset(4).WhitmoreWidth * Inch;
        return Math.Sqrt(Math.PI * Math.PI * 29_000 * Ksi * area / pe) / (10 * Inch) * Inch / Math.Sqrt(12);
    }
}
