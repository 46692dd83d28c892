using System.Collections.Immutable;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Courses;

/// <summary>The keys between the two lines of hyphens at the top of a lesson.</summary>
internal sealed record FrontMatter(
    string Title, string Summary, ImmutableArray<string> Concepts, int Minutes, int? Evening,
    ImmutableArray<GlossaryTerm> Glossary, ImmutableArray<LessonClaim> Figures, int LineCount)
{
    public static FrontMatter? Read(string[] lines, Func<string, string?> readFile, AuthorErrors errors)
    {
        int end = lines.Length > 0 && lines[0].TrimEnd() == "---" ? Array.FindIndex(lines, 1, l => l.TrimEnd() == "---") : -1;
        if (end < 0)
        {
            errors.Add(1, 1, lines.Length > 0 && lines[0].TrimEnd() == "---"
                ? "The front matter never ends. Put a second line of three hyphens after its last key."
                : "A lesson begins with a line of three hyphens, then title, summary, concepts and minutes, then three hyphens again.");
            return null;
        }

        if (YamlReader.ReadMap(string.Join('\n', lines[1..end]) + "\n", 2, errors, "The front matter") is not { } map) return null;
        FieldReader fields = new(map, "the front matter", errors);
        fields.CheckKeys("title", "summary", "concepts", "minutes", "evening", "glossary", "figures");
        string? title = fields.RequiredText("title", "The hang test and the mass center");
        string? summary = fields.RequiredText("summary", "Find where a fly's weight acts with a thread.");
        if (fields.TextItems("concepts") is { IsEmpty: true }) errors.Add(fields.At("concepts"), "“concepts” is missing: list what the lesson teaches, as in “concepts: [mass center]”.");
        if (!fields.Has("minutes")) fields.Missing("minutes", "say how long the lesson takes, as in “minutes: 25”.");
        return new FrontMatter(
            title ?? "", summary ?? "", fields.TextItems("concepts"), fields.WholeNumber("minutes", 1, 240) ?? 1, fields.WholeNumber("evening", 1, 60),
            Terms(fields), StatedReader.Read(fields, readFile), end + 1);
    }

    private static ImmutableArray<GlossaryTerm> Terms(FieldReader fields)
    {
        ImmutableArray<GlossaryTerm>.Builder terms = ImmutableArray.CreateBuilder<GlossaryTerm>();
        foreach (YamlEntry entry in fields.Group("glossary")?.Entries ?? [])
        {
            if (entry.Value is YamlText { Value.Length: > 0 } text) terms.Add(new GlossaryTerm(entry.Key.Trim(), text.Value.Trim(), entry.Line, entry.Column));
            else fields.Errors.Add(entry.Value, $"Say in a sentence what “{entry.Key}” means.");
        }

        return terms.ToImmutable();
    }
}
