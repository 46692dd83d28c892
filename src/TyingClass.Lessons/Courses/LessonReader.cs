using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Markdig;
using Markdig.Syntax;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Practice;
using TyingClass.Lessons.Prose;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Courses;

/// <summary>A lesson, or everything that is wrong with its file.</summary>
public sealed record LessonResult(Lesson? Lesson, ImmutableArray<AuthorError> Errors);

/// <summary>One lesson file into a <see cref="Lesson"/>. Reads only; the engine is not asked.</summary>
public static partial class LessonReader
{
    /// <param name="fileName">"01-mass-center.md".</param>
    /// <param name="readFile">Text of a recipe file such as "recipes/x.fly.yaml", or null when there is none.</param>
    public static LessonResult Read(string fileName, string text, Func<string, string?> readFile)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(readFile);
        AuthorErrors errors = new(fileName);
        string[] lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        Match name = FileName().Match(fileName);
        if (!name.Success) errors.Add(1, 1, "A lesson's file is named with two digits, a hyphen and a short name in small letters, as in 01-mass-center.md.");
        FrontMatter? front = FrontMatter.Read(lines, readFile, errors);
        ImmutableArray<LessonBlock> blocks = Blocks(lines, front?.LineCount ?? 0, readFile, errors);
        if (front is null || errors.Count > 0) return new LessonResult(null, errors.InOrder());
        Lesson lesson = new()
        {
            Slug = name.Groups["slug"].Value,
            Number = int.Parse(name.Groups["number"].Value, CultureInfo.InvariantCulture),
            Title = front.Title,
            Summary = front.Summary,
            Concepts = front.Concepts,
            Minutes = front.Minutes,
            Evening = front.Evening,
            Glossary = front.Glossary,
            Figures = front.Figures,
            File = fileName,
            Links = [.. errors.Links],
            Blocks = blocks,
        };
        return new LessonResult(lesson, []);
    }

    private static ImmutableArray<LessonBlock> Blocks(string[] lines, int frontLines, Func<string, string?> readFile, AuthorErrors errors)
    {
        // Front matter is emptied, not cut, so that Markdown's lines are the file's.
        MarkdownDocument document = Markdown.Parse(new string('\n', frontLines) + string.Join('\n', lines[frontLines..]), ProsePipeline.Lesson);
        ProseWriter.Check(document, 0, 0, errors);
        ReportMisplacedFences(document, errors);
        ImmutableArray<LessonBlock>.Builder blocks = ImmutableArray.CreateBuilder<LessonBlock>();
        List<Block> prose = [];
        foreach (Block block in document)
        {
            if (block is not FencedCodeBlock fenced || !Fence.IsOurs(fenced))
            {
                prose.Add(block);
                continue;
            }

            Flush();
            // One that is never closed has swallowed what follows: there is no telling what was meant to be in it.
            if (IsClosed(fenced) && ReadFence(Fence.From(fenced, lines), lines, readFile, errors) is { } ours) blocks.Add(ours);
        }

        Flush();
        return blocks.ToImmutable();

        void Flush()
        {
            if (prose.Count > 0 && ProseWriter.Render(prose, ProsePipeline.Lesson) is { Length: > 0 } html) blocks.Add(new ProseBlock(html));
            prose.Clear();
        }
    }

    private static LessonBlock? ReadFence(Fence fence, string[] lines, Func<string, string?> readFile, AuthorErrors errors)
    {
        switch (fence.Kind)
        {
            case "fly":
                return FlyFence.Read(fence, readFile, errors);
            case "figure":
                return FigureFence.Read(fence, lines, readFile, errors);
            case "exercise":
                return ExerciseReader.Read(fence, lines, readFile, errors) is { } exercise ? new ExerciseBlock(exercise) : null;
            default:
                return PracticeReader.Read(fence, lines, readFile, errors) is { } practice ? new PracticeBlock(practice) : null;
        }
    }

    private static void ReportMisplacedFences(MarkdownDocument document, AuthorErrors errors)
    {
        foreach (FencedCodeBlock fence in document.Descendants<FencedCodeBlock>())
        {
            if (!IsClosed(fence))
                errors.Add(fence.Line + 1, fence.Column + 1, "This fence is never closed. Put a line of the same signs after its last line.");
            if (Fence.IsOurs(fence) && fence.Parent is not MarkdownDocument)
                errors.Add(fence.Line + 1, fence.Column + 1, $"A fence of kind “{fence.Info}” must stand by itself, not inside a list or a quotation.");
        }
    }

    // One that runs into the beginning of the next is closed by that one's end.
    private static bool IsClosed(FencedCodeBlock fence) =>
        fence.ClosingFencedCharCount > 0
        && !(Fence.IsOurs(fence) && (fence.Lines.Lines ?? []).Take(fence.Lines.Count).Any(l => l.Slice.ToString().StartsWith("```", StringComparison.Ordinal)));

    [GeneratedRegex(@"\A(?<number>[0-9]{2})-(?<slug>[a-z0-9]+(?:-[a-z0-9]+)*)\.md\z")]
    private static partial Regex FileName();
}
