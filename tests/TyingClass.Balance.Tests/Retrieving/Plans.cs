using TyingClass.Balance.Retrieving;

namespace TyingClass.Balance.Tests.Retrieving;

/// <summary>Retrieves for the tests.</summary>
internal static class Plans
{
    /// <summary>A floating line of 160 grains to 30 ft and a density of 870 kg/m³.</summary>
    public static readonly RunningLine Floating = new(1.134e-3, 1.29e-3, 300, 2);

    public static RetrievePlan Usual { get; } = new()
    {
        Round = [new(0.3, 0.5), new(0, 1.5)],
        Repeat = 8,
        CountDownS = 5,
        Line = Floating,
        LineOutM = 12,
        LeaderM = 2.7,
        RodTipM = 0.1,
    };
}
