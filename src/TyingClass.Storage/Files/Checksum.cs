using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using LiteDB;

namespace TyingClass.Storage.Files;

/// <summary>
/// A record's own checksum, kept in it: 64 bits of the SHA-256 of its collection's name and of what it holds. Not against forgery, which could as well write
/// a new one, but against a disk or cable that changed a bit.
/// </summary>
internal static class Checksum
{
    public const string Field = "sum";

    /// <summary>Gives the record its id, where it has none, and its checksum.</summary>
    public static BsonDocument Put(string collection, BsonDocument record)
    {
        if (!record.ContainsKey("_id")) record["_id"] = ObjectId.NewObjectId();
        record.Remove(Field);
        record[Field] = Of(collection, record);
        return record;
    }

    /// <summary>Takes the checksum off again.</summary>
    /// <returns>False when it does not agree with the rest, or there is none.</returns>
    public static bool TakeOff(string collection, BsonDocument record)
    {
        if (record[Field] is not { IsInt64: true } kept) return false;
        record.Remove(Field);
        return Of(collection, record) == kept.AsInt64;
    }

    /// <summary>Of a part that is read without the rest of its record.</summary>
    public static long OfPart(string name, BsonDocument part) => Of(name, part);

    private static long Of(string collection, BsonDocument record)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        using IncrementalHash sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        sha.AppendData(Encoding.UTF8.GetBytes(collection));
        sha.AppendData(BsonSerializer.Serialize(record));
        sha.GetHashAndReset(hash);
        return BinaryPrimitives.ReadInt64LittleEndian(hash);
    }
}
