using System.Collections.Immutable;

namespace TyingClass.Storage.Dates;

/// <summary>
/// When lessons and exercises open for a class and are due, as written on the club's wall: local times, which become instants only through the class's zone.
/// </summary>
/// <param name="Version">0 before anything was entered; goes up with each change.</param>
public sealed record ClassDates(string ClassId, ImmutableArray<DateRow> Rows, int Version)
{
    public DateRow? Of(string target) => Rows.FirstOrDefault(r => r.Target == target);
}

/// <param name="Target">See <see cref="DateTargets"/>.</param>
/// <param name="OpensLocal">In the zone of the class; null for always open.</param>
/// <param name="DueLocal">In the zone of the class; null for never due.</param>
public sealed record DateRow(string Target, DateTime? OpensLocal, DateTime? DueLocal);

/// <summary>What a date is about. An exercise without dates of its own has its lesson's.</summary>
public static class DateTargets
{
    public static string Lesson(string slug) => "lesson:" + slug;

    public static string Exercise(string id) => "exercise:" + id;
}
