using TyingClass.Balance.Reports;
using TyingClass.Recipes.Measured;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What was taken over from the bench into a recipe, to be kept with its revision; or why it cannot be, and what to look at instead.</summary>
public static class TakeOverSentence
{
    public static string Of(TakeOverOutcome outcome, UnitSystem units) => outcome switch
    {
        HookWeighed hook => Hook(hook, units),
        AirTimed air => Air(air, units),
        CannotBeSaid refused => $"The recipe cannot say what was measured: {refused.Why}",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "A new outcome needs a sentence here."),
    };

    private static string Hook(HookWeighed hook, UnitSystem units)
    {
        string weighed = Stated.Say(hook.FlyKg, Dimension.Mass, units), others = Computed(hook.OthersKg), was = Computed(hook.HookKg);
        if (hook.Taken)
            return $"Hook mass taken from the bench: the fly weighed {weighed}; its other parts come to {others}; so the hook is put at "
                + $"{Computed(hook.WantedKg)} (before: {was}).";
        return hook.WantedKg <= 0
            ? $"The fly was weighed at {weighed}, but the parts on the hook alone come to {others} by the recipe. Weigh the parts, or correct their "
            + "masses, before the hook’s."
            : $"The hook would have to weigh {Computed(hook.WantedKg)} instead of {was}. That is no longer a matter of the hook: check the scale, and the "
            + "masses of the parts.";

        string Computed(double kg) => Magnitudes.PartMass.Say(kg, units);
    }

    private static string Air(AirTimed air, UnitSystem units)
    {
        string timed = Stated.Say(air.SinkRateMS, Dimension.Speed, units);
        return air.Fault switch
        {
            AirFault.FasterThanWithoutAir =>
                $"The fly sank at {timed}, faster than it could with no air sealed in its {air.Part} at all. Look for the difference elsewhere: weigh the "
                + "fly, and see whether it is dressed as the recipe says.",
            AirFault.SlowerThanAnyAir =>
                $"The fly sank at {timed}, slower than any amount of air in its {air.Part} can explain. Look for the difference elsewhere: time the drop "
                + "again, soaked, with every bubble stroked out.",
            AirFault.AttitudeJumps =>
                $"No amount of air in the {air.Part} gives just {timed}: the fly changes its attitude in between. Try another part, or time the drop again.",
            _ => $"Air taken from the bench: the fly sank at {timed}, {(air.State == WetState.Fresh ? "fresh from the cast" : "soaked")}; so the {air.Part} "
                + $"is taken to seal in {Magnitudes.DisplacedVolume.Say(Math.Abs(air.MoreAirM3), units)} {(air.MoreAirM3 >= 0 ? "more" : "less")} air than "
                + $"before, written as a density of {Density(air.DensityKgM3)} (before: {Density(air.DensityBeforeKgM3)}).",
        };

        string Density(double kgM3) => Stated.Say(kgM3, Dimension.Density, units);
    }
}
