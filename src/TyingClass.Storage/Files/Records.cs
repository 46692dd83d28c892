using System.Runtime.CompilerServices;
using System.Text;
using LiteDB;
using TyingClass.Storage.Damages;

namespace TyingClass.Storage.Files;

/// <summary>
/// One collection. Every record gets a checksum when it is written and is checked when it is read whole; one that does not agree is left out, and noted
/// with its id. What the file cannot even give back as a record is a <see cref="BrokenFileException"/>: <see cref="Database"/> then mends the file.
/// </summary>
internal sealed class Records(ILiteCollection<BsonDocument> collection, DamageBook damage)
{
    public void EnsureIndex(string name, string expression, bool unique = false) => Try(() => collection.EnsureIndex(name, expression, unique));

    public BsonValue Insert(BsonDocument record) => Try(() => collection.Insert(Checksum.Put(Name, record)));

    public int Insert(IEnumerable<BsonDocument> records)
    {
        List<BsonDocument> all = [.. records.Select(r => Checksum.Put(Name, r))];
        return Try(() => collection.Insert(all));
    }

    public bool Update(BsonDocument record) => Try(() => collection.Update(Checksum.Put(Name, record)));

    public int Update(IEnumerable<BsonDocument> records)
    {
        List<BsonDocument> all = [.. records.Select(r => Checksum.Put(Name, r))];
        return Try(() => collection.Update(all));
    }

    public bool Upsert(BsonDocument record) => Try(() => collection.Upsert(Checksum.Put(Name, record)));

    public bool Delete(BsonValue id) => !id.IsNull && Try(() => collection.Delete(id));

    public int DeleteMany(string where, params BsonValue[] values) => Try(() => collection.DeleteMany(BsonExpression.Create(where, values)));

    public int Count(string where, params BsonValue[] values) => Try(() => collection.Count(BsonExpression.Create(where, values)));

    /// <summary>Null for one that is damaged, too, and for no id: whoever asks for nothing must not make the file look broken.</summary>
    public BsonDocument? FindById(BsonValue id) => !id.IsNull && Try(() => collection.FindById(id)) is { } found && IsWhole(found) ? found : null;

    public List<BsonDocument> FindAll() => Whole(Try(() => collection.FindAll().ToList()));

    public List<BsonDocument> FindAll(string where, params BsonValue[] values) =>
        Whole(Try(() => collection.Find(BsonExpression.Create(where, values)).ToList()));

    public List<BsonDocument> FindSome(string where, int most) => Whole(Try(() => collection.Find(BsonExpression.Create(where), limit: most).ToList()));

    public BsonDocument? FindFirst(string where, params BsonValue[] values) => FindAll(where, values).FirstOrDefault();

    /// <summary>
    /// Some fields of each record, for where reading whole ones would take long. They carry a checksum of their own; where it is missing or does not agree,
    /// the whole record is read and checked instead.
    /// </summary>
    /// <param name="fields">As in "{_id, number, concept: feedback.misreadConcept}".</param>
    /// <param name="agrees">Whether the fields are what was written.</param>
    public List<BsonDocument> FindFields(string where, string fields, Func<BsonDocument, bool> agrees, params BsonValue[] values) =>
    [
        .. Try(() => collection.Query().Where(BsonExpression.Create(where, values)).Select(BsonExpression.Create(fields)).ToList())
            .Where(part => !damage.Knows(Name, part["_id"])).Select(part => agrees(part) ? part : FindById(part["_id"])).OfType<BsonDocument>(),
    ];

    /// <summary>Of all records, out of the index: no record is read.</summary>
    public List<BsonValue> Ids() => Try(() => collection.Query().Select(BsonExpression.Create("$._id")).ToEnumerable().Select(d => d["_id"]).ToList());

    private string Name => collection.Name;

    private List<BsonDocument> Whole(List<BsonDocument> found)
    {
        found.RemoveAll(r => !IsWhole(r));
        return found;
    }

    private bool IsWhole(BsonDocument record)
    {
        if (Checksum.TakeOff(Name, record)) return true;
        damage.Note(Damage.Changed(Name, record["_id"]));
        return false;
    }

    private T Try<T>(Func<T> work, [CallerMemberName] string asked = "")
    {
        try
        {
            return work();
        }
        catch (Exception e) when (IsOfTheFile(e))
        {
            throw new BrokenFileException($"{asked} in “{Name}”: {e.Message}", e);
        }
    }

    // A damaged page can make LiteDB throw anything at all. What it says of our own mistakes, or of a disk that takes nothing, is not of that kind.
    private static bool IsOfTheFile(Exception e) => e switch
    {
        LiteException lite => lite.ErrorCode == LiteException.INVALID_DATAFILE_STATE,
        EndOfStreamException => true,
        // Text that is none, as half an emoji: it never came near the file.
        EncoderFallbackException => false,
        IOException or UnauthorizedAccessException or ObjectDisposedException => false,
        _ => true,
    };
}
