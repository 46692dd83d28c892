using LiteDB;

namespace TyingClass.Storage.Files;

/// <summary>Times are kept as UTC ticks: LiteDB's own dates lose their zone and everything under a millisecond.</summary>
internal static class Ticks
{
    public static BsonValue From(DateTimeOffset time) => time.UtcTicks;

    public static BsonValue FromOrNull(DateTimeOffset? time) => time is { } known ? From(known) : BsonValue.Null;

    public static DateTimeOffset? ToTimeOrNull(this BsonValue ticks) => ticks.IsNull ? null : ticks.ToTime();

    public static DateTimeOffset ToTime(this BsonValue ticks) => new(ticks.AsInt64, TimeSpan.Zero);
}
