using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Evenings;

public sealed class EveningStore
{
    private readonly Database _database;

    internal EveningStore(Database database) => _database = database;

    /// <summary>A blank one when nothing was written yet.</summary>
    public EveningPlan Find(string classId, int number) => _database.Read(db => FindIn(db, classId, number));

    /// <summary>Those something was written about, in order.</summary>
    public ImmutableArray<EveningPlan> OfClass(string classId) => _database.Read(db => OfClassIn(db, classId));

    /// <summary>Keeps what was written, unless someone else has changed the evening since.</summary>
    /// <param name="plan">Its version is the one that was read.</param>
    public EditOutcome<EveningPlan> Save(EveningPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return _database.Write(db =>
        {
            EveningPlan now = FindIn(db, plan.ClassId, plan.Number);
            if (now.Version != plan.Version) return new EditOutcome<EveningPlan>(false, now);
            EveningPlan changed = plan with { Version = now.Version + 1 };
            Keep(db, changed);
            return new EditOutcome<EveningPlan>(true, changed);
        });
    }

    /// <summary>Sets when evenings begin, all of them or none; null for no date. Everything else about them stays.</summary>
    /// <param name="starts">By number, with the version of each as it was read.</param>
    /// <returns>False when one of them was changed meanwhile; then nothing was written.</returns>
    public bool SetStarts(string classId, IReadOnlyList<EveningStart> starts)
    {
        ArgumentNullException.ThrowIfNull(starts);
        return _database.Write(db =>
        {
            ImmutableArray<EveningPlan> now = [.. starts.Select(s => FindIn(db, classId, s.Number))];
            if (now.Zip(starts).Any(p => p.First.Version != p.Second.Version)) return false;
            foreach ((EveningPlan plan, EveningStart start) in now.Zip(starts).Where(p => p.First.StartsLocal != p.Second.StartsLocal))
                Keep(db, plan with { StartsLocal = start.StartsLocal, Version = plan.Version + 1 });
            return true;
        });
    }

    internal static void Prepare(OpenData db) => Evenings(db).EnsureIndex("classId", "$.classId");

    internal static ImmutableArray<EveningPlan> OfClassIn(OpenData db, string classId) =>
        [.. Evenings(db).FindAll("classId = @0", classId).Select(ToPlan).OrderBy(p => p.Number)];

    internal static void Keep(OpenData db, EveningPlan plan) => Evenings(db).Upsert(new BsonDocument
    {
        ["_id"] = Id(plan.ClassId, plan.Number),
        ["classId"] = plan.ClassId,
        ["number"] = plan.Number,
        ["startsLocal"] = Ticks.FromLocal(plan.StartsLocal),
        ["plan"] = plan.Plan,
        ["demonstrations"] = plan.Demonstrations,
        ["students"] = plan.Students is { } n ? new BsonValue(n) : BsonValue.Null,
        ["flies"] = Documents.ToArray(plan.Flies, f => new BsonDocument { ["name"] = f.Name, ["each"] = f.Each, ["shown"] = f.Shown }),
        ["version"] = plan.Version,
    });

    private static EveningPlan FindIn(OpenData db, string classId, int number) =>
        Evenings(db).FindById(Id(classId, number)) is { } found ? ToPlan(found) : new EveningPlan(classId, number);

    private static EveningPlan ToPlan(BsonDocument document) => new(document["classId"].AsString, document["number"].AsInt32)
    {
        StartsLocal = document["startsLocal"].ToLocalOrNull(),
        Plan = document["plan"].AsString,
        Demonstrations = document["demonstrations"].AsString,
        Students = document["students"].IsNull ? null : document["students"].AsInt32,
        Flies = document["flies"].ToList(f => new FlyCount(f["name"].AsString, f["each"].AsDouble, f["shown"].AsInt32)),
        Version = document["version"].AsInt32,
    };

    private static string Id(string classId, int number) => FormattableString.Invariant($"{classId}/{number}");

    private static Records Evenings(OpenData db) => db.Records("evenings");
}
