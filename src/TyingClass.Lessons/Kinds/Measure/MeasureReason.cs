using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>What a figure hangs on. Whoever missed it is told where to look, and not how much: it may be tried again.</summary>
internal static class MeasureReason
{
    /// <param name="beside">How the answer stands to the key, "is too large"; null where it passed.</param>
    /// <param name="told">The figure may be told.</param>
    public static AnswerReason Of(QuantityQuery query, FlyFigures fly, string? beside, bool told, UnitSystem units)
    {
        if (!told && OfSign(query, beside) is { } sign) return sign;
        Reason reason = OneFlyReason.Of(query, fly);
        string first = (query.Quantity.Name, beside) switch
        {
            ("sink rate", null) => OpeningSentence.OfRate(reason),
            ("sink rate", _) => OpeningSentence.ToLookAtRate($"Your figure {beside}"),
            (_, null) => OpeningSentence.OfOne(reason),
            _ => OpeningSentence.ToLookAt(reason, $"Your figure {beside}"),
        };
        if (told)
        {
            AnswerReason shown = AnswerReason.Of(first, units, reason).Shown(reason, FlyPair.None);
            return shown with { Picture = shown.Picture! with { SpeedMS = query.SpeedMS } };
        }

        // What a sum of masses is made from may be told; the one asked for may not.
        string masses = query.Quantity.Name.StartsWith("mass", StringComparison.Ordinal) || query.Quantity.Name == "hang angle"
            ? MassSentence.Most(fly.Body, units, query.Quantity.Name == "mass of" ? query.Part : null, query.Quantity.Dimension != Dimension.Mass)
            : "";
        return AnswerReason.Silent(first, $"{(query.Part is null ? WhySentence.Names(reason) : "")} {masses}".Trim());
    }

    /// <summary>Where the lesson's sum is known line by line and may not be told yet.</summary>
    /// <param name="what">Its first line's.</param>
    public static AnswerReason OfSum(QuantityQuery query, FlyFigures fly, string what, string beside)
    {
        if (OfSign(query, beside) is { } sign) return sign;
        Reason reason = OneFlyReason.Of(query, fly);
        return AnswerReason.Silent(OpeningSentence.ToLookAtSum(reason, what, $"Your figure {beside}"),
            query.Part is null && !OpeningSentence.IsOfPlaces(reason) ? WhySentence.Names(reason) : "");
    }

    // What has a say in how much is no answer to who has it the wrong way round.
    private static AnswerReason? OfSign(QuantityQuery query, string? beside) =>
        beside == ComparisonWords.WrongSign && OpeningSentence.OfWrongSign(query.Quantity.Name, $"Your figure {beside}") is { } first
            ? AnswerReason.Silent(first, "") : null;

    /// <summary>Where something is done to the fly before it is measured: of that, and of nothing else.</summary>
    public static AnswerReason OfChange(QuantityQuery query, (FlyFigures Before, FlyFigures After) fly, string? beside, bool told, UnitSystem units)
    {
        Reason reason = ChangeReason.Of(query, fly.Before, fly.After);
        if (!told) return OfSign(query, beside) ?? AnswerReason.Silent(OpeningSentence.ToLookAtChange(reason, $"Your figure {beside}"), "");
        return AnswerReason.Of(OpeningSentence.OfChange(reason), units, reason).Shown(reason, FlyPair.Change);
    }
}
