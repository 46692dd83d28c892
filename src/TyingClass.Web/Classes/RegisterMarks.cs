using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <summary>One letter a cell: a register of 200 holds twenty thousand of them.</summary>
public static class RegisterMarks
{
    public static string Class(StandingKind kind) => kind switch
    {
        StandingKind.Passed => "p",
        StandingKind.Waiting => "w",
        StandingKind.Trying => "t",
        _ => "u",
    };
}
