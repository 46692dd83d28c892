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

    /// <summary>Tying notes, in the order they are followed.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

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

/// <summary>
/// The evening as screens: one for each row of the plan, and behind it what the row needs, such as cautions, questions or flies to tie. A plan without rows
/// goes by its lessons.
/// </summary>
public static class EveningSteps
{
    public static ImmutableArray<EveningStep> Of(EveningView evening)
    {
        ArgumentNullException.ThrowIfNull(evening);
        ImmutableArray<PlanRow> rows = PlanRow.Of(evening.ShownPlan);
        return [Welcome(evening), .. rows.IsEmpty ? ByLesson(evening) : ByRow(evening, rows), Home(evening)];
    }

    private static IEnumerable<EveningStep> ByLesson(EveningView evening) =>
        [.. CautionSteps(evening), .. evening.Lessons.SelectMany(l => LessonSteps(l, l.Exercises)), .. evening.Tied.SelectMany(Tying)];

    private static IEnumerable<EveningStep> ByRow(EveningView evening, ImmutableArray<PlanRow> rows)
    {
        PlanRow? cautions = rows.FirstOrDefault(r => r.Says("caution")), tied = rows.FirstOrDefault(r => r.Says("tying", "ties"));
        PlanRow? tub = tied is null ? null : rows.SkipWhile(r => r != tied).Skip(1).FirstOrDefault(r => r.Says("tub", "tow", "jar", "drop")) ?? tied;
        ILookup<PlanRow, Exercise> asked = RowsOf(evening, rows, tied);
        if (cautions is null) foreach (EveningStep step in CautionSteps(evening)) yield return step;
        foreach (PlanRow row in rows)
        {
            yield return new EveningStep($"{row.Minutes} minutes", row.Title) { Text = row.What == row.Title ? null : row.What };
            IEnumerable<EveningStep> behind =
            [
                .. row == cautions ? CautionSteps(evening) : [],
                .. row.Says("the words of") ? evening.Lessons.SelectMany(Words) : [],
                .. evening.Lessons.SelectMany(l => LessonSteps(l, l.Exercises.Where(asked[row].Contains))),
                .. row == tied ? evening.Tied.Select(AtTheVise) : [],
                .. row == tub ? evening.Tied.Select(AfterTheTub) : [],
            ];
            foreach (EveningStep step in behind) yield return step;
        }
    }

    // A question stands behind the row that names it; another behind a row that takes a vote; what is left, behind the last vote before the tying.
    private static ILookup<PlanRow, Exercise> RowsOf(EveningView evening, ImmutableArray<PlanRow> rows, PlanRow? tied)
    {
        List<PlanRow> votes = [.. rows.Where(r => r.Says("vote", "bet", "bets"))];
        Queue<PlanRow> free = new(votes);
        PlanRow last = votes.LastOrDefault() ?? rows.TakeWhile(r => r != tied).LastOrDefault() ?? rows[0];
        return evening.WallQuestions
            .Select(q => (Question: q, Row: rows.FirstOrDefault(r => r.What.Contains(q.Title, StringComparison.OrdinalIgnoreCase))))
            .OrderBy(q => q.Row is null)
            .Select(q => (q.Question, Row: q.Row ?? (free.TryDequeue(out PlanRow? vote) ? vote : last)))
            .ToLookup(q => q.Row, q => q.Question);
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

    // Before its questions the lesson's name.
    private static IEnumerable<EveningStep> LessonSteps(Lesson lesson, IEnumerable<Exercise> exercises)
    {
        bool named = false;
        foreach (Exercise question in exercises)
        {
            if (question.Kind is not IPutToRoom kind) continue;
            if (!named) yield return new EveningStep($"Lesson {lesson.Number}", lesson.Title) { Text = lesson.Summary };
            named = true;
            yield return new EveningStep("Say first, then look", question.Title)
            {
                Html = question.PromptHtml,
                CardRecipes = [.. AskedRecipes.Of(question)],
                Items = kind.RoomChoices(question),
                AskExercise = question.Id
            };
        }
    }

    // So many are read from the back of a room.
    private const int WordsOnAScreen = 10;

    private static IEnumerable<EveningStep> Words(Lesson lesson)
    {
        int screens = (lesson.Glossary.Length + WordsOnAScreen - 1) / WordsOnAScreen;
        // Shared out evenly: no last screen with a single word.
        return lesson.Glossary.Select((g, i) => (Line: $"{g.Term}: {g.Meaning}", Screen: i * screens / lesson.Glossary.Length))
            .GroupBy(g => g.Screen, g => g.Line)
            .Select(g => new EveningStep($"Lesson {lesson.Number}", screens == 1 ? "Words" : $"Words, {g.Key + 1} of {screens}") { Items = [.. g] });
    }

    private static IEnumerable<EveningStep> Tying(EveningFly fly) => [AtTheVise(fly), AfterTheTub(fly)];

    private static EveningStep AtTheVise(EveningFly fly) =>
        new("At the vise", fly.Name) { CardRecipes = [fly.RecipeText], Text = fly.EachInWords, Steps = fly.Recipe.Steps };

    private static EveningStep AfterTheTub(EveningFly fly) =>
        new("After the tub", fly.Name) { DrawnRecipe = fly.RecipeText, Text = "What the engine says it does. What did yours do?" };

    private static EveningStep Home(EveningView evening) => new("Until next time", "At home")
    {
        Text = evening.Course is { Home.Length: > 0 } course ? course.Home : null,
        Items = [.. AtHome(evening, evening.FirstAtHome, evening.SaysWhatIsFirst ? "First, lesson" : "Lesson"),
            .. AtHome(evening, evening.ThenAtHome, "Then, if time, lesson")],
    };

    private static IEnumerable<string> AtHome(EveningView evening, IEnumerable<(Lesson Lesson, Exercise Exercise)> those, string of) =>
        those.GroupBy(e => (e.Lesson, evening.Windows.Of(e.Lesson, e.Exercise).DueAt))
            .Select(g => $"{of} {g.Key.Lesson.Number}: {string.Join("; ", g.Select(e => e.Exercise.Title))}"
                + (g.Key.DueAt is { } due ? $". By {evening.Windows.Clock.Say(due)}" : ""));
}
