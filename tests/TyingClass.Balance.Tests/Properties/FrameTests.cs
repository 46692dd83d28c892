using CsCheck;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

/// <summary>What the water does to a fly does not depend on where its frame is put, which way it is turned, or which hand it is drawn with.</summary>
public sealed class FrameTests
{
    private static readonly ReportOptions Quick = new() { Flies = 1, SpeedsMS = [0.2, 0.8] };

    private static readonly Gen<(int Seed, double A, double B, double C)> Cases =
        Gen.Select(Gen.Int[0, 100_000], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]);

    [Fact]
    public void Report_ShiftedFrame_IsTheSameReport() => Seeded.Check(Cases, 60, c =>
    {
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(c.Seed);
        BalanceReport here = BalanceEngine.Report(body, conditions, Quick);
        BalanceReport there = BalanceEngine.Report(body.Shifted(new Vector3D(0.05 * c.A, 0.05 * c.B, 0.05 * c.C)), conditions, Quick);
        Assert.Equal(here.Hang.ShankFromPlumbDeg, there.Hang.ShankFromPlumbDeg, 1e-6);
        foreach ((StateReport a, StateReport b) in here.States.Zip(there.States))
        {
            Assert.Equal(a.AtFishingSpeed.Settles, b.AtFishingSpeed.Settles);
            Assert.Equal(a.AtFishingSpeed.PitchDeg, b.AtFishingSpeed.PitchDeg, 1e-4);
            Assert.Equal(a.AtFishingSpeed.LeanDeg, b.AtFishingSpeed.LeanDeg, 1e-3);
            Assert.Equal(a.AtFishingSpeed.LineAngleDeg, b.AtFishingSpeed.LineAngleDeg, 1e-4);
            Assert.Equal(a.AtFishingSpeed.KeelHeightMm.PointDown ?? 0, b.AtFishingSpeed.KeelHeightMm.PointDown ?? 0, 1e-4);
            Assert.Equal(a.AtFishingSpeed.KeelHeightMm.PointUp ?? 0, b.AtFishingSpeed.KeelHeightMm.PointUp ?? 0, 1e-4);
            Assert.Equal(a.LevelLineKeelMm?.PointDown ?? 0, b.LevelLineKeelMm?.PointDown ?? 0, 1e-6);
            Assert.Equal(a.Attitudes.Length, b.Attitudes.Length);
            Assert.Equal(a.Sink?.RateMS ?? 0, b.Sink?.RateMS ?? 0, 1e-6);
        }
    });

    [Fact]
    public void At_TurnedFrame_TurnsTheMomentWithIt() => Seeded.Check(Cases, 200, c =>
    {
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(c.Seed);
        // A cinched leader follows the hook's x axis, so it does not turn with the frame.
        conditions = conditions with { Knot = Knot.Loop };
        Vector3D axis = new Vector3D(c.A, c.B, c.C + 1e-9).Normalized();
        Vector3D turn(Vector3D v) => v.RotatedAbout(axis, 3 * c.A);
        Attitude attitude = Attitude.Symmetric(body.Intent, c.B).Turned(new Vector3D(c.C, c.A, c.B));
        TowedFly here = TowedFly.From(body, conditions, 0), there = TowedFly.From(body.Moved(turn, turn), conditions, 0);
        Wrench a = here.At(attitude, conditions.SpeedMS), b = there.At(new Attitude(turn(attitude.Flow), turn(attitude.Up)), conditions.SpeedMS);
        Assert.True((turn(a.MomentNM) - b.MomentNM).Length < 1e-11 * (a.ForceN.Length * body.ShankLengthM + here.MomentScaleNM) * 1e3);
        Assert.True((turn(a.ForceN) - b.ForceN).Length < 1e-9 * a.ForceN.Length);
    });

    [Fact]
    public void At_MirroredFly_MirrorsTheMoment() => Seeded.Check(Cases, 200, c =>
    {
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(c.Seed);
        Attitude attitude = Attitude.Symmetric(body.Intent, c.B).Turned(new Vector3D(c.C, c.A, c.B));
        Attitude mirrored = new(Motions.Mirror(attitude.Flow), Motions.Mirror(attitude.Up));
        Vector3D a = TowedFly.From(body, conditions, 0).At(attitude, conditions.SpeedMS).MomentNM;
        Vector3D b = TowedFly.From(body.Mirrored(), conditions, 0).At(mirrored, conditions.SpeedMS).MomentNM;
        // A moment is a pseudovector: its in-plane parts change sign.
        Assert.Equal(-a.X, b.X, 1e-9 * a.Length);
        Assert.Equal(a.Y, b.Y, 1e-9 * a.Length);
        Assert.Equal(-a.Z, b.Z, 1e-9 * a.Length);
    });

    [Fact]
    public void StableAttitudes_MirroredFly_LeanTheOtherWay() => Seeded.Check(Cases, 60, c =>
    {
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(c.Seed);
        Basin[] here = [.. Releases.StableAttitudes(TowedFly.From(body, conditions, double.PositiveInfinity), conditions.SpeedMS)];
        Basin[] there = [.. Releases.StableAttitudes(TowedFly.From(body.Mirrored(), conditions, double.PositiveInfinity), conditions.SpeedMS)];
        Assert.Equal(here.Length, there.Length);
        foreach (Attitude a in here.Select(b => b.Rest.Attitude))
        {
            Attitude twin = new(Motions.Mirror(a.Flow), Motions.Mirror(a.Up));
            Assert.Equal(-a.RollRad, twin.RollRad, 1e-12);
            Assert.Contains(there, b => b.Rest.Attitude.AngleTo(twin) < 1e-4);
        }
    });
}
