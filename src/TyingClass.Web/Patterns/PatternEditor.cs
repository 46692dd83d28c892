using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Patterns;

/// <summary>A pattern's recipe being written.</summary>
public sealed record PatternEditor
{
    /// <summary>Where its form is sent.</summary>
    public required string Address { get; init; }

    public required Typed Typed { get; init; }

    /// <summary>What was done, in the tyer's words.</summary>
    public string Note { get; init; } = "";

    /// <summary>The revision it was begun from; 0 for a new pattern.</summary>
    public int Expected { get; init; }

    /// <summary>The revision saved meanwhile from elsewhere.</summary>
    public PatternRevision? Meanwhile { get; init; }

    public string? Notice { get; init; }

    public ImmutableArray<AnswerProblem> Problems { get; init; } = [];

    public RecipeFormView? Form { get; init; }

    public IHtmlContent? Picture { get; init; }

    public int Rows => Math.Clamp(Typed.Text.Count(c => c == '\n') + 3, 12, 60);

    public string SaveWords => Expected == 0 ? "Save this pattern" : $"Save as revision {Expected + 1}";
}

/// <param name="Kept">The pattern, when it was saved.</param>
/// <param name="Editor">The editor again, when it was not; null for a pattern this person does not have.</param>
public sealed record PatternResult(Pattern? Kept, PatternEditor? Editor, int Status = StatusCodes.Status200OK);
