using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Courses;

/// <summary>
/// What a lesson's front matter lists under "figures": by recipe file, changed or not, the quantities its prose states and the facts it tells in words.
/// </summary>
internal static class StatedReader
{
    private const string File = "file", With = "with", Holds = "holds";

    public static ImmutableArray<LessonClaim> Read(FieldReader fields, Func<string, string?> readFile)
    {
        ImmutableArray<LessonClaim>.Builder all = ImmutableArray.CreateBuilder<LessonClaim>();
        RecipeFinder recipes = new([], readFile, fields.Errors);
        foreach (YamlNode item in fields.Items("figures"))
        {
            if (item is not YamlMap map || map.Find(File) is not YamlText path)
            {
                fields.Errors.Add(item,
                    "Each item of “figures” names a recipe with “file:” and below it the quantities the prose states, as in “mass center, x: 5.9 mm”.");
                continue;
            }

            if (recipes.FromFile(path) is not { } source || source.Parse(fields.Errors) is not { } recipe) continue;
            FieldReader one = new(map, "an item of “figures”", fields.Errors);
            if (Changed(source.Text, recipe, one) is not { } text) continue;
            foreach (YamlText fact in one.TextNodes(Holds)) AddFact(text, fact, recipe, fields.Errors, all);
            foreach (YamlEntry entry in map.Entries.Where(e => e.Key is not (File or With or Holds))) AddFigure(text, entry, fields.Errors, all);
        }

        return all.ToImmutable();
    }

    /// <summary>The recipe's text with the changes under "with", or null when they cannot be made.</summary>
    public static string? Changed(string text, Recipe recipe, FieldReader item)
    {
        if (item.Group(With) is not { } changes) return text;
        int before = item.Errors.Count;
        RecipeDraft draft = RecipeDraft.Parse(text).Value!;
        foreach (YamlEntry change in changes.Entries)
        {
            if (AllowReader.PathComplaint(change.Key, recipe) is { } complaint) item.Errors.Add(change.Line, change.Column, complaint);
            else if (change.Value is YamlText { Value: var value }) draft = draft.With(change.Key, value.Trim());
            else item.Errors.Add(change.Value, "Write one new value, as in “parts[0].size: 3 mm”.");
        }

        foreach (RecipeError error in RecipeParser.Parse(draft.ToText()).Errors.Take(item.Errors.Count > before ? 0 : 1))
            item.Errors.Add(changes, $"The fly so changed cannot be read: {error.Text}");
        return item.Errors.Count > before ? null : draft.ToText();
    }

    private static void AddFact(string text, YamlText fact, Recipe recipe, AuthorErrors errors, ImmutableArray<LessonClaim>.Builder all)
    {
        ConditionScope scope = new(HasFly: true, HasStart: false, null, AnswerIsNumber: false, [], [.. FlyBuilder.Names(recipe.Parts)]);
        if (ConditionReader.Check(fact, scope, errors))
            all.Add(new StatedFact(text, fact.Value.Trim(), ConditionParser.Parse(fact.Value, scope).Condition!, fact.Line, fact.Column));
    }

    private static void AddFigure(string text, YamlEntry entry, AuthorErrors errors, ImmutableArray<LessonClaim>.Builder all)
    {
        if (!QuantityQuery.TryParse(entry.Key, out QuantityQuery query, out string error))
            errors.Add(entry.Line, entry.Column, error);
        else if (entry.Value is not YamlText { Value: var said } || !GoalReader.TryRead(query.Quantity, said.Trim(), out _, out error))
            errors.Add(entry.Value, error.Length > 0 ? error : "Write the figure as the prose states it, with its unit.");
        else
            all.Add(new StatedFigure(text, query.Name, said.Trim(), entry.Value.Line, entry.Value.Column));
    }
}
