using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Text;

/// <summary>The words a recipe uses for each choice, both ways.</summary>
internal static class Words
{
    public static readonly Choices<Intent> Intents = Table(("point up", Intent.PointUp), ("point down", Intent.PointDown));

    public static readonly Choices<EyeKind> Eyes = Table(("straight", EyeKind.Straight), ("up", EyeKind.Up), ("down", EyeKind.Down), ("jig", EyeKind.Jig));

    public static readonly Choices<BendKind> Bends = Table(("round", BendKind.Round), ("long", BendKind.Long), ("square", BendKind.Square));

    public static readonly Choices<PartKind> Parts = new([.. KindsOfPart.All.Select(k => (k.Word, k.Kind))]);

    public static readonly Choices<Side> Sides = Table(("top", Side.Top), ("under", Side.Under), ("around", Side.Around));

    public static readonly Choices<Side> AllSides = Table(("top", Side.Top), ("under", Side.Under), ("around", Side.Around), ("beside", Side.Beside));

    public static readonly Choices<TieDown> Ties = Table(("front", TieDown.Front), ("both ends", TieDown.BothEnds));

    public static readonly Choices<LeaderMaterial> Leaders = new(
        [("nylon", LeaderMaterial.Nylon), ("fluorocarbon", LeaderMaterial.Fluorocarbon)],
        ("mono", LeaderMaterial.Nylon), ("monofilament", LeaderMaterial.Nylon), ("fluoro", LeaderMaterial.Fluorocarbon));

    // A clinch, improved or not, is drawn down on the eye; a loop leaves it free to turn. Common practice, no source.
    public static readonly Choices<Knot> Knots = new(
        [("loop", Knot.Loop), ("cinched", Knot.Cinched)],
        ("loop knot", Knot.Loop), ("open loop", Knot.Loop), ("non-slip loop", Knot.Loop), ("clinch", Knot.Cinched), ("clinch knot", Knot.Cinched),
        ("improved clinch", Knot.Cinched), ("improved clinch knot", Knot.Cinched), ("cinched knot", Knot.Cinched), ("cinch", Knot.Cinched));

    public static readonly Choices<WaterKind> Waters = Table(("fresh", WaterKind.Fresh), ("sea", WaterKind.Sea));

    private static Choices<T> Table<T>(params (string Word, T Value)[] words)
        where T : struct => new([.. words]);
}
