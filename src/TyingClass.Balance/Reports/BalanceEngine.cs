using TyingClass.Balance.Bodies;
using TyingClass.Balance.Casting;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Tying;

namespace TyingClass.Balance.Reports;

/// <summary>
/// The whole calculation: a body and how it is fished in, a report out. Pure, seeded and free of shared state, so the same fly always gets the same report.
/// </summary>
public static class BalanceEngine
{
    /// <summary>Changes whenever a figure could: an attempt keeps it beside its grade.</summary>
    public const string Version = "3";

    /// <summary>The full report, fresh and soaked.</summary>
    public static BalanceReport Report(FlyBody body, FishingConditions conditions, ReportOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(body);
        EngineMeter.Reports.Add(1);
        options ??= ReportOptions.Default;
        MassMoments soaked = MassMoments.Of(body.Parts, double.PositiveInfinity);
        double[] deviates = ThousandFlies.Deviates(body, options.Flies, options.Seed);
        StateReport fresh = StateCalculation.Report(body, conditions, WetState.Fresh, options, deviates);
        StateReport soakedState = StateCalculation.Report(body, conditions, WetState.Soaked, options, deviates);
        double heldKg = body.Parts.Sum(p => p.HeldWaterKg);
        return new BalanceReport
        {
            Intent = body.Intent,
            MassG = 1e3 * soaked.MassKg,
            HeldWaterG = 1e3 * heldKg,
            DisplacedMm3 = soakedState.DisplacedMm3,
            WetWeightG = soakedState.WetWeightG,
            MassCenterMm = 1e3 * soaked.MassCenterM,
            CenterOfBuoyancyMm = soakedState.CenterOfBuoyancyMm,
            BalancePointMm = soakedState.BalancePointMm,
            TowPointMm = 1e3 * body.TowPointM,
            LevelLineKeelMm = soakedState.LevelLineKeelMm,
            Hang = Hang(body, soaked.MassCenterM),
            Casting = Cast(soaked.MassKg, heldKg),
            States = [fresh, soakedState],
            PartlySoaked = options.PartlySoakedS is null ? null : StateCalculation.Report(body, conditions, WetState.Partly, options, deviates),
            Verdict = soakedState.Verdict,
            Findings = FindingRules.For(body, conditions, fresh, soakedState),
            Soak = SoakCalculation.Curve(body, conditions, options),
        };
    }

    /// <summary>In air, from the eye: the mass center hangs plumb under the tow point, so the shank's angle follows from their line.</summary>
    public static HangReport Hang(FlyBody body, Vector3D massCenterM)
    {
        ArgumentNullException.ThrowIfNull(body);
        Vector3D plumb = massCenterM - body.TowPointM;
        // A fly whose mass center lies in the eye hangs any way it is put: take it straight.
        return new HangReport(plumb.Length > 0 ? Degrees(Math.Acos(Math.Clamp(plumb.X / plumb.Length, -1, 1))) : 0);
    }

    /// <summary>The rule of thumb: from the balance point up to a line through the eye parallel to the shank.</summary>
    public static LevelLineKeel LevelLine(Vector3D towPointM, Vector3D balancePointM) =>
        new(1e3 * (towPointM.Z - balancePointM.Z), 1e3 * (balancePointM.Z - towPointM.Z));

    internal static double Degrees(double radians) => radians * (180 / Math.PI);

    private static CastingReport Cast(double massKg, double heldKg) => new(
        1e3 * massKg,
        1e3 * (massKg + heldKg),
        [.. FlyLine.All.Select(line => new LineShare(line.Number, (massKg + heldKg) / line.MassKg))]);
}
