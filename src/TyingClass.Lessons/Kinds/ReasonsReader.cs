using System.Collections.Immutable;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Kinds;

/// <summary>"reasons" of an exercise: sentences to choose from, one of which is the right one.</summary>
internal static class ReasonsReader
{
    private const int MostReasons = 6;

    /// <param name="what">What they are reasons for, in "list ‹what›".</param>
    /// <returns>The reasons in the order written, and the place of the right one, from 1.</returns>
    public static (ImmutableArray<string> All, int Right) Read(FieldReader fields, string what)
    {
        const string Forms = "Write each reason as a sentence, and the right one as “right: the sentence”.";
        ImmutableArray<string>.Builder reasons = ImmutableArray.CreateBuilder<string>();
        List<int> right = [];
        ImmutableArray<YamlNode> items = fields.Items("reasons");
        foreach (YamlNode item in items)
        {
            string? said = item switch
            {
                YamlText text => text.Value.Trim(),
                YamlMap { Entries: [{ Key: "right", Value: YamlText text }] } => text.Value.Trim(),
                _ => null,
            };
            if (string.IsNullOrEmpty(said)) fields.Errors.Add(item, Forms);
            else reasons.Add(said);
            if (item is YamlMap && said is not null) right.Add(reasons.Count);
        }

        if (!fields.Has("reasons")) fields.Missing("reasons", $"list {what}. {Forms}");
        else if (items.Length is < 2 or > MostReasons)
            fields.Errors.Add(fields.At("reasons"), $"Give two to {MostReasons} reasons to choose from; here are {items.Length}.");
        else if (reasons.Count == items.Length && right.Count != 1)
            fields.Errors.Add(fields.At("reasons"), $"One of the reasons is the right one; {(right.Count == 0 ? "none" : "more than one")} is marked. {Forms}");
        return (reasons.ToImmutable(), right.FirstOrDefault(1));
    }
}
