using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Revisions;

/// <summary>What a mentor is told of a fly, in sentences and in the reader's units.</summary>
/// <param name="WhatItWouldDo">The verdict with its numbers.</param>
/// <param name="Why">The largest terms of the moment ledger.</param>
/// <param name="Findings">Each with its code; the verdict's own finding is left out, being said already.</param>
public sealed record Diagnosis(string WhatItWouldDo, string Why, ImmutableArray<SaidFinding> Findings, ImmutableArray<Caution> Cautions)
{
    /// <summary>How far the model can be trusted with it.</summary>
    public required string Doubt { get; init; }

    public static Diagnosis Of(SolvedFly fly, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(fly);
        BalanceReport report = fly.Report;
        return new Diagnosis(
            VerdictSentence.Of(report, units),
            CauseSentence.Of(fly, units),
            [.. report.Findings.Where(f => f is not VerdictFinding).Select(f => FindingSentence.Say(f, report, units))],
            Recipes.Catalogue.Cautions.For(fly.Recipe, fly.Built.Body))
        {
            Doubt = DoubtSentence.Of(fly.Doubt),
        };
    }
}
