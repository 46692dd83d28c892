using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Progress;

/// <summary>How it stands, told apart on the page by shape, word and color.</summary>
public enum StandingKind { Untried, Trying, Waiting, Passed }

public static class StandingKinds
{
    public static StandingKind Of(Standing? standing) => standing switch
    {
        null or { Attempts: 0 } => StandingKind.Untried,
        { Passed: true } => StandingKind.Passed,
        { AwaitsReview: true } => StandingKind.Waiting,
        _ => StandingKind.Trying,
    };

    public static StandingKind Of(Attempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        return attempt.Counts ? StandingKind.Passed : attempt.Waits ? StandingKind.Waiting : StandingKind.Trying;
    }

    public static StandingKind Of(AttemptNote note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return note.Counts ? StandingKind.Passed : note.Waits ? StandingKind.Waiting : StandingKind.Trying;
    }

    public static string Word(StandingKind kind) => kind switch
    {
        StandingKind.Passed => "passed",
        StandingKind.Waiting => "to be read",
        StandingKind.Trying => "not yet",
        _ => "untried",
    };
}
