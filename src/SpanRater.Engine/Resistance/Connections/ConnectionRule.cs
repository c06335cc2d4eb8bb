namespace SpanRater;

/// <summary>How a method makes the strength of connections.</summary>
public abstract class ConnectionRule
{
    /// <summary>Angle by which force spreads in a gusset plate [°].</summary>
    public const double WhitmoreAngle = 30;

    /// <summary>Tensile strength of A325 bolts, 120 ksi [Pa].</summary>
    public const double BoltUltimate = 120_000 * PublishedStrength.PoundPerSquareInch;

    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    private ConnectionRule()
    {
    }

    /// <summary>LRFR. Source: AASHTO LRFD 6.7.6, 6.13 and MBE 6A.6.12.5 and 6A.6.12.6, from memory.</summary>
    public static ConnectionRule LoadAndResistance { get; } = new LrfrRule();

    /// <summary>ASR. Source: AASHTO Standard Specifications, Table 10.32.1A, and MBE 6B.5.2, from memory. It has no rule here for fasteners and gussets.</summary>
    /// <param name="level">The level.</param>
    public static ConnectionRule Allowable(AllowableLevel level) => new AsrRule(level);

    /// <summary>Whether shear on a pin lessens the moment that it carries, by an interaction of both.</summary>
    public virtual bool PinShearLessensMoment => false;

    /// <summary>A pin in bending, with the shear that acts there.</summary>
    /// <param name="yield">Yield of the pin [Pa].</param>
    /// <param name="diameter">Its diameter [m].</param>
    /// <param name="shear">Factored shear at the same section; counts only where it lessens the moment [N].</param>
    public abstract ConnectionStrength PinBending(double yield, double diameter, double shear);

    /// <summary>A pin in shear; null where that is part of its bending.</summary>
    /// <param name="yield">Yield of the pin [Pa].</param>
    /// <param name="diameter">Its diameter [m].</param>
    public abstract ConnectionStrength? PinShear(double yield, double diameter);

    /// <summary>Bearing of plates on a pin that does not turn.</summary>
    /// <param name="yield">The lesser yield of pin and plates [Pa].</param>
    /// <param name="diameter">Diameter of the pin [m].</param>
    /// <param name="thickness">Thickness of all plates that carry the force [m].</param>
    public abstract ConnectionStrength PinBearing(double yield, double diameter, double thickness);

    /// <summary>Fasteners in shear; null where the method has no value for the grade.</summary>
    /// <param name="fasteners">The fasteners.</param>
    public abstract ConnectionStrength? FastenerShear(FastenerConnection fasteners);

    /// <summary>What fasteners bear on; null where the method has no rule for it.</summary>
    /// <param name="fasteners">The fasteners.</param>
    /// <param name="ultimate">Tensile strength of the plates [Pa].</param>
    public abstract ConnectionStrength? FastenerBearing(FastenerConnection fasteners, double ultimate);

    /// <summary>Gusset plates pulled or pressed by one member; empty where the method has no rule for gussets.</summary>
    /// <param name="gusset">The plates.</param>
    /// <param name="metal">Their strength, with the tensile strength.</param>
    /// <param name="elastic">Modulus of elasticity [Pa].</param>
    /// <param name="sense">Sense of the member's force.</param>
    public virtual IReadOnlyList<ConnectionStrength> Gusset(GussetConnection gusset, MetalStrength metal, double elastic, Sense sense) => [];

    /// <summary>Gusset plates in shear along a plane; empty where the method has no rule for gussets.</summary>
    /// <param name="gusset">The plates.</param>
    /// <param name="metal">Their strength, with the tensile strength.</param>
    public virtual IReadOnlyList<ConnectionStrength> Plane(GussetShear gusset, MetalStrength metal) => [];

    private static double Modulus(double diameter) => Math.PI * Math.Pow(diameter, 3) / 32;

    private static double Circle(double diameter) => Math.PI * diameter * diameter / 4;

    private sealed class LrfrRule : ConnectionRule
    {
        private const double Interaction = 0.95, ShearInBending = 2.2, BearingFactor = 1.5, ShearYield = 0.58, Uneven = 0.88, EffectiveLength = 0.5;

        public override bool PinShearLessensMoment => true;

