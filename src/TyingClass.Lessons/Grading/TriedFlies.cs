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
    private readonly Dictionary<string, FlyFigures> _flies = [];
    private readonly Dictionary<(string Fly, ReportOptions Options), FlyFigures> _sampled = [];
    private readonly Dictionary<string, bool> _allowed = [];
    private FlyFigures? _start;

    public Recipe? Given => _given;

    public FlyFigures Of(Recipe recipe) => Of(RecipeWriter.Write(recipe), recipe);

    public FlyFigures Of(Recipe recipe, ReportOptions options)
    {
        (string Fly, ReportOptions) key = (RecipeWriter.Write(recipe), options);
        if (!_sampled.TryGetValue(key, out FlyFigures? fly)) _sampled[key] = fly = Of(key.Fly, recipe).Sampled(options);
        return fly;
    }

    /// <summary>Whether the exercise lets the student answer it. What is proposed must also be a recipe that the student can type.</summary>
    public bool IsAllowed(Recipe recipe)
    {
        string text = RecipeWriter.Write(recipe);
        if (!_allowed.TryGetValue(text, out bool allowed))
            _allowed[text] = allowed = RecipeGrader.Violations(exercise, _given, recipe).IsEmpty && RecipeParser.Parse(text).Success;
        return allowed;
    }

    private FlyFigures Of(string text, Recipe recipe)
    {
        if (!_flies.TryGetValue(text, out FlyFigures? fly)) _flies[text] = fly = new FlyFigures(recipe, Start());
        return fly;
    }

    private FlyFigures? Start() => _start ??= _given is null ? null : new FlyFigures(_given);
}
