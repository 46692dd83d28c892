using System.Collections.Immutable;
using TyingClass.Drawing.Plots;
using TyingClass.Recipes.Catalogue;
using TyingClass.Telling;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Figures;

/// <summary>Air left in a tenth of a gram of hair or fur, against the time under
/// water. Caught air leaves as exp(-t/τ); what the hair's cells hold stays.</summary>
internal sealed class AirLeaving : TeachingFigure
{
    private const double DressingMg = 100, LongestS = 240, StepS = 4;

    public override string Kind => "air leaving hair";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        Material[] materials = [.. request.Values["materials"].Split(',').Select(m => Materials.Find(m.Trim()))];
        double Left(Material m, double s) => Shown(1e-9 * DressingMg * (m.CaughtAir.Value * Math.Exp(-s / m.SoakTime.Value) + m.SealedAir.Value), options);
        string mass = Magnitudes.PartMass.Say(1e-6 * DressingMg, options.Units);
        string described = $"Air left in {mass} of dressing. " + string.Join(" ", materials.Select(m =>
            $"{Grammar.Capital(m.Name)}: {Said(m, 0)} when dry, {Said(m, 60)} after a minute, {Said(m, LongestS)} after four."));
        using Plot plot = new(options, "air", $"Air leaving {Grammar.And(materials.Select(m => m.Name))}", described, 240 + SeriesKey.Height(materials.Length))
        {
            Area = SeriesKey.Area(materials.Length),
        };
        plot.X = Scale.Round(0, LongestS, 4, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(0, materials.Max(m => Left(m, 0)), 5, plot.Area.Bottom, plot.Area.Top);
        plot.Axes("time under water, s", $"air left, {Magnitudes.DisplacedVolume.Symbol(options.Units)}", floor: 0);
        for (int i = 0; i < materials.Length; i++)
        {
            Material m = materials[i];
            SeriesKey.Draw(plot, i, m.Name, [.. Enumerable.Range(0, (int)(LongestS / StepS) + 1).Select(k => plot.At(k * StepS, Left(m, k * StepS)))]);
        }

        return [new FigurePanel("", plot.Finish())];

        string Said(Material m, double s) =>
            Magnitudes.DisplacedVolume.Say(1e-9 * DressingMg * (m.CaughtAir.Value * Math.Exp(-s / m.SoakTime.Value) + m.SealedAir.Value), options.Units);
    }

    private static double Shown(double m3, DrawingOptions options) => Magnitudes.DisplacedVolume.Shown(m3, options.Units);
}