        // 6 M/(φf D³ Fy) + (2.2 V/(φv D² Fy))³ = 0.95: the moment that the shear leaves.
        public override ConnectionStrength PinBending(double yield, double diameter, double shear)
        {
            double left = Math.Max(0, Interaction - Math.Pow(ShearInBending * Math.Abs(shear) / (diameter * diameter * yield), 3));
            return new ConnectionStrength(
                ConnectionMode.PinBendingAndShear, left * Math.Pow(diameter, 3) * yield / 6, [new("φf", 1.00, ConnectionClauses.PinLrfr)], [ConnectionClauses.PinLrfr],
                [(ConnectionTerm.Diameter, diameter), (ConnectionTerm.Yield, yield), (ConnectionTerm.Shear, Math.Abs(shear))]);
        }

        public override ConnectionStrength? PinShear(double yield, double diameter) => null;

        public override ConnectionStrength PinBearing(double yield, double diameter, double thickness) => new(
            ConnectionMode.PinBearing, BearingFactor * thickness * diameter * yield, [new("φb", 1.00, ConnectionClauses.PinBearingLrfr)], [ConnectionClauses.PinBearingLrfr],
            [(ConnectionTerm.Thickness, thickness), (ConnectionTerm.Diameter, diameter), (ConnectionTerm.Yield, yield)]);

        public override ConnectionStrength? FastenerShear(FastenerConnection fasteners)
        {
            ArgumentNullException.ThrowIfNull(fasteners);
            double area = fasteners.Count * fasteners.Planes * Circle(fasteners.Diameter);
            (double stress, Clause clause, StrengthFactor[] factors) = fasteners.Grade switch
            {
                FastenerGrade.RivetBefore1936 => (18 * Ksi, ConnectionClauses.RivetsLrfr, Array.Empty<StrengthFactor>()),
                FastenerGrade.RivetFrom1936 => (21 * Ksi, ConnectionClauses.RivetsLrfr, []),
                FastenerGrade.RivetGrade1 => (27 * Ksi, ConnectionClauses.RivetsLrfr, []),
                FastenerGrade.RivetGrade2 => (32 * Ksi, ConnectionClauses.RivetsLrfr, []),
                FastenerGrade.BoltThreadsOut => (0.56 * BoltUltimate, ConnectionClauses.BoltsLrfr, [new("φs", 0.80, ConnectionClauses.BoltsLrfr)]),
                _ => (0.45 * BoltUltimate, ConnectionClauses.BoltsLrfr, [new("φs", 0.80, ConnectionClauses.BoltsLrfr)]),
            };
            return new ConnectionStrength(
                ConnectionMode.FastenerShear, area * stress, factors, [clause],
                [(ConnectionTerm.Count, fasteners.Count * fasteners.Planes), (ConnectionTerm.Diameter, fasteners.Diameter), (ConnectionTerm.Area, area), (ConnectionTerm.Stress, stress)]);
        }

        public override ConnectionStrength FastenerBearing(FastenerConnection fasteners, double ultimate)
        {
            ArgumentNullException.ThrowIfNull(fasteners);
            double area = fasteners.Count * fasteners.Diameter * fasteners.Thickness;
            return new ConnectionStrength(
                ConnectionMode.FastenerBearing, 2.4 * area * ultimate, [new("φbb", 0.80, ConnectionClauses.FastenerBearing)], [ConnectionClauses.FastenerBearing],
                [(ConnectionTerm.Count, fasteners.Count), (ConnectionTerm.Diameter, fasteners.Diameter), (ConnectionTerm.Thickness, fasteners.Thickness), (ConnectionTerm.Ultimate, ultimate)]);
        }

