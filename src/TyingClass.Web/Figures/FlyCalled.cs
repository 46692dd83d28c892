using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Figures;

/// <summary>
/// What a fly is called for whoever reads the page. A name that the course gave is prose, its figures with it; a name of a reader's own stays as it is, also
/// where the course happens to use the same.
/// </summary>
public sealed class FlyCalled(ICourseSource course, ReaderUnits units, IHttpContextAccessor accessor)
{
    // Here every fly is somebody's own, named by whoever tied it.
    private static readonly ImmutableArray<PathString> OfTheirOwn = ["/patterns", "/pattern-book", "/reviews", "/bench", "/bench-log"];

    private FrozenSet<string>? _names;

    /// <summary>True where no fly on the page was named by the course.</summary>
    public bool AreTheirs => units.Now == UnitSystem.Imperial && Names.Count == 0;

    private FrozenSet<string> Names => _names ??= OnThisPage();

    /// <summary>"Wraps at 0.276 in (7 mm)".</summary>
    public string Say(string name) => units.Now == UnitSystem.Imperial && Names.Contains(name) ? WrittenFigures.Beside(name, UnitSystem.Imperial) : name;

    /// <summary>The same fly under that name, for a picture.</summary>
    public SolvedFly Named(SolvedFly fly)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return Say(fly.Recipe.Name) is var name && name == fly.Recipe.Name ? fly : fly with { Recipe = fly.Recipe with { Name = name } };
    }

    private FrozenSet<string> OnThisPage()
    {
        if (accessor.HttpContext is not { } http) return FlyNames.Of(course.Current);
        if (OfTheirOwn.Any(at => http.Request.Path.StartsWithSegments(at))) return [];
        // Who answers an exercise that gives no fly ties one of their own.
        object? id = http.Request.RouteValues.GetValueOrDefault("exerciseId") ?? http.Request.RouteValues.GetValueOrDefault("id");
        return id is string known && course.Current.TryFindExercise(known, out _, out Exercise exercise) ? FlyNames.Of(exercise) : FlyNames.Of(course.Current);
    }
}
