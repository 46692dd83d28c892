using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Courses;

/// <summary>One loaded state of the lessons folder; replaced whole when a file changes.</summary>
/// <param name="Problems">What is wrong with the folder now; where a file cannot be read, its last good version is shown.</param>
public sealed record Course(ImmutableArray<Lesson> Lessons, ImmutableArray<AuthorError> Problems)
{
    public static Course Empty { get; } = new([], []);

    /// <summary>The plans of the evenings, from <c>evenings.yaml</c>; empty where the course has none.</summary>
    public ImmutableArray<CourseEvening> Evenings { get; init; } = [];

    public IEnumerable<Exercise> Exercises => Lessons.SelectMany(l => l.Exercises);

    /// <summary>The words that the lessons bring in, in the order of the alphabet.</summary>
    public ImmutableArray<GlossaryEntry> Glossary => Courses.Glossary.Of(Lessons);

    public bool TryFindLesson(string slug, out Lesson lesson)
    {
        lesson = Lessons.FirstOrDefault(l => l.Slug == slug)!;
        return lesson is not null;
    }

    public bool TryFindExercise(string id, out Lesson lesson, out Exercise exercise)
    {
        foreach (Lesson candidate in Lessons)
        {
            if (candidate.Exercises.FirstOrDefault(e => e.Id == id) is { } found)
            {
                (lesson, exercise) = (candidate, found);
                return true;
            }
        }

        (lesson, exercise) = (null!, null!);
        return false;
    }
}

/// <summary>Gives the current course; the implementation watches the folder.</summary>
public interface ICourseSource
{
    Course Current { get; }
}

/// <summary>An error in a lesson file, for its author. Line and column count from 1.</summary>
public sealed record AuthorError(string File, int Line, int Column, string Text)
{
    /// <summary>The lesson in whose reading it was met: the same file, or one that uses it.</summary>
    public string Lesson { get; init; } = "";

    /// <summary>The line it stands on, as written; null where that is not at hand.</summary>
    public string? Source { get; init; }

    /// <summary>The file is shown as it now stands, this and all; else its last good version is.</summary>
    public bool IsShown { get; init; }

    public override string ToString() => $"{File}:{Line}:{Column}: {Text}";
}

public sealed record Lesson
{
    /// <summary>The file name without its number and ending: "mass-center" of 01-mass-center.md.</summary>
    public required string Slug { get; init; }

    public required int Number { get; init; }

    public required string Title { get; init; }

    public required string Summary { get; init; }

    public required ImmutableArray<string> Concepts { get; init; }

    public required int Minutes { get; init; }

    public int? Evening { get; init; }

    /// <summary>Words the lesson brings in, with what they mean.</summary>
    public ImmutableArray<GlossaryTerm> Glossary { get; init; } = [];

    /// <summary>What the prose states of flies, which check-lessons holds against the engine.</summary>
    public ImmutableArray<LessonClaim> Figures { get; init; } = [];

    /// <summary>Addresses the lesson points to, for finding dead ones.</summary>
    public ImmutableArray<LessonLink> Links { get; init; } = [];

    /// <summary>The file it was read from, inside the lessons folder.</summary>
    public string File { get; init; } = "";

    /// <summary>Prose, drawings and exercises in the order of the page.</summary>
    public required ImmutableArray<LessonBlock> Blocks { get; init; }

    public IEnumerable<Exercise> Exercises => Blocks.OfType<ExerciseBlock>().Select(b => b.Exercise);
}

/// <param name="Line">Where the lesson's file defines it.</param>
public sealed record GlossaryTerm(string Term, string Meaning, int Line, int Column);

/// <summary>Something a lesson says of a fly.</summary>
/// <param name="Line">Where its front matter lists it.</param>
public abstract record LessonClaim(string RecipeText, int Line, int Column);

/// <param name="Said">As the prose has it: "5.9 mm".</param>
public sealed record StatedFigure(string RecipeText, string Quantity, string Said, int Line, int Column) : LessonClaim(RecipeText, Line, Column);

/// <summary>Something said in words: "pitch while sinking &lt; 0°" for "it dives".</summary>
public sealed record StatedFact(string RecipeText, string Words, Condition Condition, int Line, int Column) : LessonClaim(RecipeText, Line, Column);

public sealed record LessonLink(string Address, bool IsImage, int Line, int Column);

public abstract record LessonBlock;

/// <summary>Sanitized HTML, safe to write out as it is.</summary>
public sealed record ProseBlock(string Html) : LessonBlock
{
    /// <summary>The same for a page: the first use of each word of the glossary links to its meaning.</summary>
    public string Shown { get; init; } = Html;
}

/// <summary>A drawing of a recipe: the page asks the drawing library for it.</summary>
/// <param name="View">One of <see cref="FlyViews.All"/>.</param>
/// <param name="Caption">Plain text, may be empty.</param>
/// <param name="Arguments">What else the fence says, as "state" = "fresh".</param>
public sealed record FlyBlock(string RecipeText, string View, string Caption, ImmutableDictionary<string, string> Arguments) : LessonBlock
{
    /// <summary>On a phone it waits behind its caption.</summary>
    public bool Folded { get; init; }
}

/// <summary>A picture that explains one idea: the page asks the drawing library for it.</summary>
/// <param name="Kind">One of <see cref="FigureKinds.All"/>.</param>
/// <param name="Values">What else the kind takes, by key, as written.</param>
/// <param name="Labels">Words beside places or parts, in the author's order; empty for the usual ones.</param>
/// <param name="Caption">Plain text, may be empty.</param>
/// <param name="Line">Where the fence stands in the lesson's file.</param>
public sealed record FigureBlock(string Kind, ImmutableArray<FigureRecipe> Flies, ImmutableDictionary<string, string> Values,
    ImmutableArray<(string Place, string Words)> Labels, string Caption, int Line) : LessonBlock
{
    /// <summary>On a phone it waits behind its caption.</summary>
    public bool Folded { get; init; }
}

/// <param name="Called">Its name in the figure; empty where it stands alone.</param>
public sealed record FigureRecipe(string Called, string Text);

public sealed record ExerciseBlock(Exercise Exercise) : LessonBlock;

/// <summary>A door to practice of one concept.</summary>
public sealed record PracticeBlock(Practice.PracticeSet Practice) : LessonBlock;
