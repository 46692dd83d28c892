namespace TyingClass.Storage.Attempts;

/// <summary>What a mentor or instructor said of an attempt. It stands beside the computed grade, which stays as it was.</summary>
/// <param name="ByName">As it was then.</param>
/// <param name="Accepted">False when the attempt was returned.</param>
/// <param name="Reason">For the student to read; blank where an answer was accepted without a word.</param>
public sealed record Judgment(string ByPersonId, string ByName, DateTimeOffset At, bool Accepted, string Reason);
