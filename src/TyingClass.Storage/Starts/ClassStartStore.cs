using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Starts;

/// <summary>One document a class, so that setting it up can be left and taken up again from any browser.</summary>
public sealed class ClassStartStore
{
    private readonly Database _database;

    internal ClassStartStore(Database database) => _database = database;

    /// <summary>With nothing done when nothing was kept yet.</summary>
    public ClassStart Of(string classId) => _database.Read(db => OfIn(db, classId));

    public ClassStart KeepNames(string classId, string names, bool lastNameFirst, string columns)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(columns);
        string kept = CleanText.Cut(names, ClassStart.MostNamesLength);
        return Change(classId, s => s with { Names = kept, LastNameFirst = lastNameFirst, Columns = columns });
    }

    public ClassStart MarkDone(string classId, string step) =>
        Change(classId, s => s.IsDone(step) ? s : s with { Done = s.Done.Add(step) });

    internal static void Prepare(OpenData db) => Starts(db).EnsureIndex("done", "$.done[*]");

    private ClassStart Change(string classId, Func<ClassStart, ClassStart> change) => _database.Write(db =>
    {
        ClassStart changed = change(OfIn(db, classId));
        Starts(db).Upsert(new BsonDocument
        {
            ["_id"] = changed.ClassId,
            ["names"] = changed.Names,
            ["lastNameFirst"] = changed.LastNameFirst,
            ["columns"] = changed.Columns,
            ["done"] = Documents.ToArray(changed.Done, d => new BsonValue(d)),
        });
        return changed;
    });

    private static ClassStart OfIn(OpenData db, string classId) => Starts(db).FindById(classId) is { } found
        ? new ClassStart(classId, found["names"].AsString, found["lastNameFirst"].AsBoolean, found["done"].ToList(d => d.AsString))
        {
            // Not in a file from before one could say: a missing field reads as null.
            Columns = found["columns"] is { IsNull: false } columns ? columns.AsString : "",
        }
        : new ClassStart(classId, "", LastNameFirst: false, ImmutableArray<string>.Empty);

    private static Records Starts(OpenData db) => db.Records("class_starts");
}
