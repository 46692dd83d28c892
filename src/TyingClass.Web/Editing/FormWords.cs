using System.Text.RegularExpressions;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Parts;
using TyingClass.Telling;

namespace TyingClass.Web.Editing;

/// <summary>What is wrong with a recipe, for whoever sees it as a form: by the labels of its fields, not by the keys of its text.</summary>
internal static partial class FormWords
{
    /// <summary>"meant to ride", "hook, gape": a field by its label, in a line of text.</summary>
    public static string Of(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        string label = FieldWords.For(path).Label;
        label = char.ToLowerInvariant(label[0]) + label[1..];
        return path.StartsWith("hook.", StringComparison.Ordinal) ? $"hook, {label}" : label;
    }

    /// <summary>Beside its field, which need not be named.</summary>
    public static string AtField(string text, KindOfPart? kind) => Grammar.Capital(Worded(Place().Replace(text, ""), kind));

    /// <summary>In a list above the form: "Dumbbell eyes, Size of one eye: …".</summary>
    public static string InList(AnswerProblem problem, RecipeFormView? form)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (form is null || problem.Path is not { } path || !Place().IsMatch(problem.Text)) return problem.Text;
        PartView? part = form.Parts.FirstOrDefault(p => path == $"parts[{p.Index}]" || path.StartsWith($"parts[{p.Index}].", StringComparison.Ordinal));
        FieldView? field = (part is null ? form.Hook.Concat(form.Fishing).Concat(form.Top) : part.Fields.Prepend(part.KindField))
            .FirstOrDefault(f => f.Path == path);
        string where = part is not null ? $"{Grammar.Capital(part.Title)} (part {part.Index + 1})"
            : path.StartsWith("fishing", StringComparison.Ordinal) ? "Fishing" : "Hook";
        return $"{where}{(field is null ? "" : $", {field.Label}")}: {AtField(problem.Text, part is null ? null : KindsOfPart.Find(part.Kind))}";
    }

    private static string Worded(string text, KindOfPart? kind) => Line().Replace(
        Key().Replace(text, m => $"“{FieldWords.ForPart(0, m.Groups["key"].Value, kind).Label}{m.Groups["value"].Value}”"), "empty the field");

    [GeneratedRegex(@"\A(?:Part [0-9]+(?: \([^)]*\))?|Hook|Fishing)(?:, [a-z ]+)?: ")]
    private static partial Regex Place();

    // "bend" and "part" are words of places and parts too.
    [GeneratedRegex("“(?<key>at|to|size|length|diameter|turns|mass|tied|side|material|density|clocked|side offset)(?<value>: [^”]*)?”")]
    private static partial Regex Key();

    [GeneratedRegex("delete (?:the|this) line")]
    private static partial Regex Line();
}
