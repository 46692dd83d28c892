using LiteDB;

namespace TyingClass.Storage.Files;

/// <summary>Times are kept as UTC ticks: LiteDB's own dates lose their zone and everything under a millisecond.</summary>
internal static class Ticks
{
    public static BsonValue From(DateTimeOffset time) => time.UtcTicks;

    public static BsonValue FromOrNull(DateTimeOffset? time) => time is { } known ? From(known) : BsonValue.Null;

    public static DateTimeOffset? ToTimeOrNull(this BsonValue ticks) => ticks.IsNull ? null : ticks.ToTime();

    /// <summary>A time of day somewhere, with no instant until its zone is asked.</summary>
    public static BsonValue FromLocal(DateTime? local) => local is { } time ? new BsonValue(time.Ticks) : BsonValue.Null;

    public static DateTime? ToLocalOrNull(this BsonValue ticks) => ticks.IsNull ? null : new DateTime(ticks.AsInt64, DateTimeKind.Unspecified);

    public static DateTimeOffset ToTime(this BsonValue ticks) => new(ticks.AsInt64, TimeSpan.Zero);
}
