using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Bodies;

/// <summary>Fills in what a recipe does not say of its retrieve.</summary>
public static class RetrieveBuilder
{
    /// <summary>What stands at this place of a recipe says how the fly is retrieved, and nothing else.</summary>
    public static bool IsOfRetrieve(string path) => RetrieveReader.Keys.Any(key => path == "fishing." + key);

    /// <summary>The whole plan.</summary>
    public static RetrievePlan Build(RetrieveSpec spec, FishingConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(spec);
        double lineOutM = spec.LineOutM ?? RetrieveScale.LineOut.Value;
        return new RetrievePlan
        {
            Round = spec.Round.IsEmpty ? RetrieveScale.Named[0].Round : spec.Round,
            Repeat = spec.Repeat ?? (int)RetrieveScale.Repeat.Value,
            CountDownS = spec.CountDownS ?? RetrieveScale.CountDown.Value,
            Line = RetrieveScale.Line(spec.LineSinkMS ?? 0, conditions.Water),
            LineOutM = lineOutM,
            LeaderM = spec.LeaderLengthM ?? Math.Min(RetrieveScale.LeaderLength.Value, 0.6 * lineOutM),
            RodTipM = Math.Clamp(spec.RodTipM ?? RetrieveScale.RodTip.Value, -0.5 * lineOutM, 0.9 * lineOutM),
            BottomM = spec.WaterDepthM,
            CurrentMS = spec.CurrentMS ?? 0,
            WettedS = spec.WettedS ?? 0,
        };
    }

    /// <summary>The keys a recipe leaves out, so that a usual value stands for them.</summary>
    public static ImmutableArray<string> Assumed(RetrieveSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return
        [
            .. new (string Key, bool Left)[]
            {
                ("retrieve", spec.Round.IsEmpty), ("repeat", spec.Repeat is null), ("count down", spec.CountDownS is null), ("line", spec.LineSinkMS is null),
                ("line out", spec.LineOutM is null), ("leader length", spec.LeaderLengthM is null), ("rod tip", spec.RodTipM is null),
            }.Where(k => k.Left).Select(k => k.Key),
        ];
    }
}
