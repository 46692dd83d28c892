using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Reasons;

/// <summary>Why a fly rides the way up it does.</summary>
/// <param name="First">The one sentence that says it.</param>
/// <param name="ByHands">True where flies tied alike do not agree, so that the errors decide.</param>
internal sealed record WayReason(Reason Reason, string First, bool ByHands)
{
    /// <summary>Both ways, of a fly that can ride either.</summary>
    public FlyPair Pair { get; init; }

    private const double OfOneMind = 0.75;
    private const double LopsidedDeg = 15;

    // With so little of its keel height left, a fly is hardly held at all.
    private const double Barely = 0.2;

    public static WayReason Of(FlyFigures fly, UnitSystem units)
    {
        StateReport state = fly.Report.Soaked;
        VerdictKind verdict = state.Verdict.Kind;
        FlyPair pair = verdict == VerdictKind.Undecided && state.Attitudes.Length > 1 ? FlyPair.Ways : FlyPair.None;
        if (fly.Body.Parts.Length == 1)
            return new WayReason(OneFlyReason.Without(Query("lean"), fly), OpeningSentence.OfBareHook(), false) { Pair = pair };
        if (verdict == VerdictKind.Undecided && Agreeing(state.Tolerance) < OfOneMind)
        {
            Reason hands = OneFlyReason.Of(Query("rides as intended"), fly);
            if (hands.Top is not null) return new WayReason(hands, OpeningSentence.OfOne(hands), true) { Pair = pair };
        }

        TowReport tow = state.AtFishingSpeed;
        bool leans = tow.LeanDeg is > LopsidedDeg and < 180 - LopsidedDeg || tow.KeelHeightMm.For(fly.Body.Intent) is null;
        QuantityQuery query = verdict == VerdictKind.Hangs ? Query("pitch") : Query(leans ? "lean" : "keel height");
        Dictionary<Thing, TowReport> lacking = [];
        Reason reason = OneFlyReason.Without(query, fly, (what, without) => lacking[what] = without.Tow(query));
        reason = reason with { Shares = [.. reason.Shares.OrderByDescending(s => Bearing(reason, s))] };
        if (reason.Top is not { } top) return new WayReason(reason, OpeningSentence.OfOne(reason), false);
        string now = verdict == VerdictKind.Undecided ? RideWords.Undecided : RideWords.Rides(fly.Body.Intent, tow, units);
        string? without = lacking.TryGetValue(top.What, out TowReport? there) ? RideWords.WouldRide(fly.Body.Intent, there) : null;
        bool barely = query.Quantity.Name == "keel height" && reason.ToSi is > 0 and { } keel && top.FromSi is > 0 and { } left && left < Barely * keel;
        return new WayReason(reason, OpeningSentence.OfWay(top.What, now, barely ? RideWords.WouldBarely : without), false) { Pair = pair };
    }

    // What brings it to where it is, before what merely has much say.
    private static double Bearing(Reason reason, ReasonShare share) => share.FromSi is null ? 0
        : reason.Quantity == "lean" || reason.ToSi > 0 ? share.Si : -share.Si;

    private static double Agreeing(ToleranceReport flies) => Math.Max(flies.AsIntended, Math.Max(flies.Leaning, flies.Flipped));

    private static QuantityQuery Query(string name) => QuantityQuery.Known(name);
}
