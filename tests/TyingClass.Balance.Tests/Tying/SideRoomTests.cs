using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Tying;

/// <summary>A bead threaded on the wire goes no farther aside than its bore allows, however unsteady the hand.</summary>
public sealed class SideRoomTests
{
    [Fact]
    public void Tolerance_PartWithNoRoomAside_LeansLess()
    {
        int compared = 0;
        double freeLean = 0, heldLean = 0;
        for (int seed = 64_000; seed < 64_200; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed, mirrored: true);
            if (body.Parts.All(p => p.Name != "bead") || PartialReports.Tow(body, conditions, WetState.Soaked).LeanDeg > 20) continue;
            FlyBody held = body with { Parts = [.. body.Parts.Select(p => p.Name == "bead" ? p with { Room = new SideRoom(0, 0) } : p)] };
            freeLean += MeanLeanDeg(body, conditions);
            heldLean += MeanLeanDeg(held, conditions);
            compared++;
        }

        Assert.True(compared > 15 && heldLean < freeLean, $"{compared} flies: mean lean {freeLean / compared}° free, {heldLean / compared}° held");
    }

    [Theory]
    [InlineData(0.9, 0.17)]
    [InlineData(-0.9, -0.17)]
    [InlineData(0.1, 0.1)]
    public void Within_Error_StopsAtTheWire(double error, double expected) => Assert.Equal(expected, new SideRoom(-0.17, 0.17).Within(error));

    private static double MeanLeanDeg(FlyBody body, FishingConditions conditions)
    {
        ToleranceReport t =
            PartialReports.Tolerance(body, conditions, WetState.Soaked, new ReportOptions { Flies = 200, Accuracy = TyingAccuracy.FirstSeason });
        return t.LeanHistogram.Select((count, bin) => count * (10 * bin + 5)).Sum() / (double)t.Flies;
    }
}
