using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>The same fly tied with a little more here and a little less there.</summary>
internal static class FreshDressing
{
    private const double ThinnestM = 0.12e-3;
    private const double StoutestM = 0.5e-3;

    private static readonly double[] Factors = [0.6, 0.8, 1.25, 1.6];
    private static readonly double[] DressingFactors = [0.8, 1, 1.2];

    /// <summary>Two flies to compare, each tied by itself; now and then something by which they differ changes hands.</summary>
    public static (RecipeDraft First, RecipeDraft Second) Two(RecipeDraft first, RecipeDraft second, Random random)
    {
        (RecipeDraft a, RecipeDraft b) = (Vary(first, random, []), Vary(second, random, []));
        string[] differ =
        [
            .. first.Values.Where(v => v.Key.Contains('.', StringComparison.Ordinal) && !v.Key.EndsWith(".part", StringComparison.Ordinal)
                && first.Get(v.Key[..(v.Key.LastIndexOf('.') + 1)] + "part") == second.Get(v.Key[..(v.Key.LastIndexOf('.') + 1)] + "part")
                && second.Get(v.Key) is { } theirs && theirs != v.Value).Select(v => v.Key),
        ];
        for (int n = random.Next(Math.Min(differ.Length, 2) + 1); n > 0; n--)
        {
            string path = differ[random.Next(differ.Length)];
            (a, b) = (a.With(path, b.Get(path)), b.With(path, a.Get(path)));
        }

        return (a, b);
    }

    /// <summary>Every measure of the dressing a little larger or smaller, what the question changes left as it is.</summary>
    public static RecipeDraft Vary(RecipeDraft draft, Random random, ImmutableArray<string> fixedPaths)
    {
        foreach ((string path, string value) in draft.Values.ToArray())
        {
            string key = path[(path.LastIndexOf('.') + 1)..];
            if (fixedPaths.Contains(path) || key is not ("size" or "mass" or "diameter" or "length" or "turns") || path == "hook.size") continue;
            // A part of a stated mass keeps it whatever its size: then the size stays too.
            if (key is "size" or "diameter" && draft.Get(path[..path.LastIndexOf('.')] + ".mass") is not null) continue;
            if (random.Next(3) == 0) continue;
            draft = draft.With(path, Scaled(key, value, Factors[random.Next(Factors.Length)]) ?? value);
        }

        return draft;
    }

    /// <returns>Null for what is no measure.</returns>
    public static string? Scaled(string key, string value, double factor)
    {
        if (key == "turns")
            return int.TryParse(value, CultureInfo.InvariantCulture, out int turns)
                ? Math.Max(1, (int)Math.Round(turns * factor)).ToString(CultureInfo.InvariantCulture) : null;
        Dimension dimension = key == "mass" ? Dimension.Mass : Dimension.Length;
        return Units.TryParse(value, dimension, out double si, out _) ? Units.Write(factor * si, dimension, 2) : null;
    }

    /// <summary>One fly tied otherwise: a part on the other side now and then, and up to so many other things changed.</summary>
    /// <returns>Null where it cannot be tied so.</returns>
    public static RecipeDraft? One(RecipeDraft draft, Random random, int mostChanges)
    {
        draft = Turn(Leader(Vary(draft, random, []), random), random);
        if (RecipeParser.Parse(draft.ToText()).Value is not { } recipe) return null;
        for (int n = random.Next(mostChanges + 1); n > 0; n--)
            recipe = FreshChange.Adjusted(Places.Settle(recipe), a => a.Advise(1) is not AdvisedRetrieve, random) ?? recipe;

        return RecipeDraft.Of(recipe);
    }

    /// <summary>The same metal under another dressing: other hair, and a little more or less of it.</summary>
    public static RecipeDraft Dressed(RecipeDraft draft, Random random)
    {
        for (int i = 0; i < draft.PartCount; i++)
        {
            if (KindsOfPart.FindByName(draft.Get($"parts[{i}].part") ?? "") is not { IsWeight: false, SuitedMaterials: { Length: > 0 } suited }) continue;
            if (random.Next(4) > 0) draft = draft.With($"parts[{i}].material", suited[random.Next(suited.Length)]);
            if (draft.Get($"parts[{i}].mass") is { } mass)
                draft = draft.With($"parts[{i}].mass", Scaled("mass", mass, DressingFactors[random.Next(DressingFactors.Length)]) ?? mass);
        }

        return draft;
    }

    private static RecipeDraft Leader(RecipeDraft draft, Random random) =>
        random.Next(2) == 0 ? OnLeader(draft, Factors[random.Next(Factors.Length)]) ?? draft : draft;

    /// <summary>On a leader so many times as thick, within what a fly is tied to.</summary>
    /// <returns>Null where the recipe states none.</returns>
    // "0.40 mm nylon": only the first word is a measure.
    public static RecipeDraft? OnLeader(RecipeDraft draft, double factor) =>
        draft.Get("fishing.leader")?.Split(" mm", 2) is [var mm, var rest] && Units.TryParse($"{mm} mm", Dimension.Length, out double m, out _)
            ? draft.With("fishing.leader", $"{Units.Write(Math.Clamp(m * factor, ThinnestM, StoutestM), Dimension.Length, 2)}{rest}")
            : null;

    private static RecipeDraft Turn(RecipeDraft draft, Random random)
    {
        string[] sides = [.. draft.Values.Where(v => v.Key.EndsWith(".side", StringComparison.Ordinal) && v.Value is "top" or "under").Select(v => v.Key)];
        if (sides.Length == 0 || random.Next(2) == 0) return draft;
        string path = sides[random.Next(sides.Length)];
        return draft.With(path, draft.Get(path) == "top" ? "under" : "top");
    }
}
