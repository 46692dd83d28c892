using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>
/// The flies that were tried for one hint, each with the figures already worked out of it. One search after another asks about the same flies: for every goal,
/// then goal by goal, and with a small sample before a large one. Not safe for threads.
/// </summary>
internal sealed class TriedFlies(Exercise exercise)
{
    private readonly Recipe? _given = exercise.RecipeText is { } text ? RecipeParser.Parse(text).Value : null;
    private readonly Dictionary<string, FlyFigures?> _flies = [];
    private readonly Dictionary<(string Fly, ReportOptions Options), FlyFigures?> _sampled = [];
    private readonly Dictionary<string, bool> _allowed = [];
    private FlyFigures? _start;

    public Recipe? Given => _given;

    /// <summary>A fly that can be built.</summary>
    public FlyFigures Of(Recipe recipe) => Of(RecipeWriter.Write(recipe), recipe) ?? new FlyFigures(recipe, Start());

    /// <summary>Whether the exercise lets the student answer it.</summary>
    public bool IsAllowed(Recipe recipe)
    {
        string text = RecipeWriter.Write(recipe);
        if (!_allowed.TryGetValue(text, out bool allowed)) _allowed[text] = allowed = RecipeGrader.Violations(exercise, _given, recipe).IsEmpty;
        return allowed;
    }

    /// <summary>Whether it meets the goals and is a recipe that the student can type, which is asked of few: to read costs more than to solve.</summary>
    public bool Reaches(IReadOnlyCollection<Goal> goals, Recipe recipe, ReportOptions options)
    {
        string text = RecipeWriter.Write(recipe);
        if (!_sampled.TryGetValue((text, options), out FlyFigures? fly)) _sampled[(text, options)] = fly = Of(text, recipe)?.Sampled(options);
        return fly is not null && GoalCheck.AllMet(goals, fly) && RecipeParser.Parse(text).Success;
    }

    private FlyFigures? Of(string text, Recipe recipe)
    {
        if (!_flies.TryGetValue(text, out FlyFigures? fly)) _flies[text] = fly = FlyFigures.TryBuild(recipe, Start());
        return fly;
    }

    private FlyFigures? Start() => _start ??= _given is null ? null : new FlyFigures(_given);
}
