using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reports;

/// <summary>
/// The report as one JSON object, its sentences in metric units. Field names carry their units and do not change between versions; fields may be added.
/// </summary>
public static class BalanceJson
{
    internal static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.Never,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write(SolvedFly fly)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return JsonSerializer.Serialize(Shape(fly), Options);
    }

    private static object Shape(SolvedFly fly)
    {
        BalanceReport r = fly.Report;
        return new
        {
            Recipe = fly.Recipe.Name,
            Intent = FlyWords.Way(r.Intent),
            EngineVersion = BalanceEngine.Version,
            r.MassG,
            r.HeldWaterG,
            r.DisplacedMm3,
            r.WetWeightG,
            MassCenterMm = Point(r.MassCenterMm),
            CenterOfBuoyancyMm = Point(r.CenterOfBuoyancyMm),
            BalancePointMm = Point(r.BalancePointMm),
            TowPointMm = Point(r.TowPointMm),
            LevelLineKeelMm = Keel(r.LevelLineKeelMm),
            Hang = new { r.Hang.ShankFromPlumbDeg },
            Casting = new { r.Casting.DryG, r.Casting.WetG, Lines = r.Casting.Lines.Select(l => new { l.LineNumber, l.Share }) },
            States = r.States.Select(s => State(s, r.Intent)),
            Soak = r.Soak.Select(
                p => new { p.SoakS, p.MassG, p.WetWeightG, p.KeelHeightMm, p.PitchDeg, p.LeanDeg, p.SinkRateMS, Verdict = FlyWords.Verdict(p.Verdict) }),
            Verdict = Verdict(r.Verdict, r.Intent, r.Soaked),
            Findings = r.Findings.Select(f => FindingSentence.Say(f, r, UnitSystem.Metric)).Select(f => new { f.Code, f.Text }),
            Doubt = Doubt(fly.Doubt),
            Assumed = fly.Built.Assumed.Select(a => new { a.What, a.Value, a.Why }),
        };
    }

    private static object State(StateReport s, Intent intent) => new
    {
        State = s.State == WetState.Fresh ? "fresh" : "soaked",
        s.WetWeightG,
        s.DisplacedMm3,
        CenterOfBuoyancyMm = Point(s.CenterOfBuoyancyMm),
        BalancePointMm = Point(s.BalancePointMm),
        LevelLineKeelMm = Keel(s.LevelLineKeelMm),
        Tow = s.Tow.Select(Tow),
        AtFishingSpeed = Tow(s.AtFishingSpeed),
        s.PitchOnALoopDeg,
        Attitudes = s.Attitudes.Select(a => new { a.PitchDeg, a.LeanDeg, a.Share }),
        Sink = s.Sink is { } sink
            ? new
            {
                sink.RateMS,
                sink.PitchDeg,
                sink.LeanDeg,
                sink.DepthAfter5sM,
                sink.FirstMeterMS,
                Line = "slack",
                Ways = sink.Ways.Select(w => new { w.RateMS, w.PitchDeg, w.LeanDeg, w.Share }),
                Depth = sink.Depth.Select(d => new { d.TimeS, d.DepthM })
            } : null,
        Roll = new { s.Roll.RangeDeg, Side = s.Roll.Side.ToString().ToLowerInvariant(), Points = s.Roll.Points.Select(p => new { p.HeelDeg, p.RestoringGmm }) },
        Ledger = s.Ledger.Select(l => new { l.Part, l.KeelMomentGmm }),
        Heeling = s.Heeling.Select(h => new { h.Part, h.HeelingGmm }),
        Tolerance = new
        {
            Accuracy = s.Tolerance.Accuracy switch
            {
                TyingAccuracy.FirstSeason => "first season",
                TyingAccuracy.Practiced => "practiced",
                _ => "production",
            },
            s.Tolerance.Flies,
            s.Tolerance.AsIntended,
            s.Tolerance.AsIntendedLow,
            s.Tolerance.AsIntendedHigh,
            s.Tolerance.Leaning,
            s.Tolerance.Flipped,
            s.Tolerance.TheRightWayUp,
        },
        Verdict = Verdict(s.Verdict, intent, s),
    };

    private static object Tow(TowReport t) => new
    {
        t.SpeedMS,
        t.Settles,
        t.PitchDeg,
        t.LeanDeg,
        KeelHeightMm = new { t.KeelHeightMm.PointDown, t.KeelHeightMm.PointUp },
        t.DragMN,
        t.LiftMN,
        t.LineAngleDeg,
        Verdict = FlyWords.Verdict(t.Verdict),
    };

    private static object Verdict(Verdict v, Intent intent, StateReport state) => new
    {
        Verdict = FlyWords.Verdict(v.Kind),
        State = v.State == WetState.Fresh ? "fresh" : "soaked",
        v.SpeedMS,
        Knot = FlyWords.Knot(v.Knot),
        Text = VerdictSentence.Of(intent, state, UnitSystem.Metric),
        Cause = CauseSentence.Of(intent, state, UnitSystem.Metric),
    };

    private static object Doubt(DoubtReport d) => new
    {
        d.Draws,
        KeelHeightMm = Range(d.KeelHeightMm),
        PitchDeg = Range(d.PitchDeg),
        SinkRateMS = Range(d.SinkRateMS),
        d.SameVerdict,
        d.MostlyBy,
        Text = DoubtSentence.Of(d),
        Shares = d.Shares.Where(s => s.Share >= DoubtRules.ShareWorthNaming).Select(s => new { s.Estimate, s.Share }),
    };

    private static object? Range(Interval? interval) => interval is { } i ? new { i.Low, i.High } : null;

    private static object? Point(Vector3D? p) => p is { } v ? new { v.X, v.Y, v.Z } : null;

    private static object? Keel(LevelLineKeel? keel) => keel is { } k ? new { k.PointDown, k.PointUp } : null;
}
