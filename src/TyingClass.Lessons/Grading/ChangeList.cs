using System.Collections.Immutable;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>One thing that differs between two recipes.</summary>
/// <param name="Path">In the recipe given: "hook.eye", "parts[0].size"; "parts[2]" for a whole part put in or taken out.</param>
/// <param name="AnswerPath">Where it stands in the answer; the same unless parts were put in or taken out before it.</param>
/// <param name="Before">As the recipe given states it; null when it does not.</param>
/// <param name="After">As the answer states it; null when it does not.</param>
/// <param name="Said">"the size of the cone".</param>
public sealed record RecipeChange(string Path, string AnswerPath, string? Before, string? After, string Said)
{
    public bool IsWholePart => Path.EndsWith(']');
}

/// <summary>Compares recipes by what they state, blind to units, order of keys and the fly's name.</summary>
public static class ChangeList
{
    public static ImmutableArray<RecipeChange> Between(Recipe given, Recipe answer)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(answer);
        ImmutableArray<RecipeChange>.Builder changes = ImmutableArray.CreateBuilder<RecipeChange>();
        ImmutableArray<string> names = FlyBuilder.Names(given.Parts), answerNames = FlyBuilder.Names(answer.Parts);
        Compare(changes, Rest(given), Rest(answer), "", "", path => PathWords.Say(path, names));

        int head = 0, tail = 0, least = Math.Min(given.Parts.Length, answer.Parts.Length);
        while (head < least && given.Parts[head] == answer.Parts[head]) head++;
        while (tail < least - head && given.Parts[^(tail + 1)] == answer.Parts[^(tail + 1)]) tail++;
        int givenEnd = given.Parts.Length - tail, answerEnd = answer.Parts.Length - tail;
        int g = head, a = head;
        while (g < givenEnd && a < answerEnd)
        {
            if (given.Parts[g].Kind == answer.Parts[a].Kind)
            {
                int from = changes.Count;
                Compare(changes, Fields(given.Parts[g]), Fields(answer.Parts[a]), $"parts[{g}]", $"parts[{a}]", path => PathWords.Say(path, names));
                InNumbers(changes, from, Spelled(given.Parts[g++]), Spelled(answer.Parts[a++]));
            }
            else if (answer.Parts.Take(a..answerEnd).Any(p => p.Kind == given.Parts[g].Kind))
            {
                AddIn(a++);
            }
            else
            {
                TakeOut(g++);
            }
        }

        while (g < givenEnd) TakeOut(g++);
        while (a < answerEnd) AddIn(a++);
        return changes.ToImmutable();

        void AddIn(int i) => changes.Add(new RecipeChange($"parts[{i}]", $"parts[{i}]", null, answerNames[i], ChangeWords.NewPart(answerNames[i])));
        void TakeOut(int i) => changes.Add(new RecipeChange($"parts[{i}]", $"parts[{i}]", names[i], null, ChangeWords.Part(names[i])));
    }

    private static Dictionary<string, string> Rest(Recipe recipe) =>
        RecipeDraft.Of(recipe with { Parts = [], Steps = [] }).Values.Where(v => v.Key != "recipe").ToDictionary(v => v.Key, v => v.Value);

    // With numbers in place of words, so that limits can be held against them.
    private static Dictionary<string, string> Spelled(PartSpec part) => Fields(part with { Said = Sayings.None });

    private static Dictionary<string, string> Fields(PartSpec part) =>
        RecipeDraft.Of(new Recipe("x", default, new HookSpec(), [part], new FishingSpec())).Fields("parts[0]").ToDictionary(v => v.Key, v => v.Value);

    private static void Compare(
        ImmutableArray<RecipeChange>.Builder changes, Dictionary<string, string> given, Dictionary<string, string> answer,
        string path, string answerPath, Func<string, string> say)
    {
        foreach (string key in given.Keys.Union(answer.Keys))
        {
            string? before = given.GetValueOrDefault(key), after = answer.GetValueOrDefault(key);
            if (before == after) continue;
            string full = Join(path, key);
            changes.Add(new RecipeChange(full, Join(answerPath, key), before, after, say(full)));
        }
    }

    private static void InNumbers(ImmutableArray<RecipeChange>.Builder changes, int from, Dictionary<string, string> given, Dictionary<string, string> answer)
    {
        for (int i = from; i < changes.Count; i++)
        {
            string key = changes[i].Path[(changes[i].Path.LastIndexOf('.') + 1)..];
            changes[i] = changes[i] with { Before = given.GetValueOrDefault(key), After = answer.GetValueOrDefault(key) };
        }
    }

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";
}
