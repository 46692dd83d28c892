using System.Collections.Immutable;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Courses;

/// <summary>evenings.yaml beside the lessons: the plan of each evening.</summary>
internal static class EveningsReader
{
    public const string FileName = "evenings.yaml";

    private const int MostEvenings = 60;

    public static (ImmutableArray<CourseEvening> Evenings, ImmutableArray<AuthorError> Errors) Read(string text)
    {
        AuthorErrors errors = new(FileName);
        ImmutableArray<CourseEvening>.Builder all = ImmutableArray.CreateBuilder<CourseEvening>();
        if (YamlReader.ReadMap(text, 1, errors, FileName) is { } map)
        {
            FieldReader fields = new(map, FileName, errors);
            fields.CheckKeys("evenings");
            foreach (YamlNode item in fields.Items("evenings"))
            {
                if (item is not YamlMap evening) errors.Add(item, "Each evening is a group of keys: “evening: 1”, “title: …”, “plan: |”.");
                else if (One(new FieldReader(evening, "an evening", errors), all) is { } read) all.Add(read);
            }
        }

        return (all.ToImmutable(), errors.InOrder());
    }

    private static CourseEvening? One(FieldReader fields, IReadOnlyCollection<CourseEvening> earlier)
    {
        fields.CheckKeys("evening", "title", "plan", "demonstrations", "watch for", "home", "besides", "in the room");
        if (!fields.Has("evening")) fields.Missing("evening", "its number, as in “evening: 3”.");
        int? number = fields.WholeNumber("evening", 1, MostEvenings);
        string? title = fields.RequiredText("title", "Where the weight acts"), plan = fields.RequiredText("plan", "|");
        if (earlier.Any(e => e.Number == number)) fields.Errors.Add(fields.At("evening"), $"Evening {number} has a plan above already. Make one of the two.");
        return number is not { } known || title is null || plan is null
            ? null
            : new CourseEvening(known, title, plan, fields.Text("demonstrations") ?? "", fields.Text("watch for") ?? "", fields.Text("home") ?? "",
                fields.TextItems("besides"), fields.TextItems("in the room"), fields.Map.Line);
    }
}
