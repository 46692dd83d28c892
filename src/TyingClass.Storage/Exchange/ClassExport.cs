using System.Collections.Immutable;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using TyingClass.Storage.Reviews;

namespace TyingClass.Storage.Exchange;

/// <summary>A whole class as it leaves the server: see docs/class-export.md. No passphrase, no cookie's secret, nobody from the trash.</summary>
public sealed record ClassExport
{
    public const int CurrentFormat = 1;

    public required int Format { get; init; }

    public required DateTimeOffset ExportedAt { get; init; }

    public required ExportedClass Class { get; init; }

    public required ImmutableArray<ExportedPerson> People { get; init; }

    /// <summary>
    /// Of an export: read from the store as they are asked for, one person's at a time, so that a large class neither fills the memory nor keeps others
    /// waiting. Of a file: read from it, just so.
    /// </summary>
    public required IEnumerable<Attempt> Attempts { get; init; }

    /// <summary>For readers; an import computes them from the attempts.</summary>
    public ImmutableArray<Standing> Standings { get; init; } = [];

    public ImmutableArray<Comment> Comments { get; init; } = [];

    /// <summary>Answers to practice problems.</summary>
    public ImmutableArray<PracticeAnswer> Practice { get; init; } = [];

    public ImmutableArray<Pattern> Patterns { get; init; } = [];

    public ImmutableArray<PatternRevision> PatternRevisions { get; init; } = [];

    public ImmutableArray<Review> Reviews { get; init; } = [];

    public ImmutableArray<ReviewComment> ReviewComments { get; init; } = [];

    /// <summary>SI units; without its photos.</summary>
    public ImmutableArray<LogEntry> BenchLog { get; init; } = [];

    public ImmutableArray<DateRow> Dates { get; init; } = [];

    public ImmutableArray<ExportedEvening> Evenings { get; init; } = [];

    public ImmutableArray<ExportedQuestion> RoomQuestions { get; init; } = [];
}

/// <param name="TimeZone">IANA.</param>
public sealed record ExportedClass(string Id, string Name, string TimeZone, DateTimeOffset CreatedAt);

/// <param name="Role">Student or mentor.</param>
public sealed record ExportedPerson(string Id, Role Role, string Name, DateTimeOffset JoinedAt, DateTimeOffset LastSeenAt);

public sealed record ExportedEvening(int Number, DateTime? StartsLocal, string Plan, string Demonstrations, int? Students, ImmutableArray<FlyCount> Flies);

public sealed record ExportedQuestion(
    string Id, string Title, ImmutableArray<string> Choices, DateTimeOffset OpenedAt, string? ExerciseId, string? RecipeText, string? Ask,
    RoomAnswer? Answer, DateTimeOffset? ClosedAt, ImmutableArray<ExportedAnswer> Answers);

/// <param name="Choice">Its place among the choices, from 0.</param>
public sealed record ExportedAnswer(string PersonId, int Choice, DateTimeOffset At);
