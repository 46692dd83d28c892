using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Evenings;

/// <summary>Questions put to the room, at most one open in a class at a time, and who answered what.</summary>
public sealed class RoomQuestionStore
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal RoomQuestionStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>Puts a question; the one before it is closed.</summary>
    /// <param name="question">Its id and times are given here.</param>
    public RoomQuestion Put(RoomQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return _database.Write(db =>
        {
            DateTimeOffset now = _time.GetUtcNow();
            foreach (RoomQuestion before in OfClassIn(db, question.ClassId).Where(q => q is { ClosedAt: null, IsPrepared: false }))
                Keep(db, before with { ClosedAt = now });
            RoomQuestion put = question with { Id = RandomId.New(), OpenedAt = now, Answer = null, ClosedAt = null, IsPrepared = false };
            Keep(db, put);
            return put;
        });
    }

    /// <summary>The one the room has before it; null when there is none.</summary>
    public RoomQuestion? Current(string classId) => _database.Read(db => OfClassIn(db, classId).LastOrDefault(q => q is { ClosedAt: null, IsPrepared: false }));

    /// <summary>Those that were put, oldest first.</summary>
    public ImmutableArray<RoomQuestion> OfClass(string classId) => _database.Read(db => OfClassIn(db, classId).Where(q => !q.IsPrepared).ToImmutableArray());

    /// <summary>Those kept to be asked some evening, in the order they were once asked.</summary>
    public ImmutableArray<RoomQuestion> Prepared(string classId) => _database.Read(db => OfClassIn(db, classId).Where(q => q.IsPrepared).ToImmutableArray());

    /// <summary>Takes a question off the list of those kept to be asked.</summary>
    /// <returns>False when it is not on it.</returns>
    public bool Forget(string questionId) => _database.Write(db => FindIn(db, questionId) is { IsPrepared: true } && Questions(db).Delete(questionId));

    public RoomQuestion? Find(string questionId) => _database.Read(db => FindIn(db, questionId));

    /// <summary>Takes one answer a person; a later one replaces it until the question is revealed.</summary>
    /// <returns>False when the question takes no answers any more, or has no such choice.</returns>
    public bool Answer(string questionId, string personId, int choice) => _database.Write(db =>
    {
        if (FindIn(db, questionId) is not { TakesAnswers: true } question || choice < 0 || choice >= question.Choices.Length) return false;
        KeepAnswer(db, questionId, personId, choice, _time.GetUtcNow());
        return true;
    });

    /// <returns>Null when this person has not answered.</returns>
    public int? AnswerOf(string questionId, string personId) => _database.Read(db =>
        Answers(db).FindById($"{questionId}/{personId}") is { } found ? found["choice"].AsInt32 : (int?)null);

    /// <summary>Who answered what.</summary>
    public ImmutableArray<RoomVote> Votes(string questionId) => _database.Read(db => Answers(db).FindAll("questionId = @0", questionId)
        .Select(a => new RoomVote(a["personId"].AsString, a["choice"].AsInt32, a["atTicks"].ToTime())).ToImmutableArray());

    public RoomTally Tally(string questionId) => _database.Read(db =>
    {
        if (FindIn(db, questionId) is not { } question) return new RoomTally([]);
        int[] counts = new int[question.Choices.Length];
        foreach (BsonDocument answer in Answers(db).FindAll("questionId = @0", questionId)) counts[answer["choice"].AsInt32]++;
        return new RoomTally([.. counts]);
    });

    /// <summary>Ends the answering and keeps what the engine says; a second time changes nothing.</summary>
    public RoomQuestion? Reveal(string questionId, RoomAnswer answer) => Change(questionId, q => q.Answer is null ? q with { Answer = answer } : q);

    public RoomQuestion? Close(string questionId) => Change(questionId, q => q.ClosedAt is null ? q with { ClosedAt = _time.GetUtcNow() } : q);

    internal static void Prepare(OpenData db)
    {
        Questions(db).EnsureIndex("classId", "$.classId");
        Answers(db).EnsureIndex("questionId", "$.questionId");
        Answers(db).EnsureIndex("personId", "$.personId");
    }

    internal static void KeepAnswer(OpenData db, string questionId, string personId, int choice, DateTimeOffset at) => Answers(db).Upsert(new BsonDocument
    {
        ["_id"] = $"{questionId}/{personId}",
        ["questionId"] = questionId,
        ["personId"] = personId,
        ["choice"] = choice,
        ["atTicks"] = Ticks.From(at),
    });

    internal static ImmutableArray<ExportedAnswer> AnswersIn(OpenData db, string questionId) =>
        [.. Answers(db).FindAll("questionId = @0", questionId)
        .Select(a => new ExportedAnswer(a["personId"].AsString, a["choice"].AsInt32, a["atTicks"].ToTime()))];

    internal static void DeleteOf(OpenData db, string personId) => Answers(db).DeleteMany("personId = @0", personId);

    private RoomQuestion? Change(string questionId, Func<RoomQuestion, RoomQuestion> change) => _database.Write(db =>
    {
        if (FindIn(db, questionId) is not { } question) return null;
        RoomQuestion changed = change(question);
        Keep(db, changed);
        return changed;
    });

    private static RoomQuestion? FindIn(OpenData db, string questionId) => Questions(db).FindById(questionId) is { } found ? ToQuestion(found) : null;

    internal static ImmutableArray<RoomQuestion> OfClassIn(OpenData db, string classId) =>
        [.. Questions(db).FindAll("classId = @0", classId).Select(ToQuestion).OrderBy(q => q.OpenedAt)];

    internal static void Keep(OpenData db, RoomQuestion q) => Questions(db).Upsert(new BsonDocument
    {
        ["_id"] = q.Id,
        ["classId"] = q.ClassId,
        ["title"] = q.Title,
        ["choices"] = Documents.ToArray(q.Choices, c => new BsonValue(c)),
        ["openedTicks"] = Ticks.From(q.OpenedAt),
        ["exerciseId"] = q.ExerciseId,
        ["recipe"] = q.RecipeText,
        ["ask"] = q.Ask,
        ["closedTicks"] = Ticks.FromOrNull(q.ClosedAt),
        ["prepared"] = q.IsPrepared,
        ["answer"] = q.Answer is { } a
            ? new BsonDocument { ["choice"] = a.Choice, ["whatItWouldDo"] = a.WhatItWouldDo, ["why"] = a.Why, ["revealedTicks"] = Ticks.From(a.RevealedAt) }
            : BsonValue.Null,
    });

    private static RoomQuestion ToQuestion(BsonDocument document) => new(
        document["_id"].AsString,
        document["classId"].AsString,
        document["title"].AsString,
        document["choices"].ToList(c => c.AsString),
        document["openedTicks"].ToTime())
    {
        ExerciseId = document["exerciseId"].TextOrNull(),
        RecipeText = document["recipe"].TextOrNull(),
        Ask = document["ask"].TextOrNull(),
        ClosedAt = document["closedTicks"].ToTimeOrNull(),
        IsPrepared = document["prepared"] is { IsBoolean: true, AsBoolean: true },
        Answer = document["answer"] is { IsNull: false } a
            ? new RoomAnswer(a["choice"].AsString, a["whatItWouldDo"].AsString, a["why"].AsString, a["revealedTicks"].ToTime())
            : null,
    };

    private static Records Questions(OpenData db) => db.Records("room_questions");

    private static Records Answers(OpenData db) => db.Records("room_answers");
}
