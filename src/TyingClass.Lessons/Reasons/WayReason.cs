using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>Why a fly rides the way up it does.</summary>
/// <param name="First">The one sentence that says it.</param>
/// <param name="ByHands">True where flies tied alike do not agree, so that the errors decide.</param>
internal sealed record WayReason(Reason Reason, string First, bool ByHands)
{
    /// <summary>Both ways, of a fly that can ride either.</summary>
    public FlyPair Pair { get; init; }

    /// <summary>What leads the shares decides by itself.</summary>
    public bool NamesTop { get; init; } = true;

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
        string rides = $"would {now.Replace("rides", "ride", StringComparison.Ordinal)}";
        // What turns it by being left off comes before what merely has much say.
        if (reason.Shares.FirstOrDefault(s => Without(s.What) is { } other && other != rides) is { } turns && turns != top)
        {
            reason = reason with { Shares = [turns, .. reason.Shares.Where(s => s != turns)] };
            top = turns;
        }

        string? without = Without(top.What);
        if (without == rides && Ledger(fly, reason.ToSi) is { } most)
            return new WayReason(reason, OpeningSentence.OfMany(most, now), false) { Pair = pair, NamesTop = false };
        bool barely = query.Quantity.Name == "keel height" && reason.ToSi is > 0 and { } keel && top.FromSi is > 0 and { } left && left < Barely * keel;
        return new WayReason(reason, OpeningSentence.OfWay(top.What, now, barely ? RideWords.WouldBarely : without), false) { Pair = pair };

        string? Without(Thing what) => lacking.TryGetValue(what, out TowReport? there) ? RideWords.WouldRide(fly.Body.Intent, there) : null;
    }

    // Of what is tied on and of the hook's own wire, what the ledger counts highest for the way it rides.
    private static Thing? Ledger(FlyFigures fly, double? keelSi)
    {
        LedgerEntry[] speaking = [.. fly.Ledger(Query("keel height")).Where(e => keelSi is > 0 ? e.KeelMomentGmm > 0 : e.KeelMomentGmm < 0)];
        if (speaking.Length == 0) return null;
        string most = speaking.MaxBy(e => Math.Abs(e.KeelMomentGmm)).Part;
        return most == "knot" ? new Thing(ThingKind.Knot) : new Thing(ThingKind.Part, most);
    }

    // What brings it to where it is, before what merely has much say.
    private static double Bearing(Reason reason, ReasonShare share) => share.FromSi is null ? 0
        : reason.Quantity == "lean" || reason.ToSi > 0 ? share.Si : -share.Si;

    private static double Agreeing(ToleranceReport flies) => Math.Max(flies.AsIntended, Math.Max(flies.Leaning, flies.Flipped));

    private static QuantityQuery Query(string name) => QuantityQuery.Known(name);
}
