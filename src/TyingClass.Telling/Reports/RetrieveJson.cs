using System.Text.Json;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reports;

/// <summary>A retrieve as one JSON object. Field names carry their units and do not change between versions; fields may be added.</summary>
public static class RetrieveJson
{
    public static string Write(SolvedFly fly)
    {
        ArgumentNullException.ThrowIfNull(fly);
        RetrieveReport r = fly.Retrieve;
        return JsonSerializer.Serialize(
            new
            {
                Recipe = fly.Recipe.Name,
                Intent = FlyWords.Way(fly.Recipe.Intent),
                EngineVersion = BalanceEngine.Version,
                Limit = r.Limit.ToString(),
                Round = r.Plan.Round.Select(s => new { s.StripM, s.DurationS }),
                r.Plan.Repeat,
                r.Plan.CountDownS,
                r.Plan.LineOutM,
                r.Plan.LeaderM,
                r.CountedDepthM,
                r.DeepestM,
                r.ShallowestM,
                r.HopM,
                r.DriftM,
                r.DivePitchDeg,
                UprightShare = r.Ride.Upright,
                LeaningShare = r.Ride.Leaning,
                OverShare = r.Ride.Over,
                r.SettleS,
                TouchesBottom = r.TouchesBottom is { } touch ? new { touch.TimeS, touch.AlongM, touch.DepthM } : null,
                Strips = r.Strips.Select(s => new { s.Strip.StartS, s.Strip.EndS, s.HopM, s.ShallowestM, s.DeepestM, s.SteepestDeg, s.DownAfterS }),
                Doubt = r.HasFigures ? new { fly.RetrieveDoubt.Draws, fly.RetrieveDoubt.HopM, fly.RetrieveDoubt.DivePitchDeg } : null,
                Text = RetrieveSentence.Of(r, UnitSystem.Metric),
                Path = r.Path.Select(p => new { p.TimeS, p.AlongM, p.DepthM, p.PitchDeg, p.LeanDeg, p.TensionMN, p.LineDeg }),
            },
            BalanceJson.Options);
    }
}
