namespace TyingClass.Telling.Figures;

/// <summary>The report's own units to SI: millimeters, grams and degrees stand in its names.</summary>
public static class Si
{
    public static double Mm(double mm) => 1e-3 * mm;

    public static double? Mm(double? mm) => 1e-3 * mm;

    public static double G(double g) => 1e-3 * g;

    public static double Deg(double degrees) => degrees * (Math.PI / 180);

    public static double Gmm(double gmm) => 1e-6 * gmm;

    public static double MN(double mN) => 1e-3 * mN;
}
