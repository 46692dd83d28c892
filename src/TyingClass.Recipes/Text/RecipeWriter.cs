using System.Globalization;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Text;

/// <summary>A <see cref="Recipe"/> as text, in metric units; what it leaves to the catalogue stays out. Parsing the text gives an equal recipe.</summary>
public static class RecipeWriter
{
    public static string Write(Recipe recipe) => Draft(recipe).ToText();

    internal static RecipeDraft Draft(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        RecipeDraft draft = RecipeDraft.Empty.With("recipe", recipe.Name).With("intent", Words.Intents.For(recipe.Intent));
        foreach ((string key, string value) in HookFields(recipe.Hook)) draft = draft.With("hook." + key, value);
        foreach (PartSpec part in recipe.Parts) draft = draft.AddPart(PartFields(part));
        foreach ((string key, string value) in FishingFields(recipe.Fishing)) draft = draft.With("fishing." + key, value);
        for (int i = 0; i < recipe.Steps.Length; i++) draft = draft.With(string.Create(CultureInfo.InvariantCulture, $"steps[{i}]"), recipe.Steps[i]);
        return draft;
    }

    /// <summary>The hook's keys and values, in the order they are written.</summary>
    internal static IEnumerable<KeyValuePair<string, string>> HookFields(HookSpec hook) => Given(
        ("size", hook.Size?.ToString()),
        ("shank", Length(hook.ShankM) ?? Steps(hook.ShankSteps, "XL", "XS")),
        ("wire", Length(hook.WireM) ?? Steps(hook.WireSteps, "XH", "XF")),
        ("gape", Length(hook.GapeM)),
        ("eye", string.Join(' ', Given(("", Words.Eyes.For(hook.Eye)), ("", Angle(hook.EyeAngleRad))).Select(p => p.Value))),
        ("bend", Words.Bends.For(hook.Bend)),
        ("mass", Mass(hook.MassKg)));

    private static IEnumerable<KeyValuePair<string, string>> PartFields(PartSpec part) => Given(
        ("part", Words.Parts.For(part.Kind)),
        ("material", part.Material),
        ("density", part.DensityKgM3 is { } density ? Units.Exact(density, Dimension.Density, "kg/m³") : null),
        ("size", Said(part, "size", part.SizeM)),
        ("diameter", Length(part.DiameterM)),
        ("turns", part.Turns?.ToString(CultureInfo.InvariantCulture)),
        ("balls", BallText.Write(part.Balls, part.BallMaterial)),
        ("loops", part.Loops?.ToString(CultureInfo.InvariantCulture)),
        ("length", Said(part, "length", part.LengthM)),
        ("mass", Mass(part.MassKg)),
        ("at", Said(part, "at", part.AtM)),
        ("to", Said(part, "to", part.ToM)),
        ("side", part.Side is { } side ? Words.AllSides.For(side) : null),
        ("tied", part.Tied is { } tied ? Words.Ties.For(tied) : null),
        ("side offset", part.SideOffsetM == 0 ? null : Length(part.SideOffsetM)),
        ("clocked", part.ClockedRad == 0 ? null : Angle(part.ClockedRad)));

    private static IEnumerable<KeyValuePair<string, string>> FishingFields(FishingSpec fishing) =>
    [
        .. Given(
            ("leader", Leader(fishing)),
            ("knot", fishing.Knot is { } knot ? Words.Knots.For(knot) : null),
            ("water", Water(fishing)),
            ("speed", Speed(fishing.SpeedMS, "m/s"))),
        .. RetrieveFields(fishing.Retrieve),
    ];

    private static IEnumerable<KeyValuePair<string, string>> RetrieveFields(RetrieveSpec retrieve) => Given(
        ("retrieve", RetrieveText.Write(retrieve)),
        ("repeat", retrieve.Repeat?.ToString(CultureInfo.InvariantCulture)),
        ("count down", Time(retrieve.CountDownS)),
        ("line", retrieve.LineSinkMS is not { } sinkMS ? null : sinkMS == 0 ? "floating" : $"sinks {Speed(sinkMS, "cm/s")}"),
        ("line out", Far(retrieve.LineOutM)),
        ("leader length", Far(retrieve.LeaderLengthM)),
        ("rod tip", Far(retrieve.RodTipM)),
        ("water depth", Far(retrieve.WaterDepthM)),
        ("current", Speed(retrieve.CurrentMS, "m/s")),
        ("wetted", Time(retrieve.WettedS)));

    private static string? Speed(double? speedMS, string symbol) => speedMS is { } ms ? Units.Exact(ms, Dimension.Speed, symbol) : null;

    private static string? Time(double? seconds) => seconds is { } s ? Units.Exact(s, Dimension.Duration, "s") : null;

    private static string? Far(double? lengthM) => lengthM is { } m ? Units.Exact(m, Dimension.Length, Math.Abs(m) < 1 ? "cm" : "m") : null;

    private static string? Leader(FishingSpec fishing)
    {
        string? thickness = Length(fishing.LeaderDiameterM) ?? (fishing.LeaderStrengthN is { } strengthN ? Strength(strengthN) : null);
        return thickness is not null && fishing.LeaderMaterial is { } material ? $"{thickness} {Words.Leaders.For(material)}" : thickness;
    }

    // In whichever unit it was most likely typed: the one that gives the shorter figure.
    private static string Strength(double strengthN)
    {
        string pounds = Units.Exact(strengthN, Dimension.Force, "lb");
        string kilograms = Units.Exact(strengthN, Dimension.Force, "kg");
        return kilograms.Length < pounds.Length ? kilograms : pounds;
    }

    private static string? Water(FishingSpec fishing) => fishing.Water is not { } kind ? null : string.Join(' ', Given(
        ("", Words.Waters.For(kind)),
        ("", fishing.SalinityKgKg is { } salinity ? Units.Exact(salinity, Dimension.Salinity, "g/kg") : null),
        ("", fishing.TemperatureC is { } temperatureC ? Units.Exact(temperatureC, Dimension.Temperature, "°C") : null)).Select(p => p.Value));

    private static string? Steps(int steps, string more, string less) =>
        steps == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(steps)}{(steps > 0 ? more : less)}");

    // As it was said: in words, not at all, or as a number.
    private static string? Said(PartSpec part, string key, double? lengthM) => part.Said[key] switch
    {
        null => Length(lengthM),
        "" => null,
        var words => words,
    };

    private static string? Length(double? lengthM) => lengthM is { } m ? Units.Exact(m, Dimension.Length, "mm") : null;

    private static string? Mass(double? massKg) => massKg is { } kg ? Units.Exact(kg, Dimension.Mass, "g") : null;

    private static string? Angle(double? angleRad) => angleRad is { } rad ? Units.Exact(rad, Dimension.Angle, "°") : null;

    private static IEnumerable<KeyValuePair<string, string>> Given(params (string Key, string? Value)[] fields) =>
        fields.Where(f => f.Value is not null).Select(f => KeyValuePair.Create(f.Key, f.Value!));
}
