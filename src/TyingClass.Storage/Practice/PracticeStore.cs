using System.Collections.Immutable;
using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Practice;

/// <summary>Answers to practice problems, added and never changed. An answer is kept as an attempt is, with the problem beside it.</summary>
public sealed class PracticeStore
{
    private readonly Database database;
    private readonly TimeProvider time;

    internal PracticeStore(Database database, TimeProvider time) => (this.database, this.time) = (database, time);

    /// <summary>Keeps a graded answer under the next number of that person and problem.</summary>
    /// <exception cref="ArgumentException">The answer could not be graded, so it is no attempt.</exception>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public Attempt Add(string personId, PracticeProblem problem, string answerText, GradeResult grade)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return database.Write(db =>
        {
            int number = Answers(db).Count(BsonExpression.Create("slot = @0", AttemptDocument.Slot(personId, problem.Id))) + 1;
            Attempt attempt = Attempt.Of(personId, problem.Id, number, time.GetUtcNow(), answerText, grade);
            BsonDocument document = AttemptDocument.From(attempt);
            document["concept"] = problem.Concept;
            document["seed"] = problem.Seed;
            document["level"] = problem.LevelHundredths;
            document["recipe"] = problem.RecipeText;
            Answers(db).Insert(document);
            return attempt;
        });
    }

    /// <summary>One person's answers to one problem, first to last.</summary>
    public ImmutableArray<PracticeAnswer> Of(string personId, string problemId) => database.Read(db =>
        Answers(db).FindAll("slot = @0", AttemptDocument.Slot(personId, problemId))
            .Select(d => new PracticeAnswer(
                new PracticeProblem(problemId, d["concept"].AsString, d["seed"].AsInt32, d["level"].AsInt32, d["recipe"].AsString),
                AttemptDocument.ToAttempt(d)))
            .OrderBy(a => a.Attempt.Number).ToImmutableArray());

    /// <summary>How one person's first answers came out, oldest first.</summary>
    public ImmutableArray<PracticeOutcome> FirstOutcomesOf(string personId) => database.Read(db =>
        Answers(db).FindFields("personId = @0 and number = 1", "{concept, seed, atTicks, passed, misread: feedback.misreadConcept}", personId)
            .Select(d => new PracticeOutcome(d["concept"].AsString, d["seed"].AsInt32, d["atTicks"].ToTime(), d["passed"].AsBoolean, d["misread"].TextOrNull()))
            .OrderBy(o => o.At).ToImmutableArray());

    internal static void Prepare(ILiteDatabase db)
    {
        Answers(db).EnsureIndex("slot", "$.slot");
        Answers(db).EnsureIndex("personId", "$.personId");
        // The database's own word that no two answers share a number.
        Answers(db).EnsureIndex("place", "$.place", unique: true);
    }

    private static ILiteCollection<BsonDocument> Answers(ILiteDatabase db) => db.GetCollection("practice");
}
