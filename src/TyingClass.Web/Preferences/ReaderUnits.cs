using TyingClass.Recipes.Text;

namespace TyingClass.Web.Preferences;

/// <summary>The units this visitor reads sentences in.</summary>
public sealed class ReaderUnits(IHttpContextAccessor accessor)
{
    public UnitSystem Now =>
        accessor.HttpContext is { } http && Look.Of(http.Request).Units.ToString() == nameof(UnitSystem.Imperial) ? UnitSystem.Imperial : UnitSystem.Metric;
}
