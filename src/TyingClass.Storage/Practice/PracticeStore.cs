using System.Collections.Immutable;
using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Practice;

/// <summary>Answers to practice problems, added and never changed. An answer is kept as an attempt is, with the problem beside it.</summary>
public sealed class PracticeStore
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal PracticeStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>Keeps a graded answer under the next number of that person and problem.</summary>
    /// <exception cref="ArgumentException">The answer could not be graded, so it is no attempt.</exception>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public Attempt Add(string personId, PracticeProblem problem, string answerText, GradeResult grade, string? form = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return _database.Write(db =>
        {
            string slot = AttemptDocument.Slot(personId, problem.Id);
            if (form is not null && Answers(db).FindFirst("slot = @0 and form = @1 and answer = @2", slot, form, answerText) is { } kept)
                return AttemptDocument.ToAttempt(kept);
            int number = NextNumber(db, personId, problem.Id);
            Attempt attempt = Attempt.Of(personId, problem.Id, number, _time.GetUtcNow(), answerText, grade) with { Form = form };
            InsertIn(db, new PracticeAnswer(problem, attempt));
            return attempt;
        });
    }

    /// <summary>One person's answers to one problem, first to last.</summary>
    public ImmutableArray<PracticeAnswer> Of(string personId, string problemId) => _database.Read(db =>
        Answers(db).FindAll("slot = @0", AttemptDocument.Slot(personId, problemId)).Select(ToAnswer)
            .OrderBy(a => a.Attempt.Number).ToImmutableArray());

    /// <summary>How one person's first answers came out, oldest first.</summary>
    public ImmutableArray<PracticeOutcome> FirstOutcomesOf(string personId) => _database.Read(db =>
        Answers(db).FindAll("personId = @0 and number = 1", personId)
            .Select(d => new PracticeOutcome(d["concept"].AsString, d["seed"].AsInt32, d["atTicks"].ToTime(), d["passed"].AsBoolean))
            .OrderBy(o => o.At).ThenBy(o => o.Seed).ToImmutableArray());

    internal static void DeleteOf(OpenData db, string personId) => Answers(db).DeleteMany("personId = @0", personId);

    /// <summary>Numbers go on after those already there; times stay.</summary>
    internal static ImmutableArray<MovedWork> Move(OpenData db, string fromPersonId, string toPersonId)
    {
        List<BsonDocument> all = [.. Answers(db).FindAll("personId = @0", fromPersonId).OrderBy(d => d["number"].AsInt32)];
        ImmutableArray<MovedWork> moved = [.. all.Select(d => new MovedWork(d["_id"].AsString, d["number"].AsInt32))];
        foreach (BsonDocument answer in all) Put(db, answer, toPersonId, CountIn(db, AttemptDocument.Slot(toPersonId, answer["exerciseId"].AsString)) + 1);
        return moved;
    }

    /// <summary>Takes out again what <see cref="Move"/> moved, under its old numbers; what stays closes up.</summary>
    internal static void MoveBack(OpenData db, string fromPersonId, string toPersonId, IEnumerable<MovedWork> moved)
    {
        HashSet<string> slots = [];
        foreach (MovedWork work in moved)
        {
            if (Answers(db).FindById(work.Id) is not { } answer || answer["personId"].AsString != fromPersonId) continue;
            slots.Add(answer["slot"].AsString);
            Put(db, answer, toPersonId, work.Number);
        }

        foreach (string slot in slots)
        {
            int number = 0;
            foreach (BsonDocument stays in Answers(db).FindAll("slot = @0", slot).OrderBy(d => d["number"].AsInt32)) Put(db, stays, fromPersonId, ++number);
        }
    }

    /// <summary>How many answers one person has given.</summary>
    public int CountOf(string personId) => _database.Read(db => Answers(db).Count("personId = @0", personId));

    private static void Put(OpenData db, BsonDocument answer, string personId, int number)
    {
        string slot = AttemptDocument.Slot(personId, answer["exerciseId"].AsString);
        (answer["personId"], answer["slot"], answer["number"], answer["place"]) = (personId, slot, number, $"{slot}/{number}");
        Answers(db).Update(answer);
    }

    // Past the number of an answer that was lost.
    private static int NextNumber(OpenData db, string personId, string problemId)
    {
        int number = CountIn(db, AttemptDocument.Slot(personId, problemId)) + 1;
        while (Answers(db).Count("place = @0", AttemptDocument.Place(personId, problemId, number)) > 0) number++;
        return number;
    }

    private static int CountIn(OpenData db, string slot) => Answers(db).Count("slot = @0", slot);

    internal static void Prepare(OpenData db)
    {
        Answers(db).EnsureIndex("slot", "$.slot");
        Answers(db).EnsureIndex("personId", "$.personId");
        // The database's own word that no two answers share a number.
        Answers(db).EnsureIndex("place", "$.place", unique: true);
    }

    internal static IEnumerable<PracticeAnswer> AllOfIn(OpenData db, string personId) =>
        Answers(db).FindAll("personId = @0", personId).Select(ToAnswer).OrderBy(a => a.Attempt.At);

    internal static void InsertIn(OpenData db, PracticeAnswer answer)
    {
        BsonDocument document = AttemptDocument.From(answer.Attempt);
        document["concept"] = answer.Problem.Concept;
        document["seed"] = answer.Problem.Seed;
        document["level"] = answer.Problem.LevelHundredths;
        document["recipe"] = answer.Problem.RecipeText;
        Answers(db).Insert(document);
    }

    private static PracticeAnswer ToAnswer(BsonDocument d)
    {
        Attempt attempt = AttemptDocument.ToAttempt(d);
        return new PracticeAnswer(new PracticeProblem(attempt.ExerciseId, d["concept"].AsString, d["seed"].AsInt32, d["level"].AsInt32, d["recipe"].AsString),
            attempt);
    }

    private static Records Answers(OpenData db) => db.Records("practice");
}
