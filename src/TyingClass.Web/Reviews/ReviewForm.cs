using System.Globalization;
using TyingClass.Web.Classes;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Reviews;

/// <summary>Everything typed on a review: one form, so that no button loses what was typed for another.</summary>
/// <param name="About">A <see cref="CommentChoice.Value"/>.</param>
/// <param name="Mine">The mentor's own version of the recipe.</param>
/// <param name="Despite">Why it is signed off all the same.</param>
public sealed record ReviewForm(int Version, string About, string Text, string Words, string Mine, string Despite)
{
    /// <summary>What the field with a corrected comment is called.</summary>
    public const string FixPrefix = "fix-";

    public static ReviewForm Blank { get; } = new(0, "whole", "", "", "", "");

    /// <summary>Their own version is sent although it does not ride as it is meant to.</summary>
    public bool AllTheSame { get; init; }

    /// <summary>By comment.</summary>
    public IReadOnlyDictionary<string, string> Fixes { get; init; } = new Dictionary<string, string>();

    public static ReviewForm Read(IFormCollection form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new ReviewForm(
            int.TryParse(form["version"], CultureInfo.InvariantCulture, out int version) ? version : 0,
            form["about"].ToString() is { Length: > 0 } about ? about : "whole",
            form["text"].ToString(), TickedPhrases.With(form, "words"), RecipePaste.Read(form["mine"]), form["despite"].ToString())
        {
            AllTheSame = form["same"] == "true",
            Fixes = form.Keys.Where(k => k.StartsWith(FixPrefix, StringComparison.Ordinal)).ToDictionary(k => k[FixPrefix.Length..], k => form[k].ToString()),
        };
    }

    /// <summary>Nothing would be lost by opening the page anew.</summary>
    /// <param name="theirs">The recipe that the field for one's own version begins with.</param>
    public bool IsBlank(string theirs) => Text.Length + Words.Length + Despite.Length == 0
        && (Mine.Trim().Length == 0 || Mine.Trim() == theirs.ReplaceLineEndings("\n").Trim());
}

/// <summary>What came of a button on a review.</summary>
/// <param name="Trouble">What to tell; null when it was done.</param>
/// <param name="Status">Of the answer where there is trouble.</param>
public sealed record ReviewAnswer(string? Trouble, int Status = StatusCodes.Status422UnprocessableEntity)
{
    /// <summary>It would be done if it were asked for all the same.</summary>
    public bool MayAllTheSame { get; init; }

    public static ReviewAnswer Done { get; } = new((string?)null);

    public static ReviewAnswer Missing { get; } = new("There is no such review.", StatusCodes.Status404NotFound);
}
