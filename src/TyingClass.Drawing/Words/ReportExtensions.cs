using TyingClass.Balance.Reports;

namespace TyingClass.Drawing;

internal static class ReportExtensions
{
    public static StateReport State(this BalanceReport report, WetState state) => state == WetState.Fresh ? report.Fresh : report.Soaked;

    /// <summary>The solved tow nearest a speed, or the one at the speed fished: attitudes between solved speeds are never made up.</summary>
    public static TowReport Towed(this StateReport state, double? speedMS) => speedMS is { } wanted
        ? state.Tow.Append(state.AtFishingSpeed).MinBy(t => Math.Abs(t.SpeedMS - wanted))!
        : state.AtFishingSpeed;
}
