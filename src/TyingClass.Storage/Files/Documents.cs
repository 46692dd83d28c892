using System.Collections.Immutable;
using LiteDB;

namespace TyingClass.Storage.Files;

/// <summary>Documents are mapped by hand: LiteDB's mapper, first used by two threads at once, can write an empty document.</summary>
internal static class Documents
{
    public static string? TextOrNull(this BsonValue value) => value.IsNull ? null : value.AsString;

    public static double? NumberOrNull(this BsonValue value) => value.IsNull ? null : value.AsDouble;

    public static BsonArray ToArray<T>(IEnumerable<T> items, Func<T, BsonValue> map) => new(items.Select(map));

    public static ImmutableArray<T> ToList<T>(this BsonValue array, Func<BsonValue, T> map) =>
        array.IsArray ? [.. array.AsArray.Select(map)] : [];

    public static List<BsonDocument> FindAll(this ILiteCollection<BsonDocument> collection, string where, params BsonValue[] values) =>
        [.. collection.Find(BsonExpression.Create(where, values))];

    /// <summary>Some fields of each document, for where reading whole ones would take long.</summary>
    /// <param name="fields">As in "{number, concept: feedback.misreadConcept}".</param>
    public static List<BsonDocument> FindFields(this ILiteCollection<BsonDocument> collection, string where, string fields, params BsonValue[] values) =>
        collection.Query().Where(BsonExpression.Create(where, values)).Select(BsonExpression.Create(fields)).ToList();

    public static BsonDocument? FindFirst(this ILiteCollection<BsonDocument> collection, string where, params BsonValue[] values) =>
        collection.FindAll(where, values).FirstOrDefault();
}
