using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>Ties the flies of the families: every part in proportion to its hook, as a tyer would set it out, places in shanks behind the eye.</summary>
internal static class Bench
{
    public const double Mm = 1e-3;
    public const double Degree = Math.PI / 180;

    /// <param name="size">Generic scale; 0 is 1/0, -1 is 2/0.</param>
    /// <param name="shank">+4 is 4XL.</param>
    /// <param name="wire">+1 is 1XH, -2 is 2XF.</param>
    public static HookSpec Hook(int size, EyeKind eye = EyeKind.Straight, int shank = 0, int wire = 0, double? eyeDeg = null) => new()
    {
        Size = new HookSize(size),
        ShankSteps = shank,
        WireSteps = wire,
        Eye = eye,
        EyeAngleRad = eyeDeg * Degree,
    };

    public static HookSpec WithGape(this HookSpec hook, double factor) => hook with { GapeM = factor * HookScale.Resolve(hook).GapeM };

    public static Recipe Fly(string name, Intent intent, HookSpec hook, double speedMS, params ReadOnlySpan<PartSpec> parts) =>
        new(name, intent, hook, [.. parts], new FishingSpec { SpeedMS = speedMS, Knot = Knot.Loop });

    public static PartSpec Body(HookSpec hook, string material, double from = 0.25, double to = 1) =>
        new(PartKind.Body) { Material = material, AtM = from * Shank(hook), ToM = to * Shank(hook) };

    public static PartSpec Wing(HookSpec hook, string material, Side side, double at = 0.2, double shanks = 1.5) =>
        new(PartKind.Wing) { Material = material, Side = side, AtM = at * Shank(hook), LengthM = shanks * Shank(hook) };

    public static PartSpec Tail(HookSpec hook, string material, double shanks = 1) =>
        new(PartKind.Tail) { Material = material, AtM = Shank(hook), LengthM = shanks * Shank(hook) };

    /// <param name="gapes">Widest diameter of a bead or cone, or of one eye.</param>
    public static PartSpec Bead(HookSpec hook, string material, double gapes) => Weight(PartKind.Bead, hook, material, gapes, 0);

    public static PartSpec Cone(HookSpec hook, string material, double gapes) => Weight(PartKind.Cone, hook, material, gapes, 0);

    public static PartSpec Eyes(HookSpec hook, string material, double gapes, Side side = Side.Top) =>
        Weight(PartKind.DumbbellEyes, hook, material, gapes, 0.1) with { Side = side };

    /// <summary>Close wound, in wire as thick as the hook's own.</summary>
    public static PartSpec Wraps(HookSpec hook, string material, double from, double to) =>
        new(PartKind.Wraps) { Material = material, AtM = from * Shank(hook), ToM = to * Shank(hook) };

    public static double Shank(HookSpec hook) => HookScale.Resolve(hook).ShankM;

    public static double Gape(HookSpec hook) => HookScale.Resolve(hook).GapeM;

    private static PartSpec Weight(PartKind kind, HookSpec hook, string material, double gapes, double at) =>
        new(kind) { Material = material, SizeM = gapes * Gape(hook), AtM = at * Shank(hook) };
}
