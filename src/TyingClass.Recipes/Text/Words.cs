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

    public static readonly Choices<LeaderMaterial> Leaders = Table(("nylon", LeaderMaterial.Nylon), ("fluorocarbon", LeaderMaterial.Fluorocarbon));

    public static readonly Choices<Knot> Knots = Table(("loop", Knot.Loop), ("cinched", Knot.Cinched));

    public static readonly Choices<WaterKind> Waters = Table(("fresh", WaterKind.Fresh), ("sea", WaterKind.Sea));

    private static Choices<T> Table<T>(params (string Word, T Value)[] words)
        where T : struct => new([.. words]);
}
