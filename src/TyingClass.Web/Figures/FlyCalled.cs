using TyingClass.Lessons.Courses;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Figures;

/// <summary>
/// What a fly is called for whoever reads the page. A name that the course gave is prose, its figures with it; a name of a reader's own stays as it is.
/// </summary>
public sealed class FlyCalled(ICourseSource course, ReaderUnits units)
{
    /// <summary>"Wraps at 0.276 in (7 mm)".</summary>
    public string Say(string name) => units.Now == UnitSystem.Imperial && FlyNames.Of(course.Current).Contains(name)
        ? WrittenFigures.Beside(name, UnitSystem.Imperial)
        : name;

    /// <summary>The same fly under that name, for a picture.</summary>
    public SolvedFly Named(SolvedFly fly)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return Say(fly.Recipe.Name) is var name && name == fly.Recipe.Name ? fly : fly with { Recipe = fly.Recipe with { Name = name } };
    }
}
