using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Compose;

/// <summary>Holds a composed fly against the parts box and whatever else its exercise fixes.</summary>
internal static class BoxCheck
{
    public static IEnumerable<(string Path, string Text)> Violations(Recipe answer, ComposeTask task)
    {
        RecipeDraft draft = RecipeDraft.Of(Places.Spelled(answer));
        foreach (AllowedChange rule in task.Fixed)
        {
            string? value = draft.Get(rule.Path);
            if (!ValueRule.Allows(rule, rule.Path[(rule.Path.LastIndexOf('.') + 1)..], value))
            {
                string said = Grammar.Capital(PathWords.Say(rule.Path, []));
                yield return (rule.Path,
                    value is null ? $"{said} is not stated. Here it must be {rule.Said}." : $"{said} is {value}. Here it must be {rule.Said}.");
            }
        }

        if (task.PartsBox.IsEmpty) yield break;
        ImmutableArray<string> names = FlyBuilder.Names(answer.Parts);
        Dictionary<string, int> used = [];
        for (int i = 0; i < answer.Parts.Length; i++)
        {
            string kind = draft.Get($"parts[{i}].part") ?? "";
            if (PartViolation(task.PartsBox, draft, i, kind, names[i], used) is { } found) yield return found;
        }
    }

    public static string Contents(ImmutableArray<BoxEntry> box) => "The box holds " + string.Join("; ", box.Select(entry =>
        (entry.AtMost is { } most ? $"{most} × " : "") + entry.Part + string.Concat(entry.Rules.Select(r => $", {r.Path} {r.Said}")))) + ".";

    // The first entry of the kind that fits takes the part; when none fits, the best near miss is explained.
    private static (string Path, string Text)? PartViolation(
        ImmutableArray<BoxEntry> box, RecipeDraft draft, int index, string kind, string name, Dictionary<string, int> used)
    {
        (string, string)? complaint = null;
        for (int b = 0; b < box.Length; b++)
        {
            BoxEntry entry = box[b];
            if (entry.Part != kind) continue;
            AllowedChange? broken = entry.Rules.FirstOrDefault(r => !ValueRule.Allows(r, r.Path, Value(r.Path)));
            string slot = $"{b}";
            int count = used.GetValueOrDefault(slot);
            if (broken is null && (entry.AtMost is not { } most || count < most))
            {
                used[slot] = count + 1;
                return null;
            }

            complaint = broken is null
                ? ($"parts[{index}].part", $"The box holds only {entry.AtMost} × {entry.Part}, and {name} is one more.")
                : ($"parts[{index}].{broken.Path}", draft.Get($"parts[{index}].{broken.Path}") is { } value
                    ? $"The {broken.Path} of the {name} is {value}. In this box it is {broken.Said}."
                    : $"The {broken.Path} of the {name} is not stated. In this box it is {broken.Said}.");
        }

        return complaint ?? ($"parts[{index}].part", $"There is no {kind} in the parts box. {Contents(box)}");

        // What is left open is what is usual, and the form says so.
        string? Value(string key) => draft.Get($"parts[{index}].{key}")
            ?? (key == "material" && draft.Get($"parts[{index}].density") is null ? KindsOfPart.Find(kind)?.UsualMaterial : null);
    }
}
