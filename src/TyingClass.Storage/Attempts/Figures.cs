using System.Collections.Immutable;
using TyingClass.Balance.Reports;

namespace TyingClass.Storage.Attempts;

/// <summary>The figures of a report that a later reader of the attempt may ask for. Undefined ones are left out.</summary>
public static class Figures
{
    public static ImmutableArray<KeptFigure> Of(BalanceReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        StateReport soaked = report.Soaked;
        TowReport tow = soaked.AtFishingSpeed;
        (string Name, double? Value)[] all =
        [
            ("massG", report.MassG),
            ("heldWaterG", report.HeldWaterG),
            ("wetWeightG", report.WetWeightG),
            ("massCenterXMm", report.MassCenterMm.X),
            ("massCenterZMm", report.MassCenterMm.Z),
            ("hangShankFromPlumbDeg", report.Hang.ShankFromPlumbDeg),
            ("levelLineKeelMm", report.LevelLineKeelMm?.For(report.Intent)),
            ("speedMS", tow.SpeedMS),
            ("pitchDeg", tow.PitchDeg),
            ("leanDeg", tow.LeanDeg),
            ("keelHeightMm", tow.KeelHeightMm.For(report.Intent)),
            ("keelHeightFreshMm", report.Fresh.AtFishingSpeed.KeelHeightMm.For(report.Intent)),
            ("sinkRateMS", soaked.Sink?.RateMS),
            ("depthAfter5sM", soaked.Sink?.DepthAfter5sM),
            ("asIntendedShare", soaked.Tolerance.AsIntended),
        ];
        return [.. all.Where(f => f.Value is { } value && double.IsFinite(value)).Select(f => new KeptFigure(f.Name, f.Value!.Value))];
    }
}
