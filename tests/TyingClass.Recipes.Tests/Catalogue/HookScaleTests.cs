using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.Catalogue;

/// <summary>The generic scale as it is defined (common practice, no source), worked out by hand in mm.</summary>
public sealed class HookScaleTests
{
    // Size 6: length 30.2 - 9.54 = 20.66; gape 12 e^-0.447 = 7.67453; wire 1.15 e^-0.39 = 0.77862; shank 20.66 - 3.83726 = 16.82274.
    // Size 14: two numbers past 12, 11.12 - 1.52 = 9.6; gape 12 e^-1.043 = 4.22877; shank 9.6 - 2.11439 = 7.48561; wire 1.15 e^-0.91 = 0.46290.
    // Size 1/0: 30.2, gape 12, shank 24.2, wire 1.15.
    [Theory]
    [InlineData(6, 16.82274, 7.67453, 0.77862)]
    [InlineData(14, 7.48561, 4.22877, 0.46290)]
    [InlineData(0, 24.2, 12, 1.15)]
    public void Resolve_StandardHook_FollowsScale(int number, double shank, double gape, double wire)
    {
        ResolvedHook hook = HookScale.Resolve(new HookSpec { Size = new HookSize(number) });

        Assert.Equal(shank, hook.ShankM * 1e3, 2e-5);
        Assert.Equal(gape, hook.GapeM * 1e3, 2e-5);
        Assert.Equal(wire, hook.WireM * 1e3, 2e-5);
    }

    // 4XL on a size 6: as long as a size 2, 27.02, gape still its own: 27.02 - 3.83726 = 23.18274. 2XH: the wire of a size 4, 1.15 e^-0.26 = 0.88671.
    // 2XS: as long as a size 8, 17.48: 13.64274. 1XF: the wire of a size 7, 1.15 e^-0.455 = 0.72962.
    [Theory]
    [InlineData(4, 2, 23.18274, 0.88671)]
    [InlineData(-2, -1, 13.64274, 0.72962)]
    public void Resolve_Steps_BorrowLengthAndWireOfOtherSizes(int shankSteps, int wireSteps, double shank, double wire)
    {
        ResolvedHook hook = HookScale.Resolve(new HookSpec { Size = new HookSize(6), ShankSteps = shankSteps, WireSteps = wireSteps });

        Assert.Equal(shank, hook.ShankM * 1e3, 2e-5);
        Assert.Equal(wire, hook.WireM * 1e3, 2e-5);
        Assert.Equal(7.67453, hook.GapeM * 1e3, 2e-5);
    }

    [Fact]
    public void Resolve_Measured_BeatsScale()
    {
        HookSpec spec = new() { Size = new HookSize(6), ShankM = 0.02, GapeM = 0.009, WireM = 0.0008 };

        ResolvedHook hook = HookScale.Resolve(spec);

        Assert.Equal((0.02, 0.009, 0.0008), (hook.ShankM, hook.GapeM, hook.WireM));
    }

    [Theory]
    [InlineData(EyeKind.Straight, 0)]
    [InlineData(EyeKind.Up, 30)]
    [InlineData(EyeKind.Down, -30)]
    [InlineData(EyeKind.Jig, -60)]
    public void Resolve_EyeWithoutAngle_TakesUsualOne(EyeKind eye, double expectedDeg) =>
        Assert.Equal(
            expectedDeg, HookScale.Resolve(new HookSpec { Size = new HookSize(8), Eye = eye }).EyeAngleRad * 180 / Math.PI, 1e-9);

    [Theory]
    [InlineData(21, 0, "off the generic scale")]
    [InlineData(-6, 0, "7/0 is off the generic scale")]
    [InlineData(20, -5, "nothing to tie on")]
    public void TryResolve_Impossible_SaysWhy(int number, int shankSteps, string why)
    {
        Assert.False(HookScale.TryResolve(new HookSpec { Size = new HookSize(number), ShankSteps = shankSteps }, out _, out string? problem));
        Assert.Contains(why, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Resolve_WholeScale_ShrinksStepByStep()
    {
        ResolvedHook[] hooks = [.. Enumerable.Range(-5, 26).Select(n => HookScale.Resolve(new HookSpec { Size = new HookSize(n) }))];

        Assert.All(hooks.Zip(hooks.Skip(1)), pair =>
            Assert.True(pair.First.ShankM > pair.Second.ShankM && pair.First.GapeM > pair.Second.GapeM && pair.First.WireM > pair.Second.WireM));
    }
}
