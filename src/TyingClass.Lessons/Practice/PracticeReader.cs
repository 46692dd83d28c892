using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Prose;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling;

namespace TyingClass.Lessons.Practice;

/// <summary>A practice fence: an exercise without id and answers, and what varies in it.</summary>
internal static class PracticeReader
{
    public static PracticeSet? Read(Fence fence, string[] lines, Func<string, string?> readFile, AuthorErrors errors)
    {
        int before = errors.Count;
        if (ExerciseReader.Read(fence, lines, readFile, errors, out FieldReader? fields) is not { } template || fields is null) return null;
        if (template.Kind is not IPracticed kind)
        {
            errors.Add(fields.At("kind"), $"Practice draws {Grammar.And(ExerciseKinds.All.Where(k => k is IPracticed).Select(k => k.Word))} problems only.");
            return null;
        }

        if (template.Concepts.Length != 1) errors.Add(fields.At("concepts"), "Practice is of one concept: write “concepts: [mass center]”.");
        if (kind.CannotVary(template.Task) is { } reason) errors.Add(fields.At(reason.Key), reason.Text);
        Recipe? given = template.RecipeText is { } text ? RecipeParser.Parse(text).Value : null;
        ImmutableArray<AllowedChange>.Builder vary = ImmutableArray.CreateBuilder<AllowedChange>();
        foreach ((YamlNode place, string path, YamlNode? value) in fields.Pairs("vary"))
        {
            if (Complaint(template, path, given) is { } complaint) errors.Add(place, complaint);
            else if (RangeText.Rule(path, path[(path.LastIndexOf('.') + 1)..], value, place, errors) is { } rule)
            {
                if (rule.LowText is null && rule.Words.Length < 2)
                    errors.Add(place, $"Say between what {path} varies: a range (2 mm … 5 mm) or a list of values.");
                vary.Add(rule);
            }
        }

        if (vary.Count == 0)
            errors.Add(fields.At("vary"), "“vary” is missing: say what changes from problem to problem, as in “- parts[0].size: 2 mm … 5 mm”.");
        return errors.Count > before ? null : new PracticeSet(template.Concepts[0], template, vary.ToImmutable());
    }

    private static string? Complaint(Exercise template, string path, Recipe? given)
    {
        if (!PracticeSet.IsOfChange(path)) return AllowReader.PathComplaint(path, given);
        string changed = path[PracticeSet.OfChange.Length..];
        return template.Task.Change?.Changes.Any(c => c.Path == changed) == true ? null
            : $"“{FieldReader.Clip(path)}” varies what is done to the fly: write “change:” above, and moved in below it “{changed}” with one value.";
    }
}
