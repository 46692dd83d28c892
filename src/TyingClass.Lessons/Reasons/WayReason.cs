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

    /// <summary>What leads the shares decides by itself.</summary>
    public bool NamesTop { get; init; } = true;

    /// <summary>The moment ledger, where it says no other than the first sentence; else null.</summary>
    public string? Ledger { get; init; }

    private const double OfOneMind = 0.75;
    private const double LopsidedDeg = 15;
    private const double UprightDeg = 20;

    // With so little of its keel height left, a fly is hardly held at all.
    private const double Barely = 0.2;

    /// <summary>What is told, and how the fly is drawn beside it.</summary>
    public AnswerReason Told(UnitSystem units)
    {
        AnswerReason told = AnswerReason.Of(First, units, Reason) with
        {
            NamesTop = NamesTop || ByHands,
            Picture = AskedPicture.OfWay(Reason, Pair, NamesTop || ByHands),
        };
        if (!NamesTop && !ByHands && WhySentence.NoneTurns(Reason, units) is { } none) told = told with { Why = none };
        return ByHands || Ledger is null ? told : told with { Why = $"{told.Why} {Ledger}" };
    }

    /// <param name="author">Decides between several things that would each turn the fly; null where no exercise asks.</param>
    public static WayReason Of(FlyFigures fly, UnitSystem units, AuthorWords? author = null)
    {
        WayReason way = Found(fly, units, author);
        return way with
        {
            Reason = way.Reason with { LeansOver = LeansOver(fly) },
            Ledger = Agrees(fly, way) ? CauseSentence.Of(fly.Solved, units) : null,
        };
    }

    /// <summary>It lies over to one side, neither upright nor turned right over.</summary>
    public static bool LeansOver(FlyFigures fly) =>
        fly.Tow(Query("lean")) is { Settles: true, LeanDeg: > LopsidedDeg and < 180 - 2 * LopsidedDeg };

    private static WayReason Found(FlyFigures fly, UnitSystem units, AuthorWords? author)
    {
        StateReport state = fly.Report.Soaked;
        VerdictKind verdict = state.Verdict.Kind;
        FlyPair pair = verdict == VerdictKind.Undecided && state.Attitudes.Length > 1 ? FlyPair.Ways : FlyPair.None;
        if (fly.Body.Parts.Length == 1)
            return new WayReason(OneFlyReason.Without(Query("lean"), fly), WayOpening.OfBareHook(), false) { Pair = pair };
        bool asMeant = verdict is VerdictKind.RidesAsIntended or VerdictKind.Tilts;
        string now = verdict == VerdictKind.Undecided ? RideWords.Undecided : RideWords.Rides(fly.Body.Intent, state.AtFishingSpeed, units);
        if (Mended(fly, asMeant) is { } mended)
        {
            TowReport otherwise = mended.Fly.Tow(Query("keel height"));
            string would = asMeant ? RideWords.WouldLean(otherwise, units) : RideWords.WouldRide(fly.Body.Intent, otherwise);
            string does = verdict != VerdictKind.Undecided ? now
                : pair == FlyPair.Ways || state.AtFishingSpeed.LeanDeg > UprightDeg ? RideWords.EitherWay : RideWords.BarelyHeld(fly.Body.Intent);
            Reason other = Without(fly, out _);
            ReasonShare share = mended.Share(QuantityQuery.Known(other.Quantity), other.ToSi);
            other = other with { Shares = [share, .. other.Shares.Where(s => s.What != share.What)] };
            return new WayReason(other, WayOpening.OfMended(share, does, would), false)
            {
                Pair = pair,
            };
        }

        if (verdict == VerdictKind.Undecided && Agreeing(state.Tolerance) < OfOneMind)
        {
            Reason hands = OneFlyReason.Of(Query("rides as intended"), fly);
            if (hands.Top is not null) return new WayReason(hands, OpeningSentence.OfOne(hands), true) { Pair = pair };
        }

        Reason reason = Without(fly, out Dictionary<Thing, TowReport> lacking);
        if (reason.Top is null) return new WayReason(reason, OpeningSentence.OfOne(reason), false);
        string rides = $"would {now.Replace("rides", "ride", StringComparison.Ordinal)}";
        // What turns it by being left off comes before what merely has much say; what leaves it hardly held comes next.
        ReasonShare[] turns = [.. reason.Shares.Where(Turns), .. reason.Shares.Where(s => !Turns(s) && IsBarelyHeld(reason, s))];
        if (turns.Length > 1 && author is not null) turns = [.. turns.OrderByDescending(s => author.Speaks(s.What))];
        if (turns.Length > 0) reason = reason with { Shares = [turns[0], .. reason.Shares.Where(s => s != turns[0])] };
        ReasonShare top = reason.Shares[0];
        string? without = Would(top.What) is { } there && there != rides ? there : IsBarelyHeld(reason, top) ? RideWords.WouldBarely : Would(top.What);
        if (without == rides && Most(fly, reason.ToSi) is { } most)
        {
            Thing? metal = asMeant ? null : Metal(fly);
            return new WayReason(reason, WayOpening.OfMany(most, metal, now), false) { Pair = pair, NamesTop = false };
        }

        string first = top.What.Kind == ThingKind.Eye && without is not null && without != rides ? Ring(fly, now, without)
            : WayOpening.Of(top.What, now, without);
        return new WayReason(reason, first, false) { Pair = pair };

        bool Turns(ReasonShare share) => Would(share.What) is { } other && other != rides;
        string? Would(Thing what) => lacking.TryGetValue(what, out TowReport? tow) ? RideWords.WouldRide(fly.Body.Intent, tow) : null;
    }

    private static Reason Without(FlyFigures fly, out Dictionary<Thing, TowReport> lacking)
    {
        TowReport tow = fly.Report.Soaked.AtFishingSpeed;
        bool leans = tow.LeanDeg is > LopsidedDeg and < 180 - LopsidedDeg || tow.KeelHeightMm.For(fly.Body.Intent) is null;
        QuantityQuery query = fly.Report.Soaked.Verdict.Kind == VerdictKind.Hangs ? Query("pitch") : Query(leans ? "lean" : "keel height");
        Dictionary<Thing, TowReport> seen = [];
        Reason reason = OneFlyReason.Without(query, fly, (what, without) => seen[what] = without.Tow(query));
        lacking = seen;
        return reason with { Shares = [.. reason.Shares.OrderByDescending(s => Bearing(reason, s))] };
    }

    /// <summary>
    /// The one part that, set otherwise, would let the fly ride as it is meant; a crooked one before one on the wrong side. Where the verdict is that most of
    /// its like have the right side up, and yet it is said to lean, a crooked one only.
    /// </summary>
    private static MendedPart? Mended(FlyFigures fly, bool asMeant)
    {
        double leanDeg = fly.Tow(Query("lean")).LeanDeg;
        if (asMeant && leanDeg < UprightDeg) return null;
        double now = Keel(fly) ?? 0, least = Query("keel height").Quantity.NoticeableSi, leastDeg = Query("lean").Quantity.NoticeableSi * 180 / Math.PI;
        return Best(MendedPart.Straightened(fly)) ?? (asMeant ? null : Best(MendedPart.OnTheOtherSide(fly)));

        MendedPart? Best(IEnumerable<MendedPart> mended) => mended.Where(m => m.Fly.Tow(Query("keel height")) is { Settles: true, LeanDeg: < UprightDeg })
            .Where(m => Keel(m.Fly) is { } keel && keel > least && (keel > now + least || (LeansOver(fly) && LeansLess(m)))).MaxBy(m => Keel(m.Fly));
        bool LeansLess(MendedPart mended) => mended.Fly.Tow(Query("lean")).LeanDeg <= leanDeg - leastDeg;
        static double? Keel(FlyFigures fly) => Query("keel height").Of(fly);
    }

    private static bool IsBarelyHeld(Reason reason, ReasonShare share) =>
        reason is { Quantity: "keel height", ToSi: > 0 and { } keel } && share.FromSi is { } left && left < Barely * keel;

    private static string Ring(FlyFigures fly, string now, string without)
    {
        bool below = Query("level-line keel").Of(fly) > 0, turnedOver = fly.Report.Soaked.AtFishingSpeed.LeanDeg > 90;
        return WayOpening.OfRing(fly.Recipe.Hook.Eye.ToString().ToLowerInvariant(), below != turnedOver, now, without);
    }

    // What the sum of moments does not count cannot be read from it.
    private static bool Agrees(FlyFigures fly, WayReason way)
    {
        if (way.Reason.Top is not { What: { Kind: ThingKind.Part } what } || !way.NamesTop) return true;
        bool upright = fly.Report.Soaked.AtFishingSpeed.LeanDeg < 90;
        return fly.Report.Soaked.Ledger.Any(e => e.Part == what.Part && e.KeelMomentGmm > 0 == upright && Math.Abs(e.KeelMomentGmm) >= 0.005);
    }

    // Of what is tied on and of the hook's own wire, what the ledger counts highest for the way it rides.
    private static Thing? Most(FlyFigures fly, double? keelSi)
    {
        LedgerEntry[] speaking = [.. fly.Ledger(Query("keel height")).Where(e => keelSi is > 0 ? e.KeelMomentGmm > 0 : e.KeelMomentGmm < 0)];
        if (speaking.Length == 0) return null;
        string most = speaking.MaxBy(e => Math.Abs(e.KeelMomentGmm)).Part;
        return most == "knot" ? new Thing(ThingKind.Knot) : new Thing(ThingKind.Part, most);
    }

    // The heaviest metal that is tied on.
    private static Thing? Metal(FlyFigures fly) =>
        fly.Body.Parts.Where(p => WayOpening.IsMetal(p.Name)).MaxBy(p => p.Masses.Sum(m => m.MassKg)) is { } metal
            ? new Thing(ThingKind.Part, metal.Name) : null;

    // What brings it to where it is, before what merely has much say.
    private static double Bearing(Reason reason, ReasonShare share) => share.FromSi is null ? 0
        : reason.Quantity == "lean" || reason.ToSi > 0 ? share.Si : -share.Si;

    private static double Agreeing(ToleranceReport flies) => Math.Max(flies.AsIntended, Math.Max(flies.Leaning, flies.Flipped));

    private static QuantityQuery Query(string name) => QuantityQuery.Known(name);
}
