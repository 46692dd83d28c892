using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing;

/// <summary>What a picture needs to know of a fly beside the engine's report on it.</summary>
/// <param name="Hook">With every dimension known.</param>
/// <param name="Fishing">For the leader and the knot.</param>
public sealed record DrawnFly(Recipe Recipe, ResolvedHook Hook, FishingConditions Fishing)
{
    public static DrawnFly Of(Recipe recipe, BuiltFly built)
    {
        ArgumentNullException.ThrowIfNull(built);
        return new DrawnFly(recipe, built.Hook, built.Conditions);
    }
}
