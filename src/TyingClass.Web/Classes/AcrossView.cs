using System.Collections.Immutable;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.People;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <summary>One exercise across a class.</summary>
/// <param name="Answers">Those of this part, the most given first.</param>
/// <param name="Sentence">The commonest finding; null while nothing went wrong.</param>
public sealed record AcrossView(
    RegisterColumn Column, int People, ImmutableArray<AcrossLine> Lines, ImmutableArray<CountedFinding> Misreadings,
    ImmutableArray<GivenAnswer> Answers, int Part, int Parts, string? Sentence)
{
    /// <summary>Recipes drawn side by side on one page.</summary>
    public const int AnswersAPart = 12;

    public int Passed => Lines.Count(l => l.ToSuccess is not null);

    /// <summary>How many passed with their first attempt, with their second, …; the last place counts all beyond.</summary>
    public ImmutableArray<int> PassedAt(int places) =>
        [.. Enumerable.Range(1, places).Select(n => Lines.Count(l => l.ToSuccess is { } to && (n < places ? to == n : to >= n)))];
}

/// <param name="ToSuccess">The number of the first attempt that counts; null when none does.</param>
/// <param name="Shown">That attempt, or the latest.</param>
public sealed record AcrossLine(Person Person, StandingKind Kind, int Attempts, int? ToSuccess, AttemptNote Shown);

/// <param name="Text">As the students were told.</param>
/// <param name="Where">One attempt of each student who met it.</param>
public sealed record CountedFinding(string Text, int Attempts, ImmutableArray<(Person Person, AttemptNote Attempt)> Where);

/// <summary>What several students sent in alike.</summary>
/// <param name="Sample">One of these attempts in full.</param>
public sealed record GivenAnswer(Attempt Sample, StandingKind Kind, ImmutableArray<AcrossLine> Lines);
