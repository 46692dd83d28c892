using System.Collections.Immutable;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Evenings;

/// <summary>What a deputy may run of a class.</summary>
/// <param name="Everything">All but people, files and setup.</param>
/// <param name="Evenings">By number.</param>
/// <param name="Today">On the clock of the class.</param>
public sealed record LentView(ClassRoom Room, bool Everything, ImmutableArray<EveningLine> Evenings, DateOnly Today)
{
    public EveningLine? Tonight => Evenings.FirstOrDefault(e => DayOf(e) == Today);

    /// <summary>The first that is still to come, tonight's not counted.</summary>
    public EveningLine? Next => Evenings.Where(e => DayOf(e) > Today).MinBy(e => e.Plan.StartsLocal);

    private static DateOnly? DayOf(EveningLine evening) => evening.Plan.StartsLocal is { } starts ? DateOnly.FromDateTime(starts) : null;
}

/// <summary>Tells deputies what they run: on their home page, and where they are turned away.</summary>
public sealed class LentBoard(EveningBook book, ClassAccess access, TimeProvider time)
{
    /// <summary>Null for whoever is no deputy, of a class that is archived too.</summary>
    public LentView? Mine()
    {
        try
        {
            if (access.Right is not (ClassRight.Evenings or ClassRight.Everything) || access.Current is not { ArchivedAt: null } room) return null;
            DateOnly today = DateOnly.FromDateTime(new ClassClock(room).Local(time.GetUtcNow()));
            return new LentView(room, access.Right == ClassRight.Everything, book.All(), today);
        }
        catch (StorageException)
        {
            // Shown beside something else, which says itself what is wrong with the disk.
            return null;
        }
    }
}
