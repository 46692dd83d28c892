using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Patterns;

/// <summary>Changes between revisions as sentences.</summary>
public static class RevisionWords
{
    public static string Say(RecipeChange change, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(change);
        return ChangeWords.Line(change.Said, change.Before, change.After, change.IsWholePart, units);
    }

    /// <summary>For a figure that one of the two flies does not have.</summary>
    public static string Missing(FigureDifference figure, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return figure switch
        {
            { BeforeSi: null, AfterSi: null } => "not defined",
            { BeforeSi: null } => $"{figure.After(units)}, before not defined",
            _ => $"was {figure.Before(units)}, now not defined",
        };
    }
}
