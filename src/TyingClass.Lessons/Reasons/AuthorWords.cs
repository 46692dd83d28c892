using System.Text.RegularExpressions;
using TyingClass.Lessons.Exercises;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>
/// What an exercise speaks of, by its title, prompt and hints. Where each of several things would decide a fly if it were left off, the one its author teaches
/// is the one to tell.
/// </summary>
internal sealed partial class AuthorWords(Exercise exercise)
{
    // With a third of the most say a thing decides too; with less it would be no honest answer.
    private const double HonestShare = 1.0 / 3;

    private readonly string _text = Tags().Replace($"{exercise.Title} {exercise.PromptHtml} {string.Join(' ', exercise.Hints)}", " ");

    /// <summary>How often it is spoken of.</summary>
    public int Speaks(Thing thing) => thing.Kind switch
    {
        ThingKind.Eye => Count(@"(eye|ring)"),
        ThingKind.Knot => Count(@"(knot|loop|cinched)"),
        ThingKind.Part when thing.Part.StartsWith("wraps", StringComparison.Ordinal) => Count(@"(wraps|wire|turns)"),
        ThingKind.Part when thing.Part == "dumbbell eyes" => Count(@"eyes"),
        ThingKind.Part when thing.Part.StartsWith("wing", StringComparison.Ordinal) => Count(@"(wing|hair|fur|strip)"),
        ThingKind.Part => Count(Regex.Escape(thing.Part)),
        _ => 0,
    };

    /// <summary>Of what turns a sinking fly the same way, the metal that the author speaks of comes first.</summary>
    public Reason First(Reason reason)
    {
        if (reason is not { Form: ReasonForm.Without, Quantity: "pitch while sinking", Top: { } top }) return reason;
        ReasonShare? spoken = reason.Shares
            .Where(s => WayOpening.IsMetal(s.What.Part) && s.Si * top.Si > 0 && s.SaySi >= HonestShare * top.SaySi && Speaks(s.What) > 0)
            .MaxBy(s => s.SaySi);
        return spoken is null ? reason : reason with { Shares = [spoken, .. reason.Shares.Where(s => s != spoken)] };
    }

    private int Count(string word) => Regex.Count(_text, $@"\b{word}\b", RegexOptions.IgnoreCase);

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();
}
