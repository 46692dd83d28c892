using TyingClass.Balance.Reports;
using TyingClass.Drawing.Marks;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Words;

/// <summary>The front view told in words.</summary>
internal static class FrontWords
{
    public static string Describe(SolvedFly fly, StateReport state, TowReport tow, IEnumerable<Mark> marks, UnitSystem units)
    {
        string way = FlyWords.Way(SideWords.Settled(fly.Report.Intent, tow));
        string lean = !tow.Settles ? "never at rest" : tow.LeanDeg < 0.5 ? "without lean" : $"leaning {FlyWords.Degrees(tow.LeanDeg)} from as intended";
        IEnumerable<string> places = marks.Where(m => m.Kind != MarkSet.TowPoint).Select(m =>
            $"{char.ToUpperInvariant(m.Name[0])}{m.Name[1..]}: {Aside(m, units)} "
                + $"and {Magnitudes.Place.Say(Si.Mm(Math.Abs(m.At.Y)), units)} {(m.At.Y < 0 ? "above" : "below")} the tow point.");
        return $"Seen from ahead along the shank, {FlyWords.State(state)}, at {Magnitudes.FishingSpeed.Say(tow.SpeedMS, units)}, the fly "
            + $"rides {way}, {lean}. {string.Join(" ", places)}";
    }

    private static string Aside(Mark mark, UnitSystem units) => Math.Abs(mark.At.X) < 0.05
        ? "in line with"
        : $"{Magnitudes.Place.Say(Si.Mm(Math.Abs(mark.At.X)), units)} to the {(mark.At.X < 0 ? "left of" : "right of")}";
}
