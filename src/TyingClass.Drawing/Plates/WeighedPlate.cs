using TyingClass.Balance.Bodies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly in the vise with what each part weighs dry and the water it drinks: what goes on the scale, and what is cast.</summary>
internal sealed class WeighedPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null) : BenchPlate(fly, options, MarkSet.None, widthMm)
{
    public override string Kind => "weighed";

    public override string Title => $"{Fly.Recipe.Name}: what it weighs";

    public override string Description => $"The fly in the vise, shank level, eye to the left. {Grammar.Capital(string.Join(", ", Weighed.Select(Words)))}. "
        + $"{Grammar.Capital(CaptionWords)}.";

    protected override string CaptionWords => $"{Say(Magnitudes.Mass, Si.G(Report.MassG))} dry, "
        + $"{Say(Magnitudes.MassWithHeldWater, Si.G(Report.MassG) + Weighed.Sum(p => p.HeldWaterKg))} with the water it holds, "
        + $"{Say(Magnitudes.WetWeight, Si.G(State.WetWeightG))} in the water";

    private IEnumerable<BodyPart> Weighed => Fly.Built.Body.Parts.Where(p => MassKg(p) > 0).OrderByDescending(MassKg);

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        foreach (BodyPart part in Weighed)
        {
            if ((part.IsTied ? Around(part.Name) : Around([.. part.Pieces.Select(p => p.Name), part.Name])) is { } box)
                wishes.Add(new LabelWish(Words(part), $"mass of {part.Name}", part.IsTied ? new Point(box.Center.X, box.Bottom)
                    : new Point(box.Right, box.Center.Y), 0.2 * LetterMm)
                {
                    // The bend is what stays free of dressing.
                    OrAnchor = part.IsTied ? new Point(box.Center.X, box.Top) : null,
                });
        }
    }

    private string Words(BodyPart part) => $"{part.Name} {Say(Magnitudes.PartMass, MassKg(part))}"
        + (part.HeldWaterKg > 0 ? $" + {Say(Magnitudes.HeldWater, part.HeldWaterKg)} water" : "");

    private string Say(Magnitude magnitude, double si) => magnitude.Say(si, Options.Units);

    private static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);
}
