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
        return FromTheBend(part, kind, tied, log);
    }

    // "At" is the front edge; but what a tyer winds from the bend forward begins, in words, at its rear one.
    private static PartSpec FromTheBend(PartSpec part, KindOfPart kind, TiedSoFar tied, AssumptionLog? log)
    {
        bool inWords = part.Said["at"] is { Length: > 0 } && part.Said["to"] is { Length: > 0 };
        if (inWords && part.ToM < part.AtM)
        {
            log?.AddLength("front edge", part.ToM.Value, "wound forward from its other end");
            return part with { AtM = part.ToM.Value, ToM = part.AtM };
        }

        if (part.Said["at"] is not PlaceText.Bend || part.ToM is not null) return part;
        (double frontM, double rearM) = PartExtents.Of(part, tied.Hook);
        if (kind.MustHaveLength(part) && rearM - frontM < ShankCheck.ThreadM)
        {
            (frontM, rearM) = (kind.UsualPlace(tied).AtM, tied.Hook.ShankM);
            if (rearM - frontM < ShankCheck.ThreadM) return part;
            log?.AddLength("front edge", frontM, "from the bend forward to what is there, as no other end is given");
            return part with { AtM = Units.Rounded(frontM), ToM = rearM };
        }

        if (rearM <= ShankCheck.EndM(kind, tied.Hook)) return part;
        log?.AddLength("front edge", tied.Hook.ShankM - (rearM - frontM), "so that it ends at the bend");
        return part with { AtM = Units.Rounded(Math.Max(0, tied.Hook.ShankM - (rearM - frontM))) };
    }

    private static double Along(string words, TiedSoFar tied) => Units.Rounded(
        words == PlaceText.Bend ? tied.Hook.ShankM
        : words == PlaceText.Eye ? 0
        : PlaceText.Shanks(words) is { } shanks ? shanks * tied.Hook.ShankM
        : Units.TryParse(words, Dimension.Length, out double statedM, out _) ? statedM
        : tied.RearM(words[PlaceText.Behind.Length..]));
}
