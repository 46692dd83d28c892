using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Patterns;

/// <summary>Changes between revisions as sentences.</summary>
public static class RevisionWords
{
    public static string Say(RecipeChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return change switch
        {
            { IsWholePart: true, After: null } => "taken out",
            { IsWholePart: true, Before: null } => "put in",
            { Before: null } => $"{change.Said}: now {change.After}, before left open",
            { After: null } => $"{change.Said}: was {change.Before}, now left open",
            _ => $"{change.Said}: {change.Before} → {change.After}",
        };
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
