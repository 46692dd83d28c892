using System.Collections.Immutable;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Doubting;

/// <summary>How the estimates are drawn.</summary>
/// <param name="Width">Multiplies every range about the table's value: 0 leaves no doubt.</param>
/// <param name="Varies">Which estimates are drawn; null for all.</param>
public sealed record DoubtOptions(int Draws = 200, double Width = 1, Func<Figure, bool>? Varies = null)
{
    public static DoubtOptions Default { get; } = new();
}

/// <summary>
/// The second sampling: of the model instead of the hands. Each estimate is drawn from its range and the fly built and worked out anew. Every fly meets the
/// same draws.
/// </summary>
public static class Doubt
{
    /// <param name="built">The recipe, by the table's own values.</param>
    /// <exception cref="ArgumentException">As <see cref="FlyBuilder.Build(Recipe, int)"/>.</exception>
    public static DoubtReport Of(Recipe recipe, BuiltFly built, DoubtOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(built);
        options ??= DoubtOptions.Default;
        DoubtCalculation calculation = new(built.Body, built.Conditions);
        Draws draws = new(options);
        List<int> worked = new(options.Draws);
        List<DrawnFly> flies = new(options.Draws);
        for (int i = 0; i < options.Draws; i++)
        {
            if (Drawn(recipe, draws.At(i)) is not { } fly) continue;
            worked.Add(i);
            flies.Add(calculation.At(fly.Body, fly.Conditions));
        }

        return calculation.Report(flies, draws.Columns.Select(c => (c.Name, worked.Select(i => c.Values[i]).ToArray())));
    }

    /// <summary>The bands that doubt lays about the curves of the soaked fly.</summary>
    /// <exception cref="ArgumentException">As <see cref="FlyBuilder.Build(Recipe, int)"/>.</exception>
    public static DoubtBands Bands(Recipe recipe, BuiltFly built, ImmutableArray<double> speedsMS, DoubtOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(built);
        return new DoubtCalculation(built.Body, built.Conditions).Bands(
            [.. Flies(recipe, options).OfType<BuiltFly>().Select(fly => (fly.Body, fly.Conditions))], speedsMS);
    }

    // A retrieve takes as long as ten reports: fewer draws, and the ends of the range are that much rougher.
    private const int DrawsOfARetrieve = 16;

    /// <summary>What the guesses leave open of its retrieve. Those about the fly; the line is as it is.</summary>
    public static RetrieveDoubt OfRetrieve(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return RetrieveDoubt.Of(
        [
            .. Flies(recipe, new DoubtOptions(DrawsOfARetrieve)).OfType<BuiltFly>().Select(fly =>
                RetrieveEngine.Report(fly.Body, fly.Conditions, RetrieveBuilder.Build(recipe.Fishing.Retrieve, fly.Conditions))),
        ]);
    }

    /// <summary>The drawn flies themselves, draw by draw; null where the draw leaves no hook to tie on.</summary>
    public static ImmutableArray<BuiltFly?> Flies(Recipe recipe, DoubtOptions? options = null)
    {
        options ??= DoubtOptions.Default;
        Draws draws = new(options);
        return [.. Enumerable.Range(0, options.Draws).Select(i => Drawn(recipe, draws.At(i)))];
    }

    // Such a recipe stands at the edge of what can be tied at all.
    private static BuiltFly? Drawn(Recipe recipe, Guesses guesses)
    {
        try
        {
            return FlyBuilder.Build(recipe, guesses);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
