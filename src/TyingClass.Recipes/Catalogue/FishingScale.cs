using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Catalogue;

/// <summary>How a fly is fished when the recipe does not say, and what leaders are made of.</summary>
public static class FishingScale
{
    public static readonly Figure Temperature = new(12, "°C", Figure.Estimate);
    public static readonly Figure SeaSalinity = new(35, "g/kg", "standard sea water");
    public static readonly Figure Speed = new(0.4, "m/s", Figure.Estimate);
    public static readonly Figure LeaderDiameter = new(0.25, "mm", Figure.Estimate);
    public static readonly Figure BreakingStress = Figure.Guess(
        "breaking stress of nylon", 700, "MPa", 560, 840, "± 20 %, from the line strengths of the X rule, common practice");
    public static readonly Figure FluorocarbonBreakingStress = Figure.Guess(
        "breaking stress of fluorocarbon", 850, "MPa", 680, 1020, "± 20 %, common practice: spools of fluorocarbon are labeled stronger for their diameter");

    /// <summary>Wet: a leader that fishes has taken up water, which softens nylon and leaves fluorocarbon alone.</summary>
    public static readonly Figure NylonModulus = Figure.Guess("stiffness E of nylon", 2.2, "GPa", 1.5, 3, "wet; nylon line 2-4 GPa dry, from memory");
    public static readonly Figure FluorocarbonModulus = Figure.Guess("stiffness E of fluorocarbon", 3.5, "GPa", 2.5, 4.5, "common practice");
    public static readonly Figure NylonDensity = new(1140, "kg/m³", "Morton & Hearle, Physical Properties of Textile Fibres, table 5.1");
    public static readonly Figure FluorocarbonDensity = new(1765, "kg/m³", "handbook tables of plastics, polyvinylidene fluoride 1750-1780");

    /// <summary>What is guessed; temperature, speed and leader are chosen by who fishes.</summary>
    /// <summary>What a leader's friction is over that of a smooth wire with water flowing smoothly along it.</summary>
    public static readonly Figure LeaderFriction = Figure.Guess(
        "friction along a leader", 1, "× laminar", 0.8, 2,
        "coils and knots hold back more; tow tests of thicker cylinders at speed, turbulent, ASME FEDSM2002-31298");

    internal static IEnumerable<Figure> Estimates => [BreakingStress, FluorocarbonBreakingStress, NylonModulus, FluorocarbonModulus, LeaderFriction];

    /// <summary>Stress at which a leader of the material breaks.</summary>
    public static Figure BreakingStressOf(LeaderMaterial material) => material == LeaderMaterial.Fluorocarbon ? FluorocarbonBreakingStress : BreakingStress;

    /// <summary>Diameter of a leader that breaks at F, m: d = √(4F/πσ).</summary>
    /// <param name="strengthN">F, N, over 0.</param>
    public static double DiameterFromStrengthM(double strengthN, LeaderMaterial material = LeaderMaterial.Nylon, Guesses? guesses = null) =>
        Math.Sqrt(4 * Balance.Require.Positive(strengthN, nameof(strengthN)) / (Math.PI * (guesses ?? Guesses.Usual).Of(BreakingStressOf(material)) * 1e6));
}