        public override IReadOnlyList<ConnectionStrength> Gusset(GussetConnection gusset, MetalStrength metal, double elastic, Sense sense)
        {
            ArgumentNullException.ThrowIfNull(gusset);
            ArgumentNullException.ThrowIfNull(metal);
            double plates = gusset.Plates * gusset.Thickness, width = gusset.WhitmoreWidth, gross = width * plates, net = (width - (gusset.Lines * gusset.Hole)) * plates, fu = metal.Ultimate!.Value;
            if (sense == Sense.Compression)
            {
                // K = 0.5 and r = t/√12: Pe = π² E/(K L/r)² A.
                double slenderness = EffectiveLength * gusset.MiddleLength!.Value * Math.Sqrt(12) / gusset.Thickness, elasticForce = ElasticBuckling.Force(elastic, gross, slenderness);
                ColumnStrength column = ColumnCurve.LoadAndResistance.Strength(gross, metal.Yield, elasticForce);
                return
                [
                    new(ConnectionMode.WhitmoreBuckling, column.Nominal, [new("φcg", 0.75, ConnectionClauses.GussetCompression)], [ConnectionClauses.Whitmore, ConnectionClauses.GussetCompression],
                        [(ConnectionTerm.Width, width), (ConnectionTerm.Thickness, plates), (ConnectionTerm.Length, gusset.MiddleLength.Value), (ConnectionTerm.ElasticForce, elasticForce), (ConnectionTerm.Yield, metal.Yield)]),
                ];
            }

            double block = ((gusset.PerLine - 1) * gusset.Pitch) + gusset.Edge, across = ((gusset.Lines - 1) * (gusset.Gauge - gusset.Hole)) * plates;
            double shearGross = 2 * block * plates, shearNet = 2 * (block - ((gusset.PerLine - 0.5) * gusset.Hole)) * plates;
            double torn = Math.Min(ShearYield * fu * shearNet, ShearYield * metal.Yield * shearGross) + (fu * across);
            return
            [
                new(ConnectionMode.WhitmoreYield, gross * metal.Yield, [new("φy", 0.95, ConnectionClauses.GussetTension)], [ConnectionClauses.Whitmore, ConnectionClauses.GussetTension], [(ConnectionTerm.Width, width), (ConnectionTerm.Thickness, plates), (ConnectionTerm.Yield, metal.Yield)]),
                new(ConnectionMode.WhitmoreRupture, net * fu, [new("φu", 0.80, ConnectionClauses.GussetTension)], [ConnectionClauses.Whitmore, ConnectionClauses.GussetTension], [(ConnectionTerm.NetArea, net), (ConnectionTerm.Ultimate, fu)]),
                new(ConnectionMode.BlockShear, torn, [new("φbs", 0.80, ConnectionClauses.BlockShear)], [ConnectionClauses.BlockShear], [(ConnectionTerm.Area, shearGross), (ConnectionTerm.NetArea, shearNet), (ConnectionTerm.Width, across / plates), (ConnectionTerm.Thickness, plates), (ConnectionTerm.Yield, metal.Yield), (ConnectionTerm.Ultimate, fu)]),
            ];
        }

        public override IReadOnlyList<ConnectionStrength> Plane(GussetShear gusset, MetalStrength metal)
        {
            ArgumentNullException.ThrowIfNull(gusset);
            ArgumentNullException.ThrowIfNull(metal);
            double plates = gusset.Plates * gusset.Thickness, gross = gusset.Length * plates, net = (gusset.Length - gusset.Holes) * plates, fu = metal.Ultimate!.Value;
            return
            [
                new(ConnectionMode.PlaneYield, ShearYield * Uneven * metal.Yield * gross, [new("φvy", 1.00, ConnectionClauses.GussetShearYield)], [ConnectionClauses.GussetShearYield], [(ConnectionTerm.Area, gross), (ConnectionTerm.Yield, metal.Yield)]),
                new(ConnectionMode.PlaneRupture, ShearYield * fu * net, [new("φvu", 0.80, ConnectionClauses.GussetShearRupture)], [ConnectionClauses.GussetShearRupture], [(ConnectionTerm.NetArea, net), (ConnectionTerm.Ultimate, fu)]),
            ];
        }
    }

    private sealed class AsrRule(AllowableLevel level) : ConnectionRule
    {
        private bool IsInventory => level == AllowableLevel.Inventory;

        public override ConnectionStrength PinBending(double yield, double diameter, double shear) => new(
            ConnectionMode.PinBending, Modulus(diameter) * yield, [Part(0.80, 0.90)], [Clause], [(ConnectionTerm.Diameter, diameter), (ConnectionTerm.Modulus, Modulus(diameter)), (ConnectionTerm.Yield, yield)]);

        public override ConnectionStrength PinShear(double yield, double diameter) => new(
            ConnectionMode.PinShear, Circle(diameter) * yield, [Part(0.40, 0.55)], [Clause], [(ConnectionTerm.Diameter, diameter), (ConnectionTerm.Area, Circle(diameter)), (ConnectionTerm.Yield, yield)]);

        public override ConnectionStrength PinBearing(double yield, double diameter, double thickness) => new(
            ConnectionMode.PinBearing, thickness * diameter * yield, [Part(0.80, 0.90)], [Clause], [(ConnectionTerm.Thickness, thickness), (ConnectionTerm.Diameter, diameter), (ConnectionTerm.Yield, yield)]);

        public override ConnectionStrength? FastenerShear(FastenerConnection fasteners) => null;

        public override ConnectionStrength? FastenerBearing(FastenerConnection fasteners, double ultimate) => null;

        private Clause Clause => IsInventory ? ConnectionClauses.PinAsr : ConnectionClauses.PinAsrOperating;

        private StrengthFactor Part(double inventory, double operating) => new("part allowed", IsInventory ? inventory : operating, Clause);
    }
}
