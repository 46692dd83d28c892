using System.Collections.Frozen;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;

namespace TyingClass.Web.Pictures;

internal delegate string Plate(SolvedFly fly, DrawingOptions options);

/// <summary>The views a lesson may ask for, by the words it asks with.</summary>
internal static class Plates
{
    public const string Vise = "vise";

    /// <summary>To read off what is asked of a retrieve.</summary>
    public const string LastRound = "last round";

    private static readonly FrozenDictionary<string, Plate> ByName = new Dictionary<string, Plate>(StringComparer.OrdinalIgnoreCase)
    {
        ["side"] = FlyDrawing.Side,
        [Vise] = FlyDrawing.Vise,
        ["front"] = FlyDrawing.Front,
        ["hang"] = FlyDrawing.Hang,
        ["pitch"] = Curves.PitchAgainstSpeed,
        ["keel height"] = Curves.KeelHeightAgainstSpeed,
        ["righting"] = Curves.Righting,
        ["depth"] = Curves.DepthInPause,
        ["film"] = FlyDrawing.Film,
        ["retrieve"] = Curves.Retrieve,
        [LastRound] = Curves.LastRound,
        ["lean"] = Curves.LeanHistogram,
        ["ledger"] = Curves.Ledger,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Views of one attitude: a tenth of the full report draws them.</summary>
    private static readonly FrozenSet<string> OfOneAttitude =
        FrozenSet.Create(StringComparer.OrdinalIgnoreCase, "side", Vise, "front", "hang", "film", "retrieve", LastRound);

    public static bool NeedsAttitudeOnly(string view) => OfOneAttitude.Contains(view);

    public static IEnumerable<string> Views => ByName.Keys;

    public static Plate? Find(string view) => ByName.GetValueOrDefault(view);
}
