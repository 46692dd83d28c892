using Microsoft.AspNetCore.Html;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Editing;

/// <summary>One attempt with its feedback, as a page shows it.</summary>
public sealed record AttemptView(Attempt Attempt)
{
    /// <summary>The fly that was sent in as it swims; in a repair, below the fly that was given.</summary>
    public IHtmlContent? Picture { get; init; }

    /// <summary>What the first part of its feedback is about; null for what the fly would do.</summary>
    public string? Heading { get; init; }

    /// <summary>Where the reasons given are derived; null where no one place does.</summary>
    public string? WorkedOutAt { get; init; }

    /// <summary>How far the model can be trusted with the fly it tells of; null where it tells of none, or of two.</summary>
    public string? Doubt { get; init; }

    /// <summary>What differs when the same answer is graded by the engine of today; the old grade stands.</summary>
    public string? Regraded { get; init; }
}
