using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.Bench;

/// <summary>The quantities that matter most, as far as a recipe has them, in the reader's units.</summary>
internal static class Sliders
{
    // From a dead drift to a fast strip; the recipe itself may say less or more.
    private const double SlowestMS = 0.05, FastestMS = 1.5;

    // After five time constants less than a hundredth of the air is left.
    private const double TimeConstantsToSoak = 5;

    public static ImmutableArray<Slider> Of(Recipe recipe, BuiltFly fly, double soakS, UnitSystem units)
    {
        Lengths length = new(units);
        ImmutableArray<string> names = FlyBuilder.Names(recipe.Parts);
        List<Slider> all = [Speed(fly.Conditions.SpeedMS, units)];
        if (SoakedAfterS(fly) is { } soaked) all.Add(new Slider(Slider.Soak, "Time in the water", "s", 0, soaked, 1, Math.Min(soakS, soaked)));
        for (int i = 0; i < recipe.Parts.Length; i++)
        {
            all.AddRange(KindsOfPart.Of(recipe.Parts[i]).Dials(recipe.Parts[i], fly.Hook).Select(dial => OfPart(dial, i, names[i], length)));
        }

        if (fly.Hook.Eye != EyeKind.Jig)
            all.Add(new Slider("hook.eye", "Eye angle, up is positive", "°", -45, 45, 1, Math.Round(fly.Hook.EyeAngleRad * 180 / Math.PI, 1)));
        double gape = fly.Hook.GapeM;
        all.Add(length.Of("hook.gape", "Gape", Math.Min(4e-3, gape), Math.Max(20e-3, gape), gape));
        return [.. all];
    }

    /// <summary>Seconds until no air worth counting is left; null for a fly that holds none.</summary>
    public static double? SoakedAfterS(BuiltFly fly)
    {
        double[] constants =
            [.. fly.Body.Parts.SelectMany(p => p.Air).Where(a => a.FreshVolumeM3 > 0 && double.IsFinite(a.SoakTimeS)).Select(a => a.SoakTimeS)];
        return constants.Length == 0 ? null : Math.Max(10, 10 * Math.Ceiling(TimeConstantsToSoak * constants.Max() / 10));
    }

    /// <summary>Writes a moved slider into the recipe.</summary>
    /// <param name="kept">Beyond the slider's ends too: whether a recipe may have it is for the recipe to say.</param>
    public static RecipeDraft Set(RecipeDraft draft, Slider slider, double kept)
    {
        if (slider.Path == "hook.eye") return draft.With(slider.Path, kept == 0 ? "straight" : $"{(kept > 0 ? "up" : "down")} {Slider.Text(Math.Abs(kept))}°");
        draft = draft.With(slider.Path, slider.Written(kept));
        // A stated mass would pin the weight down whatever the size.
        return slider.Path.EndsWith(".size", StringComparison.Ordinal) && slider.Path[..^".size".Length] + ".mass" is var mass && draft.Get(mass) is not null
            ? draft.With(mass, null) : draft;
    }

    private static Slider Speed(double ms, UnitSystem units)
    {
        string symbol = Magnitudes.FishingSpeed.Symbol(units);
        double per = Magnitudes.FishingSpeed.Shown(1, units);
        double step = units == UnitSystem.Metric ? 0.01 : 0.05;
        double low = Math.Min(SlowestMS, ms) * per, high = Math.Max(FastestMS, ms) * per;
        return new Slider("fishing.speed", "Speed", symbol, Math.Round(low, 2), Math.Round(high, 2), step, Math.Round(ms * per, 4));
    }

    private static Slider OfPart(Dial dial, int index, string name, Lengths length)
    {
        string path = $"parts[{index.ToString(CultureInfo.InvariantCulture)}].{dial.Key}", label = $"{dial.Label} of the {name}";
        return dial.Dimension switch
        {
            Dimension.Length => length.Of(path, label, dial.LowSi, dial.HighSi, dial.ValueSi),
            Dimension.Mass => length.OfMass(path, label, dial),
            _ => new Slider(path, label, "", dial.LowSi, dial.HighSi, 1, dial.ValueSi),
        };
    }

    private sealed record Lengths(UnitSystem Units)
    {
        private bool Metric => Units == UnitSystem.Metric;

        public Slider OfMass(string path, string label, Dial dial)
        {
            double per = Magnitudes.PartMass.Shown(1, Units), step = Metric ? 0.01 : 0.1;
            return new Slider(
                path, label, Magnitudes.PartMass.Symbol(Units), Math.Floor(dial.LowSi * per / step + 1e-9) * step,
                Math.Floor(dial.HighSi * per / step + 1e-9) * step, step,
                Math.Round(dial.ValueSi * per, Metric ? 3 : 2));
        }

        // Whole steps at both ends, so that the handle can stand there.
        public Slider Of(string path, string label, double lowM, double highM, double valueM)
        {
            string symbol = Magnitudes.Place.Symbol(Units);
            double per = Magnitudes.Place.Shown(1, Units), step = Metric ? 0.1 : 0.005;
            return new Slider(path, label, symbol, Math.Floor(lowM * per / step + 1e-9) * step, Math.Floor(highM * per / step + 1e-9) * step, step,
                Math.Round(valueM * per, Metric ? 2 : 3));
        }
    }
}
