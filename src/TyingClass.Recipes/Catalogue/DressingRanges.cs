namespace TyingClass.Recipes.Catalogue;

/// <summary>
/// How far what is guessed of hair, fur, feather and thread may be off: one rule a property, since nothing was ever measured on a fished fly. A material that
/// has none of a thing has no doubt about it.
/// </summary>
internal static class DressingRanges
{
    public static Figure Suppleness(string material, double value) => Guess(
        $"suppleness of {material}", value, "1", Math.Max(0, value - 0.15), Math.Min(0.99, value + 0.15), "± 0.15: judged by eye in a glass of water");

    public static Figure CaughtAir(string material, double value) => Guess(
        $"caught air of {material}", value, "mm³/mg", 0.5 * value, 1.5 * value, "half to one and a half times: how it is spun and how hard it is cast");

    public static Figure SoakTime(string material, double value) => Guess(
        $"soak time of {material}", value, "s", 0.5 * value, 2 * value, "half to twice: how greasy it is");

    public static Figure SealedAir(string material, double value) => Guess(
        $"sealed air of {material}", value, "mm³/mg", 0.5 * value, 1.5 * value, "half to one and a half times: tip or butt of the hair");

    public static Figure VoidShare(string material, double value)
    {
        double either = Math.Min((1 - value) / 2, value);
        return Guess($"void share of {material}", value, "1", value - either, value + either, "half to one and a half times the fiber: tied sparse or packed");
    }

    public static Figure HeldWater(string material, double value) => Guess(
        $"held water of {material}", value, "kg/kg", 0.6 * value, 1.5 * value, "how well it is shaken out");

    public static Figure StreamerCoefficient(string material, double value) => Guess(
        $"streamer coefficient of {material}", value, "1", 0.5 * value, 2 * value, "half to twice: it waves more or less in the flow");

    public static Figure LinearDensity(string material, double value) => Guess(
        $"mass per length of {material}", value, "mg/mm", 0.7 * value, 1.4 * value, "a sparse or a full bunch, a narrow or a wide strip");

    public static Figure SideForceShare(string material, double value) => Guess(
        $"side force share of {material}", value, "1", Math.Max(0.1, value - 0.3), Math.Min(1, value + 0.3),
        "± 0.3: packed fibers let hardly any water through (Darcy), a fuzzy outline does");

    public static Figure FlatWidth(string material, double value) => Guess(
        $"width when flat of {material}", value, "× length", 0.6 * value, 1.6 * value, "a narrow or a wide one");

    private static Figure Guess(string name, double value, string unit, double low, double high, string why) => value == 0
        ? new Figure(0, unit, Figure.Estimate)
        : Figure.Guess(name, value, unit, low, high, why);
}
