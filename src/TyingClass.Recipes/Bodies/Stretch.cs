namespace TyingClass.Recipes.Bodies;

/// <summary>How the section of a part round the shank grows and shrinks at its ends.</summary>
internal enum Outline
{
    /// <summary>At once.</summary>
    Cylinder,

    Ball,

    /// <summary>From a flat nose, in a straight line; at the rear at once.</summary>
    Cone,
}

/// <summary>A stretch of a part round the shank that the water meets.</summary>
/// <param name="Share">Of a slender solid body's side force.</param>
/// <param name="ConeNose">Of a cone, nose over rear diameter.</param>
internal readonly record struct Stretch(Sheath Sheath, double FrontM, double RearM, double Share, double ConeNose)
{
    /// <summary>Widest section times the share, m².</summary>
    public double StrengthM2 => Share * Math.PI / 4 * Sheath.DiameterM * Sheath.DiameterM;

    // What another part cuts off begins at once.
    private Outline Outline => FrontM == Sheath.FrontM && RearM == Sheath.RearM ? Sheath.Outline : Outline.Cylinder;

    private double MiddleM => (FrontM + RearM) / 2;

    /// <summary>Centroid of the growth of the section, dS/dx, from a share of the widest up to it, m.</summary>
    public double FrontCentroidM(double from) => Outline switch
    {
        Outline.Ball => MiddleM - BallReachM(from),
        Outline.Cone => FrontM + (RearM - FrontM) * ConeCentroid(from),
        _ => FrontM,
    };

    /// <summary>Of its shrinking, from the widest down to a share of it, m.</summary>
    public double RearCentroidM(double to) => Outline == Outline.Ball ? MiddleM + BallReachM(to) : RearM;

    // S = π(R² - ξ²) grows by 2πξ dξ: centroid two thirds of the way out to where the share is left.
    private double BallReachM(double share) => Sheath.DiameterM / 3 * Math.Sqrt(1 - share);

    // In lengths of the cone, with r in rear radii, from r² = share or the flat nose up to 1: x = (r - n)/(1 - n), weighed by 2r dr; the nose's own step at 0.
    private double ConeCentroid(double share)
    {
        double from = Math.Max(ConeNose, Math.Sqrt(share));
        double moment = (2.0 / 3 * (1 - from * from * from) - ConeNose * (1 - from * from)) / (1 - ConeNose);
        return moment / (1 - share);
    }
}
