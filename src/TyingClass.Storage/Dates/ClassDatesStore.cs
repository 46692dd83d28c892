using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Dates;

/// <summary>The dates of each class, one document a class: they are read together and changed together.</summary>
public sealed class ClassDatesStore
{
    private readonly Database _database;

    internal ClassDatesStore(Database database) => _database = database;

    /// <summary>Without rows when nothing was entered yet.</summary>
    public ClassDates Of(string classId) => _database.Read(db => OfIn(db, classId));

    /// <summary>Replaces all dates of a class; rows without a date are left out.</summary>
    /// <param name="expectedVersion">Of the dates as they were read by whoever edits them.</param>
    public EditOutcome<ClassDates> Save(string classId, IEnumerable<DateRow> rows, int expectedVersion) => _database.Write(db =>
    {
        ClassDates now = OfIn(db, classId);
        if (now.Version != expectedVersion) return new EditOutcome<ClassDates>(false, now);
        ClassDates changed = new(classId, [.. rows.Where(r => r.OpensLocal is not null || r.DueLocal is not null)], expectedVersion + 1);
        Keep(db, changed);
        return new EditOutcome<ClassDates>(true, changed);
    });

    internal static void Prepare(OpenData db) => Dates(db).EnsureIndex("version", "$.version");

    internal static ClassDates OfIn(OpenData db, string classId) => Dates(db).FindById(classId) is { } found
        ? new ClassDates(classId, found["rows"].ToList(r => new DateRow(r["target"].AsString, r["opensLocal"].ToLocalOrNull(), r["dueLocal"].ToLocalOrNull())),
        found["version"].AsInt32)
        : new ClassDates(classId, ImmutableArray<DateRow>.Empty, 0);

    internal static void Keep(OpenData db, ClassDates dates) => Dates(db).Upsert(new BsonDocument
    {
        ["_id"] = dates.ClassId,
        ["version"] = dates.Version,
        ["rows"] = Documents.ToArray(dates.Rows, r => new BsonDocument
        {
            ["target"] = r.Target,
            ["opensLocal"] = Ticks.FromLocal(r.OpensLocal),
            ["dueLocal"] = Ticks.FromLocal(r.DueLocal),
        }),
    });

    private static Records Dates(OpenData db) => db.Records("class_dates");
}
