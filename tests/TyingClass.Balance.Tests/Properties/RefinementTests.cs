using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

public sealed class RefinementTests(ITestOutputHelper output)
{
    private static readonly ReportOptions Quick = new() { Flies = 1, SpeedsMS = [0.5] };

    [Fact]
    public void Report_TwiceTheElements_MovesNoAngleByHalfADegree()
    {
        List<string> moved = [];
        double worst = 0;
        for (int seed = 30_000; seed < 30_150; seed++)
        {
            BuiltFly coarse = FlyBuilder.Build(RandomRecipes.Fly(seed)), fine = FlyBuilder.Build(RandomRecipes.Fly(seed), 2);
            BalanceReport a = BalanceEngine.Report(coarse.Body, coarse.Conditions, Quick), b = BalanceEngine.Report(fine.Body, fine.Conditions, Quick);
            foreach ((StateReport one, StateReport two) in a.States.Zip(b.States))
            {
                if (one.Attitudes.Length != 1 || two.Attitudes.Length != 1) continue;
                double pitch = Math.Abs(one.AtFishingSpeed.PitchDeg - two.AtFishingSpeed.PitchDeg);
                double lean = Math.Abs(one.AtFishingSpeed.LeanDeg - two.AtFishingSpeed.LeanDeg) * Math.Cos(one.AtFishingSpeed.PitchDeg * Math.PI / 180);
                worst = Math.Max(worst, Math.Max(pitch, lean));
                // Where no tenth of a millimeter of keel holds it up the lean hangs on a hair: pitch and keel height are compared instead.
                double? keel = one.AtFishingSpeed.KeelHeightMm.For(a.Intent), finer = two.AtFishingSpeed.KeelHeightMm.For(b.Intent);
                bool onAHair = keel is { } h && Math.Abs(h) < 0.1 && Math.Abs(h - finer ?? double.NaN) < 0.01;
                if (pitch > 0.5 || (lean > 0.5 && !onAHair))
                {
                    moved.Add(
                        string.Create(CultureInfo.InvariantCulture,
                            $"recipe {seed} {one.State}: pitch {one.AtFishingSpeed.PitchDeg:F2} → {two.AtFishingSpeed.PitchDeg:F2}, "
                                + $"lean {one.AtFishingSpeed.LeanDeg:F2} → {two.AtFishingSpeed.LeanDeg:F2}, "
                                + $"keel {one.AtFishingSpeed.KeelHeightMm.For(a.Intent):F3}, "
                                + $"parts {string.Join(", ", coarse.Body.Parts.Select(p => p.Name))}"));
                }
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"worst {worst:F3}°\n{string.Join('\n', moved)}"));
        Assert.Empty(moved);
    }
}
