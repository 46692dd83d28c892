using TyingClass.Drawing;
using TyingClass.Lessons.Courses;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.CommandLine;

/// <summary>Draws every teaching figure of a course: a fly may be good and yet have no hinge line, or no curve, to draw.</summary>
internal static class FigureDrawer
{
    public static IEnumerable<AuthorError> Check(Course course)
    {
        foreach (Lesson lesson in course.Lessons)
        {
            foreach (FigureBlock figure in lesson.Blocks.OfType<FigureBlock>())
            {
                if (Complaint(figure) is { } text) yield return new AuthorError(lesson.File, figure.Line, 1, text);
            }
        }
    }

    private static string? Complaint(FigureBlock figure)
    {
        try
        {
            TeachingFigures.Draw(
                new FigureRequest(figure.Kind, [.. figure.Flies.Select(f =>
                    new FigureFly(f.Called, SolvedFly.Solve(RecipeParser.Parse(f.Text).Value!)))], figure.Values,
                    figure.Labels), DrawingOptions.Default);
            return null;
        }
        catch (ArgumentException error)
        {
            return $"This figure cannot be drawn: {error.Message} Show another fly, or another kind of figure.";
        }
    }
}
