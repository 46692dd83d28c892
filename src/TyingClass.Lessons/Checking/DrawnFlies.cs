using System.Collections.Immutable;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Doubting;

namespace TyingClass.Lessons.Checking;

/// <summary>The same fly by other guesses of the model, for telling whether a key would survive them. One draw is one model, for every fly.</summary>
internal static class DrawnFlies
{
    private static readonly DoubtOptions Options = new(KeyClearance.Draws);

    /// <summary>Draw by draw; null where the fly cannot be built.</summary>
    public static ImmutableArray<FlyFigures?> Of(FlyFigures fly)
    {
        ImmutableArray<BuiltFly?> start = fly.Start is { } from ? Doubt.Flies(from.Recipe, Options) : [];
        return
        [
            .. Doubt.Flies(fly.Recipe, Options).Select((built, i) => built is null || (fly.Start is not null && start[i] is null)
                ? null
                : fly.Drawn(built, fly.Start?.Drawn(start[i]!, null))),
        ];
    }
}
