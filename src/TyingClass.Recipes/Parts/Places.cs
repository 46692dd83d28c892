using System.Collections.Immutable;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>Turns what was said in words into numbers, part by part in tying order: "behind the bead", "1.5 × shank", "medium", and places left out.</summary>
public static class Places
{
    /// <summary>The same recipe with every number that hangs on the hook or on other parts worked out anew.</summary>
    public static Recipe Settle(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return recipe.Parts.All(p => p.Said.IsEmpty) || !HookScale.TryResolve(recipe.Hook, out ResolvedHook? hook, out _)
            ? recipe
            : recipe with { Parts = Settle(recipe.Parts, hook) };
    }

    /// <summary>The same recipe with numbers in place of words, for comparing it with limits.</summary>
    public static Recipe Spelled(Recipe recipe)
    {
        Recipe settled = Settle(recipe);
        return settled with { Parts = [.. settled.Parts.Select(p => p with { Said = Sayings.None })] };
    }

    internal static ImmutableArray<PartSpec> Settle(ImmutableArray<PartSpec> parts, ResolvedHook hook, AssumptionLog? log = null)
    {
        ImmutableArray<string> names = FlyBuilder.Names(parts);
        TiedSoFar tied = new(hook);
        ImmutableArray<PartSpec>.Builder settled = ImmutableArray.CreateBuilder<PartSpec>(parts.Length);
        for (int i = 0; i < parts.Length; i++)
        {
            if (log is not null) log.Part = names[i];
            PartSpec part = parts[i].Said.IsEmpty ? parts[i] : Settle(parts[i], tied, log);
            settled.Add(part);
            tied.Add(names[i], part);
        }

        return settled.MoveToImmutable();
    }

    private static PartSpec Settle(PartSpec part, TiedSoFar tied, AssumptionLog? log)
    {
        KindOfPart kind = KindsOfPart.Of(part);
        if (part.Said["size"] is { } size && kind.SizeNamed(size) is { } sizeM)
        {
            part = part with { SizeM = sizeM };
            log?.AddLength("size", sizeM, $"“{size}”, as shops name them, common practice, no source");
        }

        if (part.Said["length"] is { } length) part = part with { LengthM = Along(length, tied) };
        if (part.Said["at"] is { } at)
        {
            UsualPlace place = at.Length > 0 ? new UsualPlace(Along(at, tied), $"“{at}”") : kind.UsualPlace(tied);
            part = part with { AtM = Units.Rounded(place.AtM), ToM = part.Said["to"] is "" ? place.ToM : part.ToM };
            log?.AddLength("place", part.AtM, place.Why);
        }

        if (part.Said["to"] is { Length: > 0 } to) part = part with { ToM = Along(to, tied) };
        return part;
    }

    private static double Along(string words, TiedSoFar tied) => Units.Rounded(
        words == PlaceText.Bend ? tied.Hook.ShankM
        : PlaceText.Shanks(words) is { } shanks ? shanks * tied.Hook.ShankM
        : tied.RearM(words[PlaceText.Behind.Length..]));
}
