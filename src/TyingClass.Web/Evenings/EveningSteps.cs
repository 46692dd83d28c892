using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Catalogue;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Evenings;

/// <summary>One screen on the wall.</summary>
/// <param name="Tab">What kind of screen it is, in a word or two.</param>
public sealed record EveningStep(string Tab, string Title)
{
    public string? Text { get; init; }

    public ImmutableArray<string> Items { get; init; } = [];

    /// <summary>Sanitized.</summary>
    public string? Html { get; init; }

    /// <summary>Drawn as it swims.</summary>
    public string? DrawnRecipe { get; init; }

    /// <summary>Shown at the vise, with their recipes: in the water they would give the answer away.</summary>
    public ImmutableArray<string> CardRecipes { get; init; } = [];

    /// <summary>The class code, for whoever has not joined yet: on the first screen.</summary>
    public string? JoinCode { get; init; }

    /// <summary>The exercise that can be put to the room from here.</summary>
    public string? AskExercise { get; init; }
}

/// <summary>The evening as screens, in the order it runs: cautions, each lesson with its questions, the flies to tie, what is left for home.</summary>
public static class EveningSteps
{
    public static ImmutableArray<EveningStep> Of(EveningView evening)
    {
        ArgumentNullException.ThrowIfNull(evening);
        return
        [
            Welcome(evening),
            .. CautionSteps(evening),
            .. evening.Lessons.SelectMany(LessonSteps),
            .. evening.Tied.SelectMany(Tying),
            Home(evening),
        ];
    }

    private static EveningStep Welcome(EveningView evening) => new($"Evening {evening.Number}", evening.Room.Name)
    {
        Items = [.. evening.Lessons.Select(l => $"{l.Number}. {l.Title}")],
        JoinCode = evening.Room.Code,
    };

    private static IEnumerable<EveningStep> CautionSteps(EveningView evening)
    {
        string[] cautions = [.. evening.Tied.Concat(evening.Shown).SelectMany(f => Cautions.For(f.Recipe)).DistinctBy(c => c.Code).Select(c => c.Text)];
        if (cautions.Length > 0) yield return new EveningStep("Before we begin", "Take care") { Items = [.. cautions] };
    }

    private static IEnumerable<EveningStep> LessonSteps(Lesson lesson)
    {
        yield return new EveningStep($"Lesson {lesson.Number}", lesson.Title) { Text = lesson.Summary };
        foreach (Exercise question in lesson.Exercises)
        {
            if (question.Kind is not IPutToRoom kind) continue;
            yield return new EveningStep("Say first, then look", question.Title)
            {
                Html = question.PromptHtml,
                CardRecipes = [.. AskedRecipes.Of(question)],
                Items = kind.RoomChoices(question),
                AskExercise = question.Id
            };
        }

        if (!lesson.Glossary.IsEmpty)
            yield return new EveningStep($"Lesson {lesson.Number}", "Words") { Items = [.. lesson.Glossary.Select(g => $"{g.Term}: {g.Meaning}")] };
    }

    private static IEnumerable<EveningStep> Tying(EveningFly fly)
    {
        yield return new EveningStep("At the vise", fly.Name) { CardRecipes = [fly.RecipeText], Text = fly.EachInWords };
        yield return new EveningStep("After the tub", fly.Name) { DrawnRecipe = fly.RecipeText, Text = "What the engine says it does. What did yours do?" };
    }

    private static EveningStep Home(EveningView evening) => new("Until next time", "At home")
    {
        Items = [.. evening.Lessons.SelectMany(l => l.Exercises.Select(e => (Lesson: l, Exercise: e)))
            .GroupBy(e => (e.Lesson, evening.Windows.Of(e.Lesson, e.Exercise).DueAt))
            .Select(g =>
            $"Lesson {g.Key.Lesson.Number}: {string.Join(", ", g.GroupBy(e => e.Exercise.Kind).Select(k => $"{k.Key.Name.ToLowerInvariant()} {k.Count()}"))}"
                + (g.Key.DueAt is { } due ? $", by {evening.Windows.Clock.Say(due)}" : ""))],
    };
}
