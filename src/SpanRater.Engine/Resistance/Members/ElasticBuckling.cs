namespace SpanRater;

/// <summary>Elastic critical forces of columns.</summary>
public static class ElasticBuckling
{
    /// <summary>Euler's force π² E A/(KL/r)² [N].</summary>
    /// <param name="modulus">Modulus of elasticity [Pa].</param>
    /// <param name="area">Area [m²].</param>
    /// <param name="slenderness">Slenderness KL/r [-].</param>
    public static double Force(double modulus, double area, double slenderness)
    {
        Checked.Positive(modulus, nameof(modulus));
        Checked.Positive(area, nameof(area));
        Checked.Positive(slenderness, nameof(slenderness));
        return Math.PI * Math.PI * modulus * area / (slenderness * slenderness);
    }

    /// <summary>Slenderness KL/r that a column with this elastic critical force would have [-].</summary>
    /// <param name="modulus">Modulus of elasticity [Pa].</param>
    /// <param name="area">Area [m²].</param>
    /// <param name="elasticForce">Elastic critical force [N].</param>
    public static double Slenderness(double modulus, double area, double elasticForce)
    {
        Checked.Positive(modulus, nameof(modulus));
        Checked.Positive(area, nameof(area));
        Checked.Positive(elasticForce, nameof(elasticForce));
        return Math.PI * Math.Sqrt(modulus * area / elasticForce);
    }
}
