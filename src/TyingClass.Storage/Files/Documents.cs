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
}
