using TyingClass.Balance.Bodies;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Predict;

/// <summary>The flies of a prediction, solved again with the thing that a reason names done otherwise. All figures SI, angles in degrees.</summary>
internal sealed class ReasonFlies
{
    public const double MM = 1e-3;
    private readonly string _text;

    public ReasonFlies(Exercise exercise)
    {
        PredictTask task = (PredictTask)exercise.Task;
        _text = exercise.RecipeText!;
        First = Fly(_text);
        string? second = task.ChangedRecipe ?? task.OtherRecipes.FirstOrDefault();
        Second = second is null ? First : Fly(second);
    }

    /// <summary>The fly of the question, or as it was before the change.</summary>
    public FlyFigures First { get; }

    /// <summary>The other of two, or after the change; the same where there is one.</summary>
    public FlyFigures Second { get; }

    public double A(string quantity) => Of(First, quantity);

    public double B(string quantity) => Of(Second, quantity);

    /// <summary>What the change does.</summary>
    public double D(string quantity) => B(quantity) - A(quantity);

    /// <summary>What two quantities of the first fly differ by.</summary>
    public double Gap(string quantity, string other) => A(quantity) - A(other);

    /// <summary>Of the fly that has more of what is asked, and of the other.</summary>
    public (FlyFigures More, FlyFigures Less) Ranked(string asked) => B(asked) > A(asked) ? (Second, First) : (First, Second);

    /// <summary>The first fly with lines of its recipe set otherwise; a value of null takes the line away.</summary>
    public double Set(string quantity, params (string Path, string? Value)[] lines)
    {
        RecipeDraft draft = RecipeDraft.Parse(_text).Value!;
        foreach ((string path, string? value) in lines) draft = draft.With(path, value);
        return Of(new FlyFigures(RecipeParser.Parse(draft).Value!), quantity);
    }

    public static double Of(FlyFigures fly, string quantity)
    {
        Assert.True(QuantityQuery.TryParse(quantity, out QuantityQuery query, out string error), error);
        double si = query.Of(fly) ?? throw new InvalidOperationException($"{quantity} has no meaning for {fly.Recipe.Name}.");
        return query.Quantity.Dimension == Dimension.Angle ? si * 180 / Math.PI : si;
    }

    /// <summary>Were no air left in its dressing.</summary>
    public static double Airless(FlyFigures fly, string quantity) => Of(fly.Tied(Of(fly.Body, p => p with { Air = [] }), null), quantity);

    /// <summary>Could the water not take hold of one part.</summary>
    public static double Ungripped(FlyFigures fly, string part, string quantity) =>
        Of(fly.Tied(Of(fly.Body, p => p.Name == part ? p with { Drag = [], SideForces = [] } : p), null), quantity);

    public static double Without(FlyFigures fly, string part, string quantity) =>
        Of(fly.Tied(fly.Body with { Parts = [.. fly.Body.Parts.Where(p => p.Name != part)] }, null), quantity);

    /// <summary>Mass less the water pushed aside, soaked, kg: of a part or of a piece of the hook.</summary>
    public static double WetMassKg(FlyFigures fly, string part)
    {
        BodyPart named = fly.Body.Parts.SelectMany(p => p.Pieces.Prepend(p)).First(p => p.Name == part);
        return MassMoments.Of([named], double.PositiveInfinity).WetMassKg(fly.Conditions.Water.DensityKgM3);
    }

    /// <summary>The heaviest of what is tied in for its weight.</summary>
    public static string Metal(FlyFigures fly) => fly.Body.Parts.Where(p => p.IsWeight).MaxBy(p => p.Masses.Sum(m => m.MassKg))!.Name;

    /// <summary>All that holds it the way it is meant, over all that turns it, by the ledger of the first fly.</summary>
    public double ForOverAgainst()
    {
        double[] moments = [.. First.Ledger(Keel).Select(e => e.KeelMomentGmm)];
        return moments.Where(m => m > 0).Sum() / -moments.Where(m => m < 0).Sum();
    }

    /// <summary>The moment ledgers, for whoever words a reason anew.</summary>
    public string Ledgers() => $"{Ledger(First)}; {Ledger(Second)}";

    private static QuantityQuery Keel => QuantityQuery.TryParse("keel height", out QuantityQuery query, out string error)
        ? query : throw new InvalidOperationException(error);

    private static string Ledger(FlyFigures fly) =>
        $"keel {Keel.Of(fly)}: {string.Join(", ", fly.Ledger(Keel).Select(e => FormattableString.Invariant($"{e.Part} {e.KeelMomentGmm:F3}")))}";

    private static FlyBody Of(FlyBody body, Func<BodyPart, BodyPart> otherwise) => body with { Parts = [.. body.Parts.Select(otherwise)] };

    private static FlyFigures Fly(string text) => new(RecipeParser.Parse(text).Value!);
}
