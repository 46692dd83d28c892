using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Balance.Tests.Limits;

/// <summary>Whatever is thrown at it, the engine answers, and with numbers.</summary>
public sealed class FuzzTests
{
    private static readonly ReportOptions Few = new() { Flies = 5 };

    [Fact]
    public void Report_FuzzedBodies_IsFinite()
    {
        List<string> broken = [];
        for (int seed = 0; seed < 400; seed++)
        {
            (FlyBody body, FishingConditions conditions) = Heap(new Random(seed));
            Try(broken, $"body {seed}", () => BalanceEngine.Report(body, conditions, Few));
        }

        Assert.True(broken.Count == 0, string.Join('\n', broken.Take(20)));
    }

    [Fact]
    public void Report_FuzzedRecipes_IsFinite()
    {
        List<string> broken = [];
        for (int seed = 0; seed < 400; seed++)
        {
            Recipe recipe = Wild(RandomRecipes.Fly(seed), new Random(seed));
            Try(broken, $"recipe {seed}", () =>
            {
                BuiltFly fly = FlyBuilder.Build(recipe);
                return BalanceEngine.Report(fly.Body, fly.Conditions, Few);
            });
        }

        Assert.True(broken.Count == 0, string.Join('\n', broken.Take(20)));
    }

    // What a careless recipe leaves: a bare hook alone, an eye at the mass center, nothing to drag on.
    [Fact]
    public void Report_DegenerateBodies_IsFinite()
    {
        FishingConditions conditions = new(new Water(998.2041, 1001.57e-6), new Leader(0.2e-3, 2.5e9, 1140), Knot.Cinched, 0.5);
        BodyPart lump = new("lump") { Masses = [new(1e-4, default)], Solids = [new(1e-8, default)] };
        BodyPart dragged = lump with { Drag = [DragElement.Sphere(default, 3e-3)] };
        foreach (Knot knot in new[] { Knot.Loop, Knot.Cinched })
        {
            foreach (BodyPart part in new[] { lump, dragged, dragged with { Solids = [] },
                dragged with { Drag = [DragElement.Cylinder(default, Vector3D.UnitX, 0, 0)] } })
            {
                foreach (Vector3D eye in new[] { default, new Vector3D(-0.01, 0, 0), new Vector3D(0, 0, 0.01) })
                {
                    Finite.AssertAll(BalanceEngine.Report(new FlyBody([part], eye, 0.02, Intent.PointDown), conditions with { Knot = knot }, Few));
                }
            }
        }
    }

    private static void Try(List<string> broken, string name, Func<BalanceReport> report)
    {
        try
        {
            BalanceReport told = report();
            Finite.AssertAll(told);
            foreach (StateReport state in told.States)
            {
                Assert.Equal(state.WetWeightG < 0, state.Verdict.Kind == VerdictKind.Floats);
                Assert.InRange(state.Attitudes.Sum(a => a.Share), 0, 1 + 1e-9);
                Assert.Equal(1, state.Tolerance.AsIntended + state.Tolerance.Leaning + state.Tolerance.Flipped, 1e-9);
                Assert.InRange(state.Tolerance.AsIntended, state.Tolerance.AsIntendedLow, state.Tolerance.AsIntendedHigh);
            }
        }
        catch (Exception e)
        {
            broken.Add(
                $"{name}: {e.GetType().Name} {e.Message.ReplaceLineEndings(" ")} "
                + $"{e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("/src/", StringComparison.Ordinal))}");
        }
    }

    // Elements strewn about with no thought of a fly, sizes over four decades, some of them nothing.
    private static (FlyBody Body, FishingConditions Conditions) Heap(Random r)
    {
        double size = Decades(r, 1e-3, 0.1);
        ImmutableArray<BodyPart>.Builder parts = ImmutableArray.CreateBuilder<BodyPart>();
        for (int i = r.Next(1, 6); i > 0; i--)
        {
            Vector3D at = Place(r, size);
            parts.Add(new BodyPart($"part {i}")
            {
                Masses = [new(Decades(r, 1e-7, 1e-2), at), new(r.Next(2) * Decades(r, 1e-7, 1e-2), Place(r, size))],
                Solids = [new(r.Next(2) * Decades(r, 1e-11, 1e-6), at)],
                Air = r.Next(2) == 0 ? [] : [new(Decades(r, 1e-12, 1e-7), r.Next(3) == 0 ? double.PositiveInfinity : Decades(r, 1, 100), Place(r, size))],
                Drag = [.. Enumerable.Range(0, r.Next(0, 5)).Select(_ => Drag(r, size))],
                IsTied = i > 1,
            });
        }

        return (
            new FlyBody(parts.ToImmutable(), Place(r, size), size, (Intent)r.Next(2)),
            new FishingConditions(WaterProperties.At(40 * r.NextDouble(), 0.042 * r.NextDouble()),
                new Leader(Decades(r, 5e-5, 2e-3), Decades(r, 1e8, 1e10), 1140), (Knot)r.Next(2), Decades(r, 1e-3, 10)));
    }

    private static DragElement Drag(Random r, double size) => r.Next(4) switch
    {
        0 => DragElement.Sphere(Place(r, size), r.Next(5) == 0 ? 0 : Decades(r, 1e-4, 1e-2)),
        1 => DragElement.Streamer(Place(r, size), r.Next(5) == 0 ? 0 : Decades(r, 1e-8, 1e-3)),
        _ => DragElement.Cylinder(
            Place(r, size), Place(r, 1) + new Vector3D(1e-6, 0, 0), r.Next(8) == 0 ? 0 : Decades(r, 1e-5, 0.1), r.Next(8) == 0 ? 0 : Decades(r, 1e-5, 1e-2),
            r.NextDouble(), r.Next(2) == 0 ? double.PositiveInfinity : Decades(r, 0.1, 1e3)),
    };

    private static Vector3D Place(Random r, double size) =>
        r.Next(6) == 0 ? default : size * new Vector3D(2 * r.NextDouble() - 1, 2 * r.NextDouble() - 1, 2 * r.NextDouble() - 1);

    private static double Decades(Random r, double low, double high) => low * Math.Pow(high / low, r.NextDouble());

    // Stated values far from what a tyer would choose, yet each one possible.
    private static Recipe Wild(Recipe recipe, Random r) => recipe with
    {
        Parts = [.. recipe.Parts.Select(p => p with
        {
            SizeM = r.Next(3) == 0 ? Decades(r, 5e-4, 2e-2) : p.SizeM,
            MassKg = r.Next(4) == 0 ? Decades(r, 1e-7, 1e-2) : p.MassKg,
            LengthM = r.Next(4) == 0 && p.ToM is null ? Decades(r, 1e-4, 0.2) : p.LengthM,
            SideOffsetM = r.Next(3) == 0 ? 0.01 * (2 * r.NextDouble() - 1) : p.SideOffsetM,
            ClockedRad = r.Next(3) == 0 ? 7 * (2 * r.NextDouble() - 1) : p.ClockedRad,
            DensityKgM3 = r.Next(5) == 0 ? Decades(r, 20, 2e4) : null,
        })],
        Fishing = recipe.Fishing with { SpeedMS = Decades(r, 1e-3, 10), LeaderDiameterM = Decades(r, 5e-5, 2e-3) },
    };
}
