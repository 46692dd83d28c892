using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Identity;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Pictures;

/// <summary>Which pieces of a lesson this reader shares with others.</summary>
public sealed class LessonReaders(
    LessonPieces pieces, FlyPictures pictures, AttemptStore attempts, Visitor visitor, GuestWords guests, IHttpContextAccessor accessor)
{
    private readonly Lazy<ImmutableHashSet<string>> _workedOn = new(() => visitor.Person is { } person
        ? [.. attempts.StandingsOf(person.Id).Where(s => s.Attempts > 0).Select(s => s.ExerciseId)] : []);

    // Words on a form tell who will read it.
    private readonly Lazy<string> _kind = new(() => visitor.Person is { } person ? $"{person.Role} {person.ClassId} {guests.WhoReads}" : guests.WhoReads);

    /// <summary>The block as this reader gets it.</summary>
    /// <param name="make">Lays it out.</param>
    public async ValueTask<IHtmlContent> PieceAsync(Course course, Lesson lesson, int block, Func<Task<IHtmlContent>> make)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(make);
        HttpContext http = accessor.HttpContext ?? throw new InvalidOperationException("There is no reader outside a request.");
        pictures.NameIds($"b{block}-");
        if (lesson.Blocks[block] is not ExerciseBlock exercise) return await Of("");
        return _workedOn.Value.Contains(exercise.Exercise.Id) ? await make() : await Of(_kind.Value);

        ValueTask<IHtmlContent> Of(string reader) => pieces.Of(course, $"{lesson.Slug} {block} {Look.Of(http.Request).Units} {reader}", http, make);
    }
}
