using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Bodies;

/// <summary>To which side a fly is heavier: by its mass first, then by each thing in turn that could set two mirror images apart.</summary>
public sealed class HandednessTests
{
    private const double Mm = 1e-3;

    /// <summary>Bodies heavier to the right (positive), each by one thing alone; what lies on the left is less, by hand.</summary>
    public static TheoryData<string> Things => [.. Bodies.Keys];

    private static readonly Dictionary<string, BodyPart> Bodies = new()
    {
        ["mass"] = new("a") { Masses = [new(2e-4, At(1, 0)), new(1e-4, At(-1.5, 0))] },
        ["volume"] = new("a") { Solids = [new(2e-8, At(1, 0)), new(1e-8, At(-1.5, 0))] },
        ["air"] = new("a") { Air = [new(2e-8, 60, At(1, 0)), new(1e-8, 60, At(-1.5, 0))] },
        // 3 mm by 4 mm against 1 mm by 10 mm at the same distance: 12 and 10.
        ["long drag"] = new("a") { Drag = [Along(4, 3, At(1, 0)), Along(10, 1, At(-1, 0))] },
        // Wider than long, 4 mm by 2 mm, counts as wide, 16, against 10.
        ["wide drag"] = new("a") { Drag = [Along(2, 4, At(1, 0)), Along(10, 1, At(-1, 0))] },
        // 1 mm by 4 mm and a streamer of 20 mm² make 24 against 10.
        ["streamer"] = new("a") { Drag = [Along(4, 1, At(1, 0)), DragElement.Streamer(At(1, 0), 20e-6), Along(10, 1, At(-1, 0))] },
        // Both in the middle, and each slants: 12 to the right going back, 10 to the left.
        ["slant"] = new("a") { Drag = [Slanting(4, 3, 0.5), Slanting(10, 1, -0.5)] },
        // The same slant told from its other end.
        ["slant, turned end for end"] = new("a") { Drag = [DragElement.Cylinder(At(0, 0), new Vector3D(-1, -0.5, 0), 4 * Mm, 3 * Mm), Slanting(10, 1, -0.5)] },
        // One up to the right, one as far down to the left.
        ["mass up and down"] = new("a") { Masses = [new(1e-4, At(1, 1)), new(1e-4, At(-1, -1))] },
        ["drag up and down"] = new("a") { Drag = [Along(10, 1, At(1, 1)), Along(10, 1, At(-1, -1))] },
    };

    [Theory]
    [MemberData(nameof(Things))]
    public void Of_HeavierToOneSide_IsThatSideAndTheMirrorImageTheOther(string thing)
    {
        FlyBody body = new([Bodies[thing]], default, 0.02, Intent.PointDown);

        Assert.Equal(1, Handedness.Of(body));
        Assert.Equal(-1, Handedness.Of(body.Mirrored()));
    }

    // Left and right of the ring, not of the shank.
    [Theory]
    [MemberData(nameof(Things))]
    public void Of_RingToOneSide_IsCountedFromIt(string thing)
    {
        BodyPart part = Bodies[thing];

        Assert.Equal(-1, Handedness.Of(new FlyBody([part], At(5, 0), 0.02, Intent.PointDown)));
        Assert.Equal(1, Handedness.Of(new FlyBody([part], At(-5, 0), 0.02, Intent.PointDown)));
    }

    // What comes first decides, whatever comes after it says.
    [Fact]
    public void Of_MassOnOneSideAndAllElseOnTheOther_IsTheSideOfTheMass()
    {
        BodyPart part = new("a")
        {
            Masses = [new(1e-4, At(1, 0))],
            Solids = [new(1e-8, At(-1, 0))],
            Air = [new(1e-8, 60, At(-1, 0))],
            Drag = [Along(10, 1, At(-1, 0))],
        };

        Assert.Equal(1, Handedness.Of(new FlyBody([part], default, 0.02, Intent.PointDown)));
        Assert.Equal(-1, Handedness.Of(new FlyBody([part with { Masses = [] }], default, 0.02, Intent.PointDown)));
    }

    [Fact]
    public void Of_AlikeOnBothSides_IsRight() => Assert.Equal(1, Handedness.Of(new FlyBody(
        [new("a") { Masses = [new(1e-4, At(1, 0)), new(1e-4, At(-1, 0))], Drag = [Along(10, 1, At(0, 1))] }], default, 0.02, Intent.PointDown)));

    // What rounding leaves is no side: then the next thing decides.
    [Fact]
    public void Of_MassDiffersByRounding_TheVolumeDecides() => Assert.Equal(-1, Handedness.Of(new FlyBody(
        [new("a") { Masses = [new(1e-4, At(1 + 1e-13, 0)), new(1e-4, At(-1, 0))], Solids = [new(1e-8, At(-1, 0))] }], default, 0.02, Intent.PointDown)));

    private static Vector3D At(double rightMm, double upMm) => new(0, rightMm * Mm, upMm * Mm);

    private static DragElement Along(double lengthMm, double widthMm, Vector3D at) => DragElement.Cylinder(at, Vector3D.UnitX, lengthMm * Mm, widthMm * Mm);

    private static DragElement Slanting(double lengthMm, double widthMm, double toTheRight) =>
        DragElement.Cylinder(At(0, 0), new Vector3D(1, toTheRight, 0), lengthMm * Mm, widthMm * Mm);
}
