using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tying;

namespace TyingClass.Lessons.Checking;

/// <summary>The same fly tied again and again with a tyer's errors, for telling whether a key would survive them.</summary>
/// <remarks>The errors are those of the engine's own sample (<see cref="ThousandFlies"/>): each tied part moves as one piece and its mass varies; the hook does
/// not.</remarks>
internal static class TiedFlies
{
    private const int Seed = 20260101;

    /// <param name="flies">How many, 1 or more; the same number always gives the same flies.</param>
    public static ImmutableArray<FlyBody> Of(FlyBody body, TyingAccuracy accuracy, int flies)
    {
        TyingSpread spread = TyingSpread.Of(accuracy);
        double[] deviates = ThousandFlies.Deviates(body, flies, Seed);
        int perFly = ThousandFlies.ErrorsPerFly(body), perPart = perFly / body.Parts.Length;
        return [.. Enumerable.Range(0, flies).Select(f => body with
        {
            Parts = [.. body.Parts.Select((part, p) => Tie(part, deviates.AsSpan(f * perFly + p * perPart, perPart), spread))],
        })];
    }

    private static BodyPart Tie(BodyPart part, ReadOnlySpan<double> errors, TyingSpread spread)
    {
        if (!part.IsTied) return part;
        double mass = Math.Max(0.1, 1 + spread.MassShare * errors[3]), air = Math.Max(0, 1 + spread.AirShare * errors[4]);
        Vector3D shift = new(spread.AlongM * errors[2], part.Room.Within(spread.SideM * errors[0]), 0);
        double clock = spread.ClockRad * errors[1];
        return part with
        {
            Masses = [.. part.Masses.Select(m => new MassElement(mass * m.MassKg, Move(m.PositionM)))],
            Solids = [.. part.Solids.Select(v => new VolumeElement(mass * v.VolumeM3, Move(v.PositionM)))],
            Air = [.. part.Air.Select(a => a with { FreshVolumeM3 = air * a.FreshVolumeM3, PositionM = Move(a.PositionM) })],
            Drag = [.. part.Drag.Select(d => d.Moved(Move, Turn))],
            SideForces = [.. part.SideForces.Select(e => e.Moved(Move, Turn))],
        };

        Vector3D Turn(Vector3D v) => v.RotatedAbout(Vector3D.UnitX, clock);
        Vector3D Move(Vector3D v) => Turn(v) + shift;
    }
}
