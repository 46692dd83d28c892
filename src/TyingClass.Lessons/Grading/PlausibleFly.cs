using System.Collections.Immutable;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>
/// Whether a fly that was sent in can be meant: far outside anything tied, so that a slipped decimal point is asked about before it is graded. Estimates.
/// </summary>
internal static class PlausibleFly
{
    // The largest flies for the sea carry a gram or two of hair.
    private const double HeaviestDressingKg = 3e-3;

    // A pair of eyes of 8 mm in lead has 5 g.
    private const double HeaviestWeightKg = 6e-3;

    /// <summary>What to ask of it, by the path it is about; empty where all of it may be meant.</summary>
    public static IEnumerable<(string Path, string Text)> Questions(Recipe recipe, UnitSystem units)
    {
        ImmutableArray<string> names = FlyBuilder.Names(recipe.Parts);
        for (int i = 0; i < recipe.Parts.Length; i++)
        {
            double most = KindsOfPart.Of(recipe.Parts[i]).CanHoldAir ? HeaviestDressingKg : HeaviestWeightKg;
            if (recipe.Parts[i].MassKg is { } massKg && massKg > most)
                yield return ($"parts[{i}].mass", RefusalSentence.TooHeavyToBeMeant(names[i], massKg, most, units));
        }
    }
}
