using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Phrases;

/// <summary>What one person often writes to students, kept to be put in again with one press. Nobody else sees it, and it leaves with no export.</summary>
public sealed class PhraseStore
{
    public const int MostPhrases = 24;
    public const int MostLength = 400;

    private readonly Database _database;

    internal PhraseStore(Database database) => _database = database;

    /// <summary>In the order they were kept.</summary>
    public ImmutableArray<string> Of(string personId) => _database.Read(db =>
        Phrases(db).FindById(personId) is { } found ? found["phrases"].ToList(p => p.AsString) : []);

    /// <summary>One phrase a line; blank lines and repeats fall away, and what is beyond <see cref="MostPhrases"/>.</summary>
    public void Keep(string personId, IEnumerable<string> phrases)
    {
        ImmutableArray<string> kept = [.. phrases.Select(p => CleanText.Line(p, MostLength)).OfType<string>().Distinct().Take(MostPhrases)];
        _database.Write(db => Phrases(db).Upsert(new BsonDocument { ["_id"] = personId, ["phrases"] = Documents.ToArray(kept, p => new BsonValue(p)) }));
    }

    internal static void DeleteOf(OpenData db, string personId) => Phrases(db).Delete(personId);

    private static Records Phrases(OpenData db) => db.Records("phrases");
}
