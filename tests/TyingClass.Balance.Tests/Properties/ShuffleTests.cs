using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

/// <summary>In which order the parts are written down is no property of the fly.</summary>
public sealed class ShuffleTests
{
    [Fact]
    public void Report_ShuffledParts_IsTheSameFly()
    {
        ReportOptions options = new() { Flies = 300, SpeedsMS = [0.4], SoakTimesS = [] };
        for (int seed = 70_000; seed < 70_040; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            // Two wings, which a recipe would number in the order it names them.
            BodyPart wing = body.Parts[^1];
            BodyPart second = wing with
            {
                Name = $"{wing.Name} 2",
                Masses = [.. wing.Masses.Select(m => m with { PositionM = m.PositionM with { X = m.PositionM.X + 2e-3 } })]
            };
            FlyBody written = body with { Parts = [.. body.Parts, second] };
            ImmutableArray<BodyPart> turned = [
                .. written.Parts.Reverse()
                    .Select(p => p.Name == wing.Name ? p with { Name = second.Name } : p.Name == second.Name ? p with { Name = wing.Name } : p)];
            StateReport a = BalanceEngine.Report(written, conditions, options).Soaked,
                b = BalanceEngine.Report(written with { Parts = turned }, conditions, options).Soaked;
            Assert.Equal(a.Verdict.Kind, b.Verdict.Kind);
            Assert.Equal(a.AtFishingSpeed.LeanDeg, b.AtFishingSpeed.LeanDeg, 1e-3);
            // A fly on the very edge of a bin may fall on either side of it by rounding.
            Assert.Equal(a.Tolerance.AsIntended, b.Tolerance.AsIntended, 1.01 / 300);
            Assert.Equal(a.Tolerance.Flipped, b.Tolerance.Flipped, 1.01 / 300);
        }
    }
}
