using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Storage.BenchLog;

namespace TyingClass.Web.Demo;

/// <summary>One fly in the tub.</summary>
/// <param name="Fly">As in <see cref="DemoPatterns"/>.</param>
/// <param name="Revision">Which of the pattern's.</param>
/// <param name="Way">What was seen where it was not what is computed; null for the computed.</param>
internal sealed record DemoDrop(
    string By, string Fly, int Revision, double DaysAgo, string Note, SeenWay? Way = null, WetState State = WetState.Soaked, double DepthM = 0.6,
    double? WaterC = null,
    bool Weighed = true, bool Hung = true, bool Timed = true);

/// <summary>
/// Two evenings at the tub and some bathtubs at home. What hands and a stopwatch are off by is drawn from a seed; where a tub disagrees with the model it is
/// written here.
/// </summary>
internal static class DemoDrops
{
    public static ImmutableArray<DemoDrop> All { get; } =
    [
        new("Wren", "duckweed-newt", 1, 32.5, "Five drops: two on the side, three point up.", SeenWay.NoClearWay),
        new("Wren", "duckweed-newt", 2, 26, "Point up every time."),
        new("Wren", "duckweed-newt", 3, 19, ""),
        new("Wren", "duckweed-newt", 3, 18.9, "The same fly before it had soaked.", State: WetState.Fresh, Weighed: false, Hung: false),
        new("Wren", "lantern-bleak", 1, 11.5, "", WaterC: 14),
        new("Sedge", "mill-candle", 1, 28, "Kitchen scale reads to 0.01 g."),
        new("Sedge", "mill-candle", 2, 23.5, "Falls level.", WaterC: 11),
        new("Hazel", "tallow-shrimp", 1, 24, "Turned over on the second pull."),
        new("Hazel", "tallow-shrimp", 2, 20.5, ""),
        new("Hazel", "tallow-shrimp", 3, 14.9, "", DepthM: 0.9),
        new("Larch", "quarry-gudgeon", 1, 9.7, ""),
        new("Juniper", "bramble-smelt", 1, 12, "Lay over a little, but always the same way: the hackle leans to one side.", SeenWay.OnItsSide),
        new("Juniper", "bramble-smelt", 2, 9.3, "Point down, if I am honest.", SeenWay.PointDown),
        new("Teasel", "cold-lamprey", 1, 16, "Leans over at slow pulls. One eye sits lower than the other.", SeenWay.OnItsSide, DepthM: 0.9),
        new("Teasel", "cold-lamprey", 2, 2.25, "", DepthM: 0.9),
        new("Bryony", "ferry-perchling", 1, 15, "", WaterC: 15),
        new("Bryony", "ferry-perchling", 2, 6, "Head came out lopsided: I turned it too late.", SeenWay.PointDown),
        new("Rowan", "rush-frog", 2, 0.35, "Turns over as soon as it goes under.", Weighed: false),
        // Flies of the pattern book, tied by others from its cards.
        new("Tansy", "duckweed-newt", 3, 10, "From Wren’s card. My strip is longer.", DepthM: 0.9),
        new("Moss", "duckweed-newt", 3, 9.8, "From the card. Eyes glued askew.", SeenWay.OnItsSide, Hung: false),
        new("Fern", "mill-candle", 2, 8, "From Sedge’s card."),
        new("Clover", "tallow-shrimp", 3, 5, "", WaterC: 16, Hung: false),
    ];
}
