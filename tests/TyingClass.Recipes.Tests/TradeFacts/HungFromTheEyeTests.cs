using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>Fact 1 (common practice, no source): hung from its eye, a fly's mass center is plumb under the eye.</summary>
public sealed class HungFromTheEyeTests
{
    private static readonly Lazy<Hung[]> All = new(() => [.. Families.Hung.Select(Hang)]);

    /// <param name="OffPlumbDeg">Angle at the eye between the mass center and the plumb line, in air, once the fly has come to rest.</param>
    /// <param name="ShankDeg">Shank from plumb, in air, as it came to rest.</param>
    /// <param name="WaterDeg">The same in still water, soaked.</param>
    private sealed record Hung(string Name, double OffPlumbDeg, double ShankDeg, double ReportedDeg, double WaterDeg);

    internal static Share Share => Share.Of(All.Value, h => h.OffPlumbDeg <= 0.2);

    internal static string Table => Figures.Table(
        "tied with | flies | shank from plumb in air, ° | most it turns when hung in still water instead, °",
        All.Value.GroupBy(h => h.Name.Split(", ")[1]).Select(g =>
            $"{g.Key} | {g.Count()} | {Figures.Range(g.Select(h => h.ShankDeg), "F1")} | {g.Max(h => Math.Abs(h.WaterDeg - h.ShankDeg)):F1}"));

    // The engine's hang is a line of geometry; here the fly is let go in all but still air and its moments bring it to rest.
    [Fact]
    public void Hang_FamilyLetGoInAir_MassCenterComesToRestPlumbUnderTheEye()
    {
        Assert.Equal(64, All.Value.Length);
        Assert.All(All.Value, hung =>
        {
            Assert.InRange(hung.OffPlumbDeg, 0, 0.2);
            Assert.Equal(hung.ShankDeg, hung.ReportedDeg, 0.2);
        });
    }

    // In water it is the balance point that hangs plumb: steel, lead and hair lose different parts of their weight.
    [Fact]
    public void Hang_BareHook_HangsAlikeInWaterAndADressedOneDoesNot()
    {
        Assert.All(All.Value.Where(h => h.Name.EndsWith("bare", StringComparison.Ordinal)), h => Assert.Equal(h.ShankDeg, h.WaterDeg, 0.2));
        Assert.Contains(All.Value, h => Math.Abs(h.ShankDeg - h.WaterDeg) > 2);
    }

    private static Hung Hang(Recipe recipe)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        Vector3D massCenter = MassMoments.Of(built.Body.Parts, double.PositiveInfinity).MassCenterM;
        Attitude air = AtRest(built, new Water(1.2, 1.8e-5), 0), water = AtRest(built, built.Conditions.Water, double.PositiveInfinity);
        Vector3D arm = (massCenter - built.Body.TowPointM).Normalized();
        return new Hung(
            recipe.Name, AngleDeg(arm, -air.Up), AngleDeg(Vector3D.UnitX, -air.Up),
            BalanceEngine.Hang(built.Body, massCenter).ShankFromPlumbDeg, AngleDeg(Vector3D.UnitX, -water.Up));
    }

    private static Attitude AtRest(BuiltFly built, Water medium, double soakS)
    {
        TowedFly fly = TowedFly.From(built.Body, built.Conditions with { Water = medium }, soakS);
        Attitude start = Attitude.Symmetric(Intent.PointDown, 0.3).Turned(new Vector3D(0.2, 0.1, 0.3));
        return Releases.StableAttitudes(fly, 1e-3) is [{ } only, ..] ? only.Rest.Attitude : start;
    }

    private static double AngleDeg(Vector3D a, Vector3D b) => Math.Acos(Math.Clamp(Vector3D.Dot(a, b), -1, 1)) / Bench.Degree;
}
