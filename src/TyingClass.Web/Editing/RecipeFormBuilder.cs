using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.Editing;

/// <summary>Lays a draft out as a form, with each error at its field and what the exercise allows beside it.</summary>
/// <param name="assumed">What the fly of this draft takes for whatever it leaves open; empty where none can be built of it.</param>
internal sealed class RecipeFormBuilder(
    RecipeDraft draft, ImmutableArray<AnswerProblem> problems, EditRules rules, ImmutableArray<Assumption> assumed = default)
{
    private readonly HashSet<string> _shown = new(StringComparer.Ordinal);

    public RecipeFormView Build()
    {
        ImmutableArray<FieldView> top = Group("", ["recipe", "intent"]);
        ImmutableArray<FieldView> hook = Group("hook.", FieldWords.HookKeys);
        ImmutableArray<PartView> parts = [.. Enumerable.Range(0, draft.PartCount).Select(Part)];
        ImmutableArray<FieldView> fishing = Group("fishing.", FieldWords.FishingKeys);
        int notes = draft.Values.Count(v => v.Key.StartsWith("steps[", StringComparison.Ordinal));
        ImmutableArray<FieldView> steps = [.. Enumerable.Range(0, notes + 1).Select(i => Finish(FieldWords.ForStep(i))).Where(IsWorthShowing)];
        return new RecipeFormView
        {
            Top = top,
            Hook = hook,
            Parts = parts,
            Fishing = fishing,
            Steps = steps,
            Unknown = [.. draft.Values.Where(v => !_shown.Contains(v.Key)).Select(v => Finish(FieldWords.For(v.Key)))],
            KindsToAdd = rules.KindsToAdd,
        };
    }

    private ImmutableArray<FieldView> Group(string prefix, ImmutableArray<string> keys) =>
        [.. keys.Select(key => Finish(FieldWords.For(prefix + key))).Where(IsWorthShowing)];

    private PartView Part(int index)
    {
        string path = $"parts[{index}]";
        string kindTyped = draft.Get($"{path}.part") ?? "";
        KindOfPart? kind = KindsOfPart.Find(kindTyped);
        FieldView kindField = Finish(FieldWords.ForPart(index, "part", kind));
        IEnumerable<string> keys = (kind?.Keys ?? PartKeys.All).Concat(draft.Fields(path).Select(f => f.Key)).Distinct().Where(k => k != "part");
        return new PartView(
            index, kindTyped, kindField,
            [.. keys.Select(key => Finish(FieldWords.ForPart(index, key, kind))).Where(IsWorthShowing)],
            [.. ErrorsAt(path).Select(e => FormWords.AtField(e, kind))]);
    }

    private KindOfPart? KindAt(string path) => PartAt(path) is { } index ? KindsOfPart.Find(draft.Get($"parts[{index}].part") ?? "") : null;

    private static int? PartAt(string path) =>
        path.StartsWith("parts[", StringComparison.Ordinal) && int.TryParse(path.AsSpan(6, path.IndexOf(']') - 6), out int index) ? index : null;

    // Behind what is tied in before it.
    private ImmutableArray<string> Places(FieldView field) => PartAt(field.Path) is { } index
        ? ["bend", .. Names.Take(index).Select(name => $"behind the {name}"), field.Suggestions[^1]]
        : field.Suggestions;

    private static bool IsPlace(string path) => path.EndsWith("].at", StringComparison.Ordinal) || path.EndsWith("].to", StringComparison.Ordinal);

    // Known of a kind, whatever else is filled in.
    private string? UsualMaterial(string path) => path.EndsWith(".material", StringComparison.Ordinal) ? KindAt(path)?.UsualMaterial : null;

    private string? Usual(string path)
    {
        if (assumed.IsDefaultOrEmpty) return null;
        string key = path[(path.LastIndexOf('.') + 1)..];
        // Where an exercise names the metals, the one that is usual elsewhere may not be among them.
        if (key == "density" && draft.Get(path[..^key.Length] + "material") is null && !rules.ChoicesFor(path[..^key.Length] + "material").IsDefaultOrEmpty)
            return null;
        string owner = PartAt(path) is { } index ? Names.ElementAtOrDefault(index) ?? "" : path.Split('.')[0];
        string[] said = key switch { "at" => ["place"], "diameter" => ["diameter", "wire diameter", "line"], "leader" => ["leader diameter"], _ => [key] };
        return said.Select(word => assumed.FirstOrDefault(a => a.What == $"{owner} {word}"))
            .FirstOrDefault(a => a is not null) is { } found ? Rounded(found.Value) : null;
    }

    // As finely as a tyer can measure, not as finely as it is computed.
    private static string Rounded(string value) => new[] { Dimension.Length, Dimension.Mass }
        .Select(d => Units.TryParse(value, d, out double si, out _) ? Stated.Say(si, d, UnitSystem.Metric) : null).FirstOrDefault(v => v is not null) ?? value;

    // As the body names them: the second wing is "wing 2".
    private IEnumerable<string> Names
    {
        get
        {
            Dictionary<string, int> seen = [];
            for (int i = 0; i < draft.PartCount; i++)
            {
                string kind = draft.Get($"parts[{i}].part") ?? "";
                int count = seen[kind] = seen.GetValueOrDefault(kind) + 1;
                yield return count == 1 ? kind : FormattableString.Invariant($"{kind} {count}");
            }
        }
    }

    private FieldView Finish(FieldView field)
    {
        _shown.Add(field.Path);
        string value = draft.Get(field.Path) ?? "";
        // An exercise that names the words leaves no others to choose from.
        if (rules.ChoicesFor(field.Path) is { Length: > 1 } only) field = field with { Options = only, OtherOptions = [] };
        if (field.Path.EndsWith("].part", StringComparison.Ordinal) && !rules.KindsToAdd.IsEmpty) field = field with { Options = rules.KindsToAdd };
        string? usual = value.Length == 0 ? Usual(field.Path) ?? UsualMaterial(field.Path) ?? field.Usual : null;
        bool needed = value.Length == 0 && rules.MustBeStated(field.Path, usual);
        bool locked = rules.IsLocked(field.Path, value), aside = !rules.SpeaksOf(field.Path);
        return field with
        {
            Value = value,
            Options = field.Options.IsEmpty || field.Options.Contains(value) || field.OtherOptions.Contains(value) ? field.Options : [value, .. field.Options],
            Suggestions = IsPlace(field.Path) ? Places(field) : field.Suggestions,
            Usual = needed ? null : usual,
            Needed = needed ? rules.NoteOn(field.Path, value) : null,
            Errors = [.. ErrorsAt(field.Path).Select(e => FormWords.AtField(e, KindAt(field.Path)))],
            Locked = locked,
            IsAside = aside,
            Rare = field.Rare && aside,
            Note = locked ? null : rules.NoteOn(field.Path, value),
        };
    }

    // Where little may be changed, the empty fields would only be noise.
    private static bool IsWorthShowing(FieldView field) => !field.Locked || field.Value.Length > 0 || !field.Errors.IsEmpty;

    private ImmutableArray<string> ErrorsAt(string path) => [.. problems.Where(p => p.Path == path).Select(p => p.Text)];
}
