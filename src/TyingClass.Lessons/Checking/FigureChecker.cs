using System.Text.RegularExpressions;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>Holds what a lesson states against the engine, figures to the last digit stated, and makes sure that the prose does state them.</summary>
internal static partial class FigureChecker
{
    public static IEnumerable<AuthorError> Check(Lesson lesson)
    {
        if (lesson.Figures.IsEmpty) yield break;
        string prose = Flat(string.Join(' ', lesson.Blocks.Select(b => b switch
        {
            ProseBlock p => ReadingTime.Text(p.Html),
            ExerciseBlock e => ReadingTime.Text(e.Exercise.PromptHtml),
            FlyBlock f => f.Caption,
            FigureBlock f => f.Caption,
            _ => "",
        })));
        Dictionary<string, FlyFigures> flies = [];
        foreach (LessonClaim stated in lesson.Figures)
        {
            if (!flies.TryGetValue(stated.RecipeText, out FlyFigures? fly)) flies[stated.RecipeText] = fly = new FlyFigures(GivenFly.Of(stated.RecipeText));
            string? complaint = stated switch
            {
                StatedFigure figure => Complaint(figure, fly, prose),
                StatedFact fact =>
                    fact.Condition.Holds(new ConditionFacts(fly, null)) ? null : $"{fly.Recipe.Name}: the engine does not find that {fact.Words}.",
                _ => null,
            };
            if (complaint is not null) yield return new AuthorError(lesson.File, stated.Line, stated.Column, complaint);
        }
    }

    private static string? Complaint(StatedFigure figure, FlyFigures fly, string prose)
    {
        if (!QuantityQuery.TryParse(figure.Quantity, out QuantityQuery query, out string error)
            || !GoalReader.TryRead(query.Quantity, figure.Said, out double said, out error)) return error;
        if (!prose.Contains(Flat(figure.Said), StringComparison.Ordinal))
            return $"The lesson's text nowhere says “{figure.Said}”. Take the figure out of this list, or say it.";
        if (query.Of(fly) is not { } found) return $"The engine has no {query.Name} for {fly.Recipe.Name}.";
        return Math.Abs(found - said) <= HalfLastDigit(figure.Said, query)
            ? null
            : $"{fly.Recipe.Name}: the engine "
            + $"finds {(query.Quantity.Dimension is { } d ? Units.Write(found, d, 5) : query.Say(found, UnitSystem.Metric))} "
            + $"for {query.Name}, not {figure.Said}.";
    }

    // "5.9 mm" stands for 5.85 mm to 5.95 mm: half a step of its last digit, in its own unit.
    private static double HalfLastDigit(string said, QuantityQuery query)
    {
        Match number = Number().Match(said);
        int decimals = number.Groups["decimals"].Length;
        string one = decimals == 0 ? "1" : "0." + new string('0', decimals - 1) + "1";
        return GoalReader.TryRead(query.Quantity, one + said[(number.Index + number.Length)..], out double si, out _) ? 0.5000001 * si : 0;
    }

    private static string Flat(string text) => Space().Replace(text.Replace('−', '-'), " ");

    [GeneratedRegex(@"[0-9]+(?:\.(?<decimals>[0-9]+))?")]
    private static partial Regex Number();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
