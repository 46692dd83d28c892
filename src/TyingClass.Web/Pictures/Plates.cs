using System.Collections.Frozen;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;

namespace TyingClass.Web.Pictures;

internal delegate string Plate(SolvedFly fly, DrawingOptions options);

/// <summary>The views a lesson may ask for, by the words it asks with.</summary>
internal static class Plates
{
    private static readonly FrozenDictionary<string, Plate> ByName = new Dictionary<string, Plate>(StringComparer.OrdinalIgnoreCase)
    {
        ["side"] = FlyDrawing.Side,
        ["pitch"] = (fly, options) => Curves.PitchAgainstSpeed(fly.Recipe.Name, fly.Report, options),
        ["keel height"] = (fly, options) => Curves.KeelHeightAgainstSpeed(fly.Recipe.Name, fly.Report, options),
        ["righting"] = (fly, options) => Curves.Righting(fly.Recipe.Name, fly.Report, options),
        ["depth"] = (fly, options) => Curves.DepthInPause(fly.Recipe.Name, fly.Report, options),
        ["lean"] = (fly, options) => Curves.LeanHistogram(fly.Recipe.Name, fly.Report, options),
        ["ledger"] = (fly, options) => Curves.Ledger(fly.Recipe.Name, fly.Report, options),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    public static Plate? Find(string view) => ByName.GetValueOrDefault(view);
}
