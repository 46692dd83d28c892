using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Conditions;

/// <summary>What a condition is held against.</summary>
/// <param name="Fly">The fly submitted, or the fly asked about.</param>
/// <param name="Start">The fly the exercise starts from, in a repair.</param>
/// <param name="AnswerText">The answer as typed, for a choice.</param>
/// <param name="AnswerSi">The answer as a number, for a measure.</param>
/// <param name="ToleranceSi">How near counts as right, for a measure.</param>
public sealed record ConditionFacts(FlyFigures? Fly, FlyFigures? Start, string? AnswerText = null, double? AnswerSi = null, double ToleranceSi = 0)
{
    /// <summary>What the answer says, where it says more than one thing.</summary>
    public ImmutableArray<string> AnswerParts { get; init; } = [];

    internal IEnumerable<string> Answers => AnswerText is null ? AnswerParts : [AnswerText, .. AnswerParts];
}

/// <summary>Something that holds or not. One that speaks of a figure the fly does not have does not hold.</summary>
public abstract record Condition
{
    public abstract bool Holds(ConditionFacts facts);

    /// <summary>The quantities it speaks of.</summary>
    internal virtual IEnumerable<QuantityQuery> Quantities => [];

    /// <summary>The most that it lets a quantity be, SI; null where it sets no upper end.</summary>
    internal virtual double? HighestOf(QuantityQuery query) => null;
}

internal sealed record AllOf(ImmutableArray<Condition> Parts) : Condition
{
    internal override IEnumerable<QuantityQuery> Quantities => Parts.SelectMany(p => p.Quantities);

    internal override double? HighestOf(QuantityQuery query) => Parts.Min(p => p.HighestOf(query));

    public override bool Holds(ConditionFacts facts) => Parts.All(p => p.Holds(facts));
}

internal sealed record AnyOf(ImmutableArray<Condition> Parts) : Condition
{
    internal override IEnumerable<QuantityQuery> Quantities => Parts.SelectMany(p => p.Quantities);

    public override bool Holds(ConditionFacts facts) => Parts.Any(p => p.Holds(facts));
}

internal enum Relation { Below, AtMost, Equal, NotEqual, AtLeast, Above, Near }

internal sealed record RelationCondition(Expression Left, Relation Relation, Expression Right) : Condition
{
    internal override IEnumerable<QuantityQuery> Quantities => Left.Quantities.Concat(Right.Quantities);

    internal override double? HighestOf(QuantityQuery query) =>
        Relation is Relation.Below or Relation.AtMost && Left.Quantities.ToArray() is [var only] && only == query && !Right.Quantities.Any()
            ? Right.Value(new ConditionFacts(null, null)) : null;

    public override bool Holds(ConditionFacts facts)
    {
        if (Left.Value(facts) is not { } a || Right.Value(facts) is not { } b) return false;
        double slack = 1e-9 * Math.Max(Math.Abs(a), Math.Abs(b));
        return Relation switch
        {
            Relation.Below => a < b - slack,
            Relation.AtMost => a <= b + slack,
            Relation.Equal => Math.Abs(a - b) <= slack,
            Relation.NotEqual => Math.Abs(a - b) > slack,
            Relation.AtLeast => a >= b - slack,
            Relation.Above => a > b + slack,
            _ => Math.Abs(a - b) <= Math.Max(facts.ToleranceSi, slack),
        };
    }
}

internal sealed record AnswerIs(string Text, bool Not) : Condition
{
    public override bool Holds(ConditionFacts facts) =>
        facts.Answers.ToArray() is { Length: > 0 } said && said.Any(a => string.Equals(a.Trim(), Text.Trim(), StringComparison.OrdinalIgnoreCase)) != Not;
}

internal enum Trend { Rises, Falls, Unchanged }

internal sealed record Moves(QuantityQuery Quantity, Trend Trend) : Condition
{
    internal override IEnumerable<QuantityQuery> Quantities => [Quantity];

    public override bool Holds(ConditionFacts facts)
    {
        if (facts.Fly is null || facts.Start is null || Quantity.Of(facts.Fly) is not { } now || Quantity.Of(facts.Start) is not { } before) return false;
        double change = now - before, slack = 1e-6 * Quantity.Quantity.NoticeableSi;
        return Trend switch
        {
            Trend.Rises => change > slack,
            Trend.Falls => change < -slack,
            _ => Math.Abs(change) <= slack,
        };
    }
}

internal enum Alteration { Changed, Unchanged, Heavier, Lighter, Forward, Back }

/// <param name="Path">"hook.eye", "parts[0].size"; null when a part is named.</param>
/// <param name="Part">"cone", "wing 2".</param>
internal sealed record Altered(string? Path, string? Part, Alteration Alteration) : Condition
{
    public override bool Holds(ConditionFacts facts)
    {
        if (facts.Fly is null || facts.Start is null) return false;
        if (Alteration is Alteration.Changed or Alteration.Unchanged)
        {
            string prefix = Path ?? PathOf(Part!, facts.Start) ?? "";
            bool changed = ChangeList.Between(facts.Start.Recipe, facts.Fly.Recipe)
                .Any(c =>
                c.Path == prefix || c.Path.StartsWith(prefix + ".", StringComparison.Ordinal)
                    || (prefix == "parts" && c.Path.StartsWith("parts[", StringComparison.Ordinal)));
            return changed == (Alteration == Alteration.Changed);
        }

        double? before = Figure(facts.Start), now = Figure(facts.Fly);
        return Alteration is Alteration.Heavier or Alteration.Back ? now > before : now < before;
    }

    // The mass of the part as built, so that a bigger bead, a denser one and a weighed one all count; a part's place is its front edge.
    private double? Figure(FlyFigures fly)
    {
        int index = FlyBuilder.Names(fly.Recipe.Parts).IndexOf(Part!);
        if (Part != "hook" && index < 0) return null;
        return Alteration switch
        {
            Alteration.Heavier or Alteration.Lighter => Units.Rounded(fly.Body.Parts[index + 1].Masses.Sum(m => m.MassKg)),
            _ => index < 0 ? null : fly.Recipe.Parts[index].AtM,
        };
    }

    private static string? PathOf(string part, FlyFigures start) =>
        part == "hook" ? "hook" : FlyBuilder.Names(start.Recipe.Parts).IndexOf(part) is >= 0 and var i ? $"parts[{i}]" : null;
}
