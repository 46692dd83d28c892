using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Balance.Tests.Flies;

/// <summary>Recipes a tyer might write, thrown together at random: one draw a seed.</summary>
internal static class RandomRecipes
{
    public static Recipe Fly(int seed)
    {
        Random r = new(seed);
        HookSpec hook = Hook(r);
        double shank = HookScale.Resolve(hook).ShankM;
        ImmutableArray<PartSpec>.Builder parts = ImmutableArray.CreateBuilder<PartSpec>();
        double at = 0;
        if (r.NextDouble() < 0.5)
        {
            PartSpec head = Part(r, r.NextDouble() < 0.5 ? PartKind.Bead : PartKind.Cone, 0) with { SizeM = Between(r, 2e-3, 4.8e-3) };
            parts.Add(head);
            at = head.SizeM.GetValueOrDefault();
        }

        if (r.NextDouble() < 0.4)
            parts.Add(
                Part(r, PartKind.DumbbellEyes, at + Between(r, 0, 0.1) * shank) with
                {
                    SizeM = Between(r, 2.5e-3, 6e-3),
                    Side = r.NextDouble() < 0.7 ? Side.Top : Side.Under
                });
        if (r.NextDouble() < 0.4) parts.Add(Part(r, PartKind.Wraps, at + 0.1 * shank) with { DiameterM = Between(r, 0.25e-3, 0.9e-3), Turns = r.Next(4, 14) });
        if (r.NextDouble() < 0.7) parts.Add(Part(r, PartKind.Body, at + 0.1 * shank) with { ToM = Math.Max(at + 0.2 * shank, 0.95 * shank) });
        if (r.NextDouble() < 0.3) parts.Add(Part(r, PartKind.Hackle, at + 0.05 * shank));
        if (r.NextDouble() < 0.7)
            parts.Add(
                Part(r, PartKind.Wing, at + 0.05 * shank) with
                {
                    Side = r.NextDouble() < 0.5 ? Side.Top : Side.Under,
                    Tied = r.NextDouble() < 0.2 ? TieDown.BothEnds : null
                });
        if (r.NextDouble() < 0.4) parts.Add(Part(r, PartKind.Tail, 0.95 * shank));
        if (r.NextDouble() < 0.2) parts.Add(Part(r, PartKind.Legs, at + 0.3 * shank));
        if (r.NextDouble() < 0.05) parts.Add(Part(r, PartKind.Foam, at + 0.2 * shank) with { Side = Side.Top });
        return new Recipe($"Reed Darter {seed}", r.NextDouble() < 0.5 ? Intent.PointDown : Intent.PointUp, hook, parts.ToImmutable(), Fishing(r));
    }

    private static HookSpec Hook(Random r)
    {
        EyeKind eye = (EyeKind)r.Next(4);
        return new HookSpec
        {
            Size = new HookSize(r.Next(-1, 13)),
            ShankSteps = r.Next(-1, 5),
            WireSteps = r.Next(-1, 3),
            Eye = eye,
            EyeAngleRad = eye == EyeKind.Jig ? Between(r, 0.8, 1.6) : null,
            Bend = (BendKind)r.Next(3),
        };
    }

    // A third of the parts sit a little askew, as tied parts do.
    private static PartSpec Part(Random r, PartKind kind, double atM)
    {
        Material[] suited = [.. Materials.All.Where(m => KindsOfPart.Of(kind).SuitedMaterials.Contains(m.Name))];
        bool askew = r.NextDouble() < 0.33;
        return new PartSpec(kind)
        {
            Material = suited[r.Next(suited.Length)].Name,
            AtM = atM,
            SideOffsetM = askew ? Between(r, -0.6e-3, 0.6e-3) : 0,
            ClockedRad = askew ? Between(r, -0.3, 0.3) : 0,
        };
    }

    private static FishingSpec Fishing(Random r)
    {
        bool sea = r.NextDouble() < 0.3;
        return new FishingSpec
        {
            LeaderDiameterM = Between(r, 0.12e-3, 0.45e-3),
            LeaderMaterial = (LeaderMaterial)r.Next(2),
            Knot = (Knot)r.Next(2),
            Water = sea ? WaterKind.Sea : WaterKind.Fresh,
            TemperatureC = Between(r, 2, 28),
            SpeedMS = Between(r, 0.1, 1.5),
        };
    }

    private static double Between(Random r, double low, double high) => low + (high - low) * r.NextDouble();
}
