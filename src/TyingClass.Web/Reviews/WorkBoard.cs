using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Reviews;

/// <summary>What waits for the visitor: counted beside the links that lead there.</summary>
/// <param name="Reviews">Patterns whose tyers asked.</param>
/// <param name="ToRead">Explanations and tub tests.</param>
public sealed record WorkCount(int Reviews, int ToRead)
{
    public static WorkCount None { get; } = new(0, 0);

    public bool IsNone => Reviews + ToRead == 0;
}

/// <summary>Counts what waits for a mentor or whoever runs the class; nothing for anyone else, or where the store cannot be read: this frames every
/// page.</summary>
public sealed class WorkBoard(ReviewDesk reviews, ClassRegister register, ClassAccess access, Visitor visitor, UntilWritten memory)
{
    private WorkCount? _mine;

    public WorkCount Mine => _mine ??= Count();

    private WorkCount Count()
    {
        try
        {
            if (visitor.PersonIfReadable is not { } me || !(me.Role == Role.Mentor || access.Right >= ClassRight.Everything)) return WorkCount.None;
            return access.Current is not { } room ? new WorkCount(reviews.Queue().Length, 0) : memory.Get(
                $"work of {me.Id} in {room.Id}", register.Course, () => new WorkCount(reviews.Queue().Length, register.WaitingIn(room, me).Length));
        }
        catch (StorageException)
        {
            return WorkCount.None;
        }
    }
}
