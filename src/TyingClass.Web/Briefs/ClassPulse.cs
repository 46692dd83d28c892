using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Briefs;

/// <summary>A vote in the room that was not the engine's answer.</summary>
/// <param name="Choice">As it stood on the phone.</param>
public sealed record WrongVote(Person Person, string ExerciseId, string Choice, DateTimeOffset At);

/// <summary>All that a brief is made from: the students of a class, where each stands, and how they voted.</summary>
/// <param name="Lines">Every exercise of the course that a student of the class has tried.</param>
public sealed record ClassPulse(
    ImmutableArray<Person> Students, ImmutableArray<RegisterColumn> Columns, ImmutableArray<StuckLine> Lines, ImmutableArray<WrongVote> Votes);

/// <summary>Reads a class once for a brief: its standings, never its attempts. Mentors work exercises for pleasure and are not counted.</summary>
public sealed class PulseReader(ICourseSource source, AccountStore accountStore, AttemptStore attemptStore, RoomQuestionStore roomQuestionStore,
    UntilWritten memory)
{
    // What a room thought so long ago says little of tonight.
    private const int QuestionsRead = 12;

    public ClassPulse Of(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        Course course = source.Current;
        return memory.Get($"pulse of {room.Id}", course, () => Read(room, course));
    }

    private ClassPulse Read(ClassRoom room, Course course)
    {
        ImmutableArray<RegisterColumn> columns = [.. ClassRegister.Columns(course)];
        Dictionary<string, RegisterColumn> byExercise = columns.ToDictionary(c => c.Exercise.Id);
        ImmutableArray<Person> students = [.. accountStore.OfClass(room.Id).Where(p => p.Role == Role.Student)];
        Dictionary<string, Person> people = students.ToDictionary(p => p.Id);
        ImmutableArray<StuckLine> lines =
        [
            .. attemptStore.StandingsOf(people.Keys).Where(s => byExercise.ContainsKey(s.ExerciseId))
                .Select(s => new StuckLine(people[s.PersonId], byExercise[s.ExerciseId], s)),
        ];
        return new ClassPulse(students, columns, lines, [.. Votes(room, people)]);
    }

    private IEnumerable<WrongVote> Votes(ClassRoom room, Dictionary<string, Person> people)
    {
        foreach (RoomQuestion question in roomQuestionStore.OfClass(room.Id)
            .Where(q => q is { Answer: not null, ExerciseId: not null }).TakeLast(QuestionsRead))
        {
            foreach (RoomVote vote in roomQuestionStore.Votes(question.Id))
            {
                if (people.TryGetValue(vote.PersonId, out Person? person) && question.Choices[vote.Choice] != question.Answer!.Choice)
                    yield return new WrongVote(person, question.ExerciseId!, question.Choices[vote.Choice], vote.At);
            }
        }
    }
}
