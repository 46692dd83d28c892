using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Telling;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Repair;

/// <summary>Holds a repair against what its exercise allows.</summary>
internal static class Allowance
{
    /// <summary>What was changed that may not be, as explanations; empty when all is well.</summary>
    public static IEnumerable<(string Path, string Text)> Violations(Recipe given, Recipe answer, ImmutableArray<AllowedChange> allow)
    {
        ImmutableArray<string> names = FlyBuilder.Names(given.Parts);
        foreach (RecipeChange change in ChangeList.Between(given, answer))
        {
            AllowedChange? rule = allow.FirstOrDefault(a => Covers(a.Path, change));
            if (rule is null)
            {
                yield return (change.AnswerPath,
                    $"{Grammar.Capital(What(change))}. That may not be changed in this exercise. {MayChange(allow, names)} Put it back, and the rest of your "
                        + "answer stands.");
            }
            else if (!ValueRule.Allows(rule, change.Path[(change.Path.LastIndexOf('.') + 1)..], change.After))
            {
                yield return (change.AnswerPath, change.After is null
                    ? $"{Grammar.Capital(change.Said)} is left out. Here it must be stated: {rule.Said}."
                    : $"{Grammar.Capital(change.Said)} is {change.After} in your answer. Here it may be {rule.Said}.");
            }
        }
    }

    public static string MayChange(ImmutableArray<AllowedChange> allow, ImmutableArray<string> names) => allow.Length == 0
        ? "Nothing may be changed here."
        : $"You may change {Join(allow.Select(a => a.Said == "anything" ? PathWords.Say(a.Path, names) : $"{PathWords.Say(a.Path, names)} ({a.Said})"))}.";

    // "hook" covers "hook.eye"; only "parts" itself lets a whole part come or go.
    private static bool Covers(string path, RecipeChange change) =>
        path == change.Path && !change.IsWholePart
        || (path == "parts" && change.Path.StartsWith("parts[", StringComparison.Ordinal))
        || (!change.IsWholePart && change.Path.StartsWith(path + ".", StringComparison.Ordinal));

    private static string What(RecipeChange change) => change switch
    {
        { IsWholePart: true, Before: null } => $"your answer has {change.Said}",
        { IsWholePart: true } => $"your answer leaves out {change.Said}",
        { Before: null } => $"your answer states {change.Said} ({change.After}), which the fly given leaves open",
        { After: null } => $"your answer leaves out {change.Said} ({change.Before} in the fly given)",
        _ => $"your answer has {change.Said} {change.After} instead of {change.Before}",
    };

    private static string Join(IEnumerable<string> items)
    {
        string[] all = [.. items];
        return all.Length == 1 ? all[0] : string.Join(", ", all[..^1]) + " and " + all[^1];
    }
}
