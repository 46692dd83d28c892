using System.Collections.Immutable;

namespace TyingClass.Lessons.Kinds;

/// <summary>
/// What an exercise lets a student change in its recipe. A form follows these; the grader is the judge, so a value that strayed
/// (typed as text) is shown for mending, never put back in silence.
/// </summary>
public abstract class EditRules
{
    /// <summary>Kinds of part, as recipes write them; empty when the list of parts is fixed.</summary>
    public abstract ImmutableArray<string> KindsToAdd { get; }

    public abstract bool IsLocked(string path, string value);

    /// <summary>A remark under a field that is not locked.</summary>
    public abstract string? NoteOn(string path, string value);

    /// <summary>It is asked about, or named as what may be there; what is left to whoever ties may stand aside.</summary>
    public virtual bool SpeaksOf(string path) => false;

    /// <summary>Something must stand there: what is usual would not be taken.</summary>
    public virtual bool MustBeStated(string path, string? usual) => false;

    /// <summary>The only words that may stand there; empty where others may too.</summary>
    public virtual ImmutableArray<string> ChoicesFor(string path) => [];
}
