using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Bodies;

/// <summary>A recipe turned into what the balance engine works on.</summary>
/// <param name="Assumed">Every number the recipe left out, where it went and where it came from.</param>
public sealed record BuiltFly(FlyBody Body, FishingConditions Conditions, ImmutableArray<Assumption> Assumed, ResolvedHook Hook);
