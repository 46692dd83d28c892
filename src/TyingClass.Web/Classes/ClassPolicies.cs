using Microsoft.AspNetCore.Authorization;
using TyingClass.Storage.People;

namespace TyingClass.Web.Classes;

/// <summary>Who may open a page at all; whose work they may see there is for <see cref="ClassAccess"/> to say.</summary>
public static class ClassPolicies
{
    /// <summary>Anyone with an account: student, mentor, instructor.</summary>
    public const string Student = "student";

    /// <summary>Mentor or instructor.</summary>
    public const string Mentor = "mentor";

    public const string Instructor = "instructor";

    internal static void Add(AuthorizationBuilder builder) => builder
        .AddPolicy(Student, policy => policy.RequireRole(nameof(Role.Student), nameof(Role.Mentor), nameof(Role.Instructor)))
        .AddPolicy(Mentor, policy => policy.RequireRole(nameof(Role.Mentor), nameof(Role.Instructor)))
        .AddPolicy(Instructor, policy => policy.RequireRole(nameof(Role.Instructor)));
}
