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
    // One of these says how large a part is; where and of what it is tied does not make it one.
    private static readonly ImmutableArray<string> Measures = ["size", "mass", "length", "diameter", "turns"];

    public static IEnumerable<(string Path, string Text)> Violations(Recipe answer, ComposeTask task)
    {
        if (answer.Parts.IsEmpty)
        {
            yield return ("parts", RefusalSentence.BareHook);
            yield break;
        }

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

        ImmutableArray<string> names = FlyBuilder.Names(answer.Parts);
        Dictionary<string, int> used = [];
        for (int i = 0; i < answer.Parts.Length; i++)
        {
            if (Blank(draft, i, names[i]) is { } blank) yield return blank;
            if (task.PartsBox.IsEmpty) continue;
            foreach ((string, string) found in PartViolations(task.PartsBox, draft, i, names[i], used)) yield return found;
        }
    }

    // A part with nothing filled in is no answer: all of it would be taken from what is usual.
    private static (string Path, string Text)? Blank(RecipeDraft draft, int index, string name)
    {
        string? measure = KindsOfPart.Find(draft.Get($"parts[{index}].part"))?.Keys.Where(Measures.Contains).OrderBy(Measures.IndexOf).FirstOrDefault();
        return measure is null || Measures.Any(m => draft.Get($"parts[{index}].{m}") is not null) ? null
            : ($"parts[{index}].{measure}", RefusalSentence.NothingFilledIn(name, measure));
    }

    public static string Contents(ImmutableArray<BoxEntry> box) => "The box holds " + string.Join("; ", box.Select(entry =>
        (entry.AtMost is { } most ? $"{most} × " : "") + entry.Part + string.Concat(entry.Rules.Select(r => $", {r.Path} {r.Said}")))) + ".";

    // The first entry of the kind that fits takes the part; when none fits, all that is wrong with the nearest is explained.
    private static (string Path, string Text)[] PartViolations(
        ImmutableArray<BoxEntry> box, RecipeDraft draft, int index, string name, Dictionary<string, int> used)
    {
        string kind = draft.Get($"parts[{index}].part") ?? "";
        (string, string)[]? complaints = null;
        for (int b = 0; b < box.Length; b++)
        {
            BoxEntry entry = box[b];
            if (entry.Part != kind) continue;
            AllowedChange[] broken = [.. entry.Rules.Where(r => !ValueRule.Allows(r, r.Path, Value(r.Path)))];
            string slot = $"{b}";
            int count = used.GetValueOrDefault(slot);
            if (broken.Length == 0 && (entry.AtMost is not { } most || count < most))
            {
                used[slot] = count + 1;
                return [];
            }

            complaints = broken.Length == 0
                ? [($"parts[{index}].part", $"The box holds only {entry.AtMost} × {entry.Part}, and {name} is one more.")]
                : [.. broken.Select(r => ($"parts[{index}].{r.Path}", draft.Get($"parts[{index}].{r.Path}") is { } value
                    ? $"The {r.Path} of the {name} is {value}. In this box it is {r.Said}."
                    : $"The {r.Path} of the {name} is not stated. In this box it is {r.Said}."))];
        }

        return complaints ?? [($"parts[{index}].part", $"There is no {kind} in the parts box. {Contents(box)}")];

        // What is left open is what is usual, and the form says so.
        string? Value(string key) => draft.Get($"parts[{index}].{key}")
            ?? (key == "material" && draft.Get($"parts[{index}].density") is null ? KindsOfPart.Find(kind)?.UsualMaterial : null);
    }
}
