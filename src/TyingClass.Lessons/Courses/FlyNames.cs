using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Courses;

/// <summary>The names of the course's own flies. What its author called "Wraps at 7 mm" is prose; what a student called a fly is the student's.</summary>
public static class FlyNames
{
    private static readonly ConditionalWeakTable<Course, FrozenSet<string>> Kept = [];

    /// <summary>Every name that a fly of this course carries, in a drawing, a question or a set of practice.</summary>
    public static FrozenSet<string> Of(Course course) => Kept.GetValue(course, c =>
        In(c.Lessons.SelectMany(l => l.Blocks).SelectMany(Texts)));

    /// <summary>Those of the flies that one exercise gives; empty where the answer is a fly of the student's own.</summary>
    public static FrozenSet<string> Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return In(Texts(exercise));
    }

    private static FrozenSet<string> In(IEnumerable<string> texts) =>
        texts.Distinct().Select(text => RecipeDraft.Parse(text).Value?.Get("recipe")).OfType<string>().ToFrozenSet(StringComparer.Ordinal);

    private static IEnumerable<string> Texts(LessonBlock block) => block switch
    {
        FlyBlock fly => [fly.RecipeText],
        FigureBlock figure => figure.Flies.Select(f => f.Text),
        ExerciseBlock { Exercise: var exercise } => Texts(exercise),
        PracticeBlock practice => Texts(practice.Practice.Template),
        _ => [],
    };

    private static IEnumerable<string> Texts(Exercise exercise) =>
        new[] { exercise.RecipeText, exercise.Task.ChangedRecipe }.OfType<string>().Concat(exercise.Task.OtherRecipes);
}
