using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Conditions;

/// <summary>A number in a condition.</summary>
internal abstract record Expression(int Position)
{
    /// <summary>SI; null where there is none.</summary>
    public abstract double? Value(ConditionFacts facts);

    public virtual IEnumerable<QuantityQuery> Quantities => [];
}

/// <param name="Text">"0.4 mm", read once the other side says what it measures.</param>
internal sealed record Literal(string Text, double Si, int Position) : Expression(Position)
{
    public override double? Value(ConditionFacts facts) => Si;
}

internal sealed record FigureTerm(QuantityQuery Quantity, int Position) : Expression(Position)
{
    public override IEnumerable<QuantityQuery> Quantities => [Quantity];

    public override double? Value(ConditionFacts facts) => facts.Fly is { } fly ? Quantity.Of(fly) : null;
}

internal sealed record ChangeTerm(QuantityQuery Quantity, int Position) : Expression(Position)
{
    public override IEnumerable<QuantityQuery> Quantities => [Quantity];

    public override double? Value(ConditionFacts facts) =>
        facts.Fly is { } fly && facts.Start is { } start ? Quantity.Of(fly) - Quantity.Of(start) : null;
}

internal sealed record Answer(int Position) : Expression(Position)
{
    public override double? Value(ConditionFacts facts) => facts.AnswerSi;
}

internal sealed record Sum(Expression Left, Expression Right, int Sign) : Expression(Left.Position)
{
    public override IEnumerable<QuantityQuery> Quantities => Left.Quantities.Concat(Right.Quantities);

    public override double? Value(ConditionFacts facts) => Left.Value(facts) + Sign * Right.Value(facts);
}

/// <param name="Factor">A plain number.</param>
internal sealed record Scaled(Expression Of, double Factor, int Position) : Expression(Position)
{
    public override IEnumerable<QuantityQuery> Quantities => Of.Quantities;

    public override double? Value(ConditionFacts facts) => Factor * Of.Value(facts);
}

/// <summary>Gives every number of an expression the dimension of its neighbors, or says why none fits.</summary>
internal static class Dimensions
{
    /// <summary>Found among quantities and the answer; <paramref name="isKnown"/> false when there are only numbers.</summary>
    public static Dimension? Of(Expression expression, Dimension? ofAnswer, out bool isKnown)
    {
        switch (expression)
        {
            case FigureTerm f:
                isKnown = true;
                return f.Quantity.Quantity.Dimension;
            case ChangeTerm c:
                isKnown = true;
                return c.Quantity.Quantity.Dimension;
            case Answer:
                isKnown = true;
                return ofAnswer;
            case Scaled s:
                return Of(s.Of, ofAnswer, out isKnown);
            case Sum sum:
                Dimension? left = Of(sum.Left, ofAnswer, out isKnown);
                return isKnown ? left : Of(sum.Right, ofAnswer, out isKnown);
            default:
                isKnown = false;
                return null;
        }
    }

    /// <summary>The expression with its numbers read; throws <see cref="ConditionException"/> with the place of what does not fit.</summary>
    public static Expression Read(Expression expression, Dimension? wanted, Dimension? ofAnswer)
    {
        switch (expression)
        {
            case Literal literal:
                double si;
                string? error;
                bool read = wanted is { } dimension
                    ? Units.TryParse(literal.Text, dimension, out si, out error)
                    : (double.TryParse(literal.Text, System.Globalization.CultureInfo.InvariantCulture, out si),
                    error = $"“{literal.Text}” should be a plain number here.").Item1;
                return read ? literal with { Si = si } : throw new ConditionException(literal.Position, error!);
            case Scaled scaled:
                return scaled with { Of = Read(scaled.Of, wanted, ofAnswer) };
            case Sum sum:
                return sum with { Left = Read(sum.Left, wanted, ofAnswer), Right = Read(sum.Right, wanted, ofAnswer) };
            default:
                Dimension? own = Of(expression, ofAnswer, out _);
                return own == wanted ? expression
                    : throw new ConditionException(expression.Position, $"This is {Name(own)}, but {Name(wanted)} is compared with it.");
        }
    }

    private static string Name(Dimension? dimension) => dimension is { } d ? $"a {d.ToString().ToLowerInvariant()}" : "a count";
}

#pragma warning disable CA1032 // thrown and caught inside this folder only, always with a place
internal sealed class ConditionException(int position, string message) : Exception(message)
#pragma warning restore CA1032
{
    public int Position => position;
}
