using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Editing;

/// <summary>One attempt with its feedback, as a page shows it.</summary>
public sealed record AttemptView(Attempt Attempt)
{
    /// <summary>The fly that was sent in as it swims; in a repair, below the fly that was given.</summary>
    public IHtmlContent? Picture { get; init; }

    /// <summary>In a lesson, where the answer is known: the flies asked about, as they swim.</summary>
    public ImmutableArray<IHtmlContent> Swimming { get; init; } = [];

    /// <summary>Of the fly that was sent in. A bare hook stays as the cast leaves it: a share that rides as intended would say otherwise.</summary>
    public IEnumerable<KeptFigure> Figures => Attempt.Figures.IsEmpty || RecipeCard.Of(Attempt.AnswerText) is not { Parts.IsEmpty: true }
        ? Attempt.Figures
        : Attempt.Figures.Where(f => !f.Name.EndsWith("Share", StringComparison.Ordinal));

    /// <summary>How the figure asked for is worked out; null where that would tell what may still be found.</summary>
    public WorkedSum? Worked { get; init; }

    /// <summary>It may still be found without the sum, which waits to be asked for.</summary>
    public bool WorkedIsFolded { get; init; }

    /// <summary>The flies it was about, where those are not the ones the exercise began with.</summary>
    public ImmutableArray<RecipeCard> Cards { get; init; } = [];

    /// <summary>What the first part of its feedback is about; null for what the fly would do.</summary>
    public string? Heading { get; init; }

    /// <summary>Where the reasons given are derived; null where no one place does.</summary>
    public string? WorkedOutAt { get; init; }

    /// <summary>How far the model can be trusted with the fly it tells of; null where it tells of none, or of two.</summary>
    public string? Doubt { get; init; }

    /// <summary>The attempt that passed, where this one fell short after it; else null. The exercise stays passed.</summary>
    public int? PassedBefore { get; init; }

    /// <summary>False where the lesson has said already what holds for every hook.</summary>
    public bool CautionInFull { get; init; } = true;

    /// <summary>What differs when the same answer is graded by the engine of today; the old grade stands.</summary>
    public string? Regraded { get; init; }
}
