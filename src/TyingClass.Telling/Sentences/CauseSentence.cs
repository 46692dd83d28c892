using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>Why a fly rides as it does: the two or three parts with the most say, from the ledger.</summary>
public static class CauseSentence
{
    public const string NoClearSay = "At this attitude no part has a clear say in which way up it rides.";

    // A share that is told as 0.00 is none.
    private const double LeastGmm = 0.005;

    /// <summary>Soaked, with what is the water's doing and not the weight's.</summary>
    public static string Of(SolvedFly fly, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return $"{Of(fly.Report.Intent, fly.Report.Soaked, units)} {LedgerSentence.ByWater(fly, fly.Report.Soaked, units)}".TrimEnd();
    }

    public static string Of(Intent intent, StateReport state, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(state);
        LedgerEntry[] top = [.. state.Ledger.OrderByDescending(e => Math.Abs(e.KeelMomentGmm)).Take(3).Where(e => Math.Abs(e.KeelMomentGmm) >= LeastGmm)];
        if (top.Length == 0) return NoClearSay;
        string meant = FlyWords.Way(intent);
        string helps = Grammar.And(top.Where(e => e.KeelMomentGmm > 0).Select(Term)), hinders = Grammar.And(top.Where(e => e.KeelMomentGmm < 0).Select(Term));
        string sides = (helps.Length, hinders.Length) switch
        {
            (0, _) => $"What turns it away from {meant}: {hinders}.",
            (_, 0) => $"What holds it {meant}: {helps}.",
            _ => $"What holds it {meant}: {helps}. What turns it over: {hinders}.",
        };
        string sum = Moment(state.Ledger.Sum(e => e.KeelMomentGmm));
        bool all = top.Length == state.Ledger.Count(e => Math.Abs(e.KeelMomentGmm) >= LeastGmm);
        bool adds = !all || Numbers.Adds(top.Select(e => Moment(e.KeelMomentGmm)), sum);
        return $"{sides} All parts together{(adds ? "" : $", {Numbers.EachRounded}")}: {sum}.";

        string Term(LedgerEntry e) => $"{(e.Part == "bend" ? FlyWords.Bend : e.Part)} {Moment(e.KeelMomentGmm)}";
        string Moment(double gmm) => Magnitudes.KeelMoment.SaySigned(Si.Gmm(gmm), units);
    }
}
