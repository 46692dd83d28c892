using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Tests.Bodies;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Catalogue;

public sealed class PartExtentsTests
{
    private static readonly ResolvedHook ShankOf20 = HookScale.Resolve(TestFly.Hook);

    public static TheoryData<PartSpec, double, double> Cases => new()
    {
        // Bore 1.4 of 4: √(16 - 1.96).
        { new PartSpec(PartKind.Bead) { SizeM = 4 * Mm, AtM = 1 * Mm }, 1, 4.74700 },
        { new PartSpec(PartKind.Cone) { SizeM = 5 * Mm }, 0, 4.5 },
        { new PartSpec(PartKind.Cone) { SizeM = 5 * Mm, LengthM = 4 * Mm }, 0, 4 },
        { new PartSpec(PartKind.DumbbellEyes) { SizeM = 5 * Mm, AtM = 2 * Mm }, 2, 7 },
        { new PartSpec(PartKind.Wraps) { DiameterM = 0.6 * Mm, Turns = 10, AtM = 3 * Mm }, 3, 9 },
        { new PartSpec(PartKind.Wraps) { DiameterM = 0.6 * Mm, AtM = 3 * Mm, ToM = 12 * Mm }, 3, 12 },
        { new PartSpec(PartKind.Body) { AtM = 4 * Mm, ToM = 15 * Mm }, 4, 15 },
        { new PartSpec(PartKind.Body) { AtM = 4 * Mm, LengthM = 6 * Mm }, 4, 10 },
        { new PartSpec(PartKind.Body) { AtM = 4 * Mm }, 4, 20 },
        { new PartSpec(PartKind.Resin) { AtM = 4 * Mm }, 4, 7 },
        { new PartSpec(PartKind.Wing) { AtM = 5 * Mm, LengthM = 40 * Mm }, 5, 5 },
        { new PartSpec(PartKind.Tail) { AtM = 20 * Mm }, 20, 20 },
        { new PartSpec(PartKind.Wing) { AtM = 5 * Mm, ToM = 18 * Mm, LengthM = 40 * Mm, Tied = TieDown.BothEnds }, 5, 18 },
        { new PartSpec(PartKind.Wing) { AtM = 5 * Mm, LengthM = 40 * Mm, Tied = TieDown.BothEnds }, 5, 20 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_Part_GivesItsStretchOfShank(PartSpec part, double front, double rear)
    {
        (double frontM, double rearM) = PartExtents.Of(part, ShankOf20);

        Assert.Equal(front, frontM / Mm, 1e-5);
        Assert.Equal(rear, rearM / Mm, 1e-5);
    }
}
