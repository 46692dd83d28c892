using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;

namespace TyingClass.Balance.Tests.Flies;

/// <summary>How a fly is fished where a test is about something else.</summary>
internal static class Fished
{
    /// <summary>In fresh water of 20 °C at 0.5 m/s, on a loop tied to 0.20 mm of nylon.</summary>
    public static FishingConditions Plainly { get; } = new(new Water(998.2041, 1001.57e-6), new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5);
}
