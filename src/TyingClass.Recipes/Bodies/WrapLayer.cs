using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Bodies;

/// <summary>One layer of wraps.</summary>
/// <param name="RadiusM">Shank's axis to the wire's center line.</param>
/// <param name="PitchM">Advance along the shank per turn.</param>
internal readonly record struct WrapLayer(double RadiusM, int Turns, double PitchM)
{
    public double WireLengthM => Turns * Helix.TurnLengthM(RadiusM, PitchM);

    public double RunM => Turns * PitchM;

    /// <summary>
    /// Full layers first, each a wire's thickness farther out (turns lying in the grooves of the layer below would sit a little lower); a single layer spreads
    /// its turns over the whole run.
    /// </summary>
    /// <param name="coreM">Diameter of what the wire is wound on.</param>
    public static IEnumerable<WrapLayer> Of(PartDimensions wraps, double coreM)
    {
        int count = Count(wraps), perLayer = TurnsPerLayer(wraps);
        for (int i = 0; i < count; i++)
        {
            int turns = Math.Min(perLayer, wraps.Turns - i * perLayer);
            double pitchM = count == 1 ? wraps.LengthM / turns : wraps.SizeM;
            yield return new WrapLayer(coreM / 2 + (i + 0.5) * wraps.SizeM, turns, pitchM);
        }
    }

    public static double OuterDiameterM(PartDimensions wraps, double coreM) => coreM + 2 * wraps.SizeM * Count(wraps);

    // The small allowance keeps a run typed as exactly n wires from losing a turn to rounding.
    private static int TurnsPerLayer(PartDimensions wraps) => Math.Max(1, (int)Math.Floor(wraps.LengthM / wraps.SizeM + 1e-6));

    private static int Count(PartDimensions wraps) => Math.Max(1, (wraps.Turns + TurnsPerLayer(wraps) - 1) / TurnsPerLayer(wraps));
}
