using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Bench;

/// <summary>Everything the bench shows of one solved fly.</summary>
public sealed record BenchResult
{
    public required SolvedFly Fly { get; init; }

    public required StateReport State { get; init; }

    /// <summary>One or two words: "rides as intended".</summary>
    public required string VerdictWords { get; init; }

    /// <summary>"It rides as intended", "It is undecided".</summary>
    public string Headline => IsUndecided ? $"It is {VerdictWords}" : $"It {VerdictWords}";

    public required bool IsUndecided { get; init; }

    public required string Sentence { get; init; }

    public required string Cause { get; init; }

    public required ImmutableArray<SaidFinding> Findings { get; init; }

    /// <summary>Of the ledger's figures those that weight alone cannot make; empty for none.</summary>
    public required string ByWater { get; init; }

    public required IHtmlContent Side { get; init; }

    public required IHtmlContent Ledger { get; init; }

    /// <summary>Null while the fly is being pulled about.</summary>
    public BenchRest? Rest { get; init; }

    public bool IsAsIntended => State.Verdict.Kind == VerdictKind.RidesAsIntended;

    /// <param name="soaked">Look at the soaked state rather than at the seconds solved for.</param>
    public static BenchResult Of(SolvedFly fly, bool soaked, UnitSystem units)
    {
        StateReport state = soaked ? fly.Report.Soaked : fly.Report.PartlySoaked ?? fly.Report.Fresh;
        DrawingOptions Named(string prefix) => Options(prefix, state, units);
        return new BenchResult
        {
            Fly = fly,
            State = state,
            VerdictWords = FlyWords.Verdict(state.Verdict.Kind),
            IsUndecided = state.Verdict.Kind == VerdictKind.Undecided,
            Sentence = VerdictSentence.Of(fly.Report.Intent, state, units),
            Cause = CauseSentence.Of(fly.Report.Intent, state, units),
            ByWater = LedgerSentence.ByWater(fly, state, units),
            Findings = [.. fly.Report.Findings.Select(f => FindingSentence.Say(f, fly.Report, units))],
            Side = Html(FlyDrawing.Side(fly, Named("side"))),
            Ledger = Html(Curves.Ledger(fly, Named("ledger"))),
        };
    }

    internal static DrawingOptions Options(string prefix, StateReport state, UnitSystem units) =>
        new() { IdPrefix = "bench-" + prefix, Units = units, State = state.State, WidthPx = 520 };

    internal static IHtmlContent Html(string svg) => new HtmlString(svg);
}
