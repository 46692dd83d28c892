using TyingClass.Balance.Reports;

namespace TyingClass.Drawing;

internal static class ReportExtensions
{
    public static StateReport State(this BalanceReport report, WetState state) => state switch
    {
        WetState.Soaked => report.Soaked,
        WetState.Partly => report.PartlySoaked ?? report.Fresh,
        _ => report.Fresh,
    };

    /// <summary>The two states a curve compares: soaked, and the one with air still in it that is looked at.</summary>
    public static StateReport[] Compared(this BalanceReport report) => [report.PartlySoaked ?? report.Fresh, report.Soaked];

    /// <summary>The solved tow nearest a speed, or the one at the speed fished: attitudes between solved speeds are never made up.</summary>
    public static TowReport Towed(this StateReport state, double? speedMS) => speedMS is { } wanted
        ? state.Tow.Append(state.AtFishingSpeed).MinBy(t => Math.Abs(t.SpeedMS - wanted))!
        : state.AtFishingSpeed;
}
