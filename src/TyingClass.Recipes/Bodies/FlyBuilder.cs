using System.Collections.Immutable;
using TyingClass.Balance;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Bodies;

/// <summary>Turns a recipe into a body of small elements (docs/formulas-body.md has every formula).</summary>
public static class FlyBuilder
{
    /// <param name="recipe">As parsed; what it leaves out is filled in from the catalogue and listed.</param>
    /// <param name="refinement">Multiplies the number of drag elements, 1 to 64: a check that 1 is fine enough.</param>
    /// <exception cref="ArgumentException">A hook or material the catalogue cannot make sense of; the parser reports these first.</exception>
    public static BuiltFly Build(Recipe recipe, int refinement = 1)
    {
        RecipeMeter.Builds.Add(1);
        return Build(recipe, Guesses.Usual, refinement);
    }

    /// <summary>The same fly, if the estimates were otherwise.</summary>
    /// <exception cref="ArgumentException">As <see cref="Build(Recipe, int)"/>, or the estimates leave no hook to tie on.</exception>
    public static BuiltFly Build(Recipe recipe, Guesses guesses, int refinement = 1)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(guesses);
        Require.InRange(refinement, 1, 64, nameof(refinement));
        AssumptionLog log = new() { IsOff = guesses.AreDrawn };
        ResolvedHook hook = HookScale.Resolve(recipe.Hook, guesses);
        HookAssumptions.Add(recipe.Hook, hook, log);

        if (guesses.AreDrawn) recipe = OnShankOf(recipe, hook);
        recipe = recipe with { Parts = Places.Settle(recipe.Parts, hook, log) };
        ImmutableArray<string> names = Names(recipe.Parts);
        ImmutableArray<PartDimensions> dimensions = [.. recipe.Parts.Select((part, i) =>
        {
            log.Part = names[i];
            PartDimensions d = PartDimensions.Of(part, hook, log);
            // NaN fails these comparisons too.
            if (!(d.LengthM > 0 && d.RearM >= d.FrontM))
            {
                throw new ArgumentException($"The {names[i]} has no length: its rear edge must lie behind its front edge.", nameof(recipe));
            }

            return d;
        })];
        Sheaths sheaths = new(AllSheaths(recipe.Parts, dimensions, hook));
        List<BodyPart> parts = [HookBuilder.Build(hook, recipe.Hook.MassKg, sheaths.ExposedRuns(-1), refinement)];
        for (int i = 0; i < names.Length; i++)
        {
            log.Part = names[i];
            parts.Add(BuildPart(new PartContext(i, recipe.Parts[i], names[i], dimensions[i], hook, sheaths, log, refinement)));
        }

        FishingConditions conditions = FishingBuilder.Build(recipe.Fishing, guesses, log);
        return new BuiltFly(new FlyBody([.. parts], hook.TowPointM, hook.ShankM, recipe.Intent), conditions, [.. log.All], hook);
    }

    /// <summary>"wing", then "wing 2": each part's name in the body and in the ledger, in tying order.</summary>
    public static ImmutableArray<string> Names(ImmutableArray<PartSpec> parts) =>
        [.. parts.Select((part, i) => parts.Take(i).Count(earlier => earlier.Kind == part.Kind) is > 0 and var before
            ? $"{KindsOfPart.Of(part).Word} {before + 1}"
            : KindsOfPart.Of(part).Word)];

    // Drawn longer or shorter than the scale has it, a shank carries its parts where they were on it: at the bend is at the bend.
    private static Recipe OnShankOf(Recipe recipe, ResolvedHook hook)
    {
        double share = hook.ShankM / HookScale.Resolve(recipe.Hook).ShankM;
        return recipe with { Parts = [.. recipe.Parts.Select(p => p with { AtM = share * p.AtM, ToM = share * p.ToM })] };
    }

    private static BodyPart BuildPart(PartContext part)
    {
        SubstanceAssumptions.Add(part.Spec, part.Log);
        PartDraft draft = new(part.Name);
        part.Kind.Build(part, draft);
        part.Kind.AddSideForce(part, draft);
        double playM = part.Kind.PlayM(part.Dimensions, part.Hook), sideM = PartExtents.SideOffsetM(part.Spec, part.Hook);
        if (sideM != part.Spec.SideOffsetM) part.Log.AddLength("side offset", sideM, "as far as its bore and the wire allow");
        BodyPart built = draft.ToPart() with { IsWeight = part.Kind.IsWeight, Room = new SideRoom(-playM - sideM, playM - sideM) };
        return RigidMotion.Apply(built, sideM, part.Spec.ClockedRad);
    }

    private static ImmutableArray<Sheath> AllSheaths(ImmutableArray<PartSpec> parts, ImmutableArray<PartDimensions> dimensions, ResolvedHook hook)
    {
        ImmutableArray<Sheath>.Builder all = ImmutableArray.CreateBuilder<Sheath>();
        all.Add(new Sheath(-1, 0, hook.ShankM, hook.WireM, IsSeat: true));
        for (int i = 0; i < parts.Length; i++)
        {
            if (KindsOfPart.Of(parts[i]).SheathOf(i, parts[i], dimensions[i], new Sheaths(all.ToImmutable())) is { } sheath)
            {
                all.Add(sheath with { Tight = PartSubstance.Of(parts[i], hook.Guesses).SideForceShare.Value });
            }
        }

        return all.ToImmutable();
    }
}
