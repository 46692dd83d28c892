using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>What the explanations in docs/trade-facts.md rest on.</summary>
public sealed class TrimTests
{
    public static TheoryData<double> Speeds => [0.2, 0.4, 0.8, 1.2];

    [Theory]
    [MemberData(nameof(Speeds))]
    public void Of_OnALoop_KeelHeightIsTheDepthBelowTheLineOfResistance(double speedMS)
    {
        foreach (Recipe recipe in Families.JigStreamers.Concat(Families.WrappedFlies).Concat(Families.SmallHairFlies))
        {
            Trim trim = Trim.Of(recipe, speedMS);
            Assert.Equal(trim.BelowLevelMm - trim.LineDropMm, trim.KeelMm, 1e-6);
        }
    }

    // A bare hook's weight and its drag lie along the same wire, so they all but cancel: what is tied on it decides.
    [Theory]
    [InlineData(EyeKind.Straight)]
    [InlineData(EyeKind.Down)]
    [InlineData(EyeKind.Jig)]
    public void Of_BareHook_KeelHeightIsSmallEitherWayUp(EyeKind eye)
    {
        foreach (Intent intent in new[] { Intent.PointDown, Intent.PointUp })
        {
            foreach (int size in new[] { 2, 6, 10, 14 })
            {
                HookSpec hook = Bench.Hook(size, eye);
                Trim trim = Trim.Of(Bench.Fly("bare", intent, hook, 0.4), 0.4);
                Assert.InRange(trim.KeelMm / (1e3 * Bench.Gape(hook)), -0.15, 0.15);
            }
        }
    }
}
