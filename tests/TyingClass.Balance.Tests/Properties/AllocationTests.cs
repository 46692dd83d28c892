using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

/// <summary>The moment function runs a million times an evening: it must leave nothing for the collector.</summary>
public sealed class AllocationTests
{
    [Fact]
    public void At_AndLinearize_Warm_AllocateNothing()
    {
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(70_000);
        TowedFly fly = TowedFly.From(body, conditions, 0);
        Assert.True(double.IsFinite(Work(fly, body, conditions)));

        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = Work(fly, body, conditions);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.NotEqual(0, sum);
        Assert.Equal(0, allocated);
    }

    private static double Work(TowedFly fly, FlyBody body, FishingConditions conditions)
    {
        double sum = 0;
        for (int i = 0; i < 2_000; i++)
        {
            Attitude attitude = Attitude.Symmetric(body.Intent, 0.001 * i).Turned(new Vector3D(0.1, 0.2, 0.3));
            sum += fly.At(attitude, conditions.SpeedMS).MomentNM.X + fly.Linearize(attitude, conditions.SpeedMS).MomentNM.Y;
        }

        return sum;
    }
}
