using TyingClass.Storage.Attempts;

namespace TyingClass.Storage.Practice;

/// <summary>A practice problem: what its address says, and the fly it came to.</summary>
/// <param name="Id">Of the problem; no two problems share one.</param>
/// <param name="LevelHundredths">How hard it was drawn, 0 plain to 100 close.</param>
/// <param name="RecipeText">The fly asked about, kept because a change of its lesson draws another from the same seed.</param>
public sealed record PracticeProblem(string Id, string Concept, int Seed, int LevelHundredths, string RecipeText);

/// <summary>One graded answer to a practice problem.</summary>
public sealed record PracticeAnswer(PracticeProblem Problem, Attempt Attempt);

/// <summary>How a person's first answer to a problem came out.</summary>
public readonly record struct PracticeOutcome(string Concept, int Seed, DateTimeOffset At, bool Passed);
