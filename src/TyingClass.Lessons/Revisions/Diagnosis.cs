using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Revisions;

/// <summary>What a mentor is told of a fly, in sentences and in the reader's units.</summary>
/// <param name="WhatItWouldDo">The verdict with its numbers.</param>
/// <param name="Why">The largest terms of the moment ledger.</param>
/// <param name="Findings">Each with its code; the verdict's own finding is left out, being said already.</param>
public sealed record Diagnosis(string WhatItWouldDo, string Why, ImmutableArray<Finding> Findings, ImmutableArray<Caution> Cautions)
{
    public static Diagnosis Of(SolvedFly fly, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(fly);
        BalanceReport report = fly.Report;
        return new Diagnosis(
            Said.Verdict(report, units),
            Said.Ledger(report, units),
            [.. report.Findings.Where(f => f.Text != report.Verdict.Text)],
            Recipes.Catalogue.Cautions.For(fly.Recipe));
    }
}
