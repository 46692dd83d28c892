namespace TyingClass.Storage.Editing;

/// <summary>What became of a change made from a page that may have gone stale meanwhile.</summary>
/// <param name="Saved">False when someone else had changed it since <c>expectedVersion</c> was read: then nothing was written.</param>
/// <param name="Current">As it stands now, so that a page can show it beside what was typed.</param>
public sealed record EditOutcome<T>(bool Saved, T Current);
