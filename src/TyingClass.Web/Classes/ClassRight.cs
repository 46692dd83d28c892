namespace TyingClass.Web.Classes;

/// <summary>How much of a class someone may run; each holds what stands before it.</summary>
public enum ClassRight
{
    None,

    /// <summary>Single evenings, and questions to the room; nobody's work.</summary>
    Evenings,

    /// <summary>All but people, files and setup.</summary>
    Everything,

    Teaches,
}
