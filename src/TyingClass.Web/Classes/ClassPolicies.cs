using Microsoft.AspNetCore.Authorization;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <summary>Who may open a page at all; whose work they may see there is for <see cref="ClassAccess"/> to say.</summary>
public static class ClassPolicies
{
    /// <summary>Anyone with an account: student, mentor, instructor.</summary>
    public const string Student = "student";

    /// <summary>Mentor or instructor, or whoever may run everything for the instructor.</summary>
    public const string Mentor = "mentor";

    /// <summary>Whoever runs at least one evening: instructor, or deputy of an evening or of everything.</summary>
    public const string Evening = "evening";

    /// <summary>Whoever runs the class but for its people, files and setup: instructor, or deputy of everything.</summary>
    public const string Deputy = "deputy";

    public const string Instructor = "instructor";

    internal static void Add(AuthorizationBuilder builder) => builder
        .AddPolicy(Student, policy => policy.RequireRole(nameof(Role.Student), nameof(Role.Mentor), nameof(Role.Instructor)))
        .AddPolicy(Mentor, policy => policy.RequireAuthenticatedUser().AddRequirements(new RightRequirement(ClassRight.Everything, Mentors: true)))
        .AddPolicy(Evening, policy => policy.RequireAuthenticatedUser().AddRequirements(new RightRequirement(ClassRight.Evenings)))
        .AddPolicy(Deputy, policy => policy.RequireAuthenticatedUser().AddRequirements(new RightRequirement(ClassRight.Everything)))
        .AddPolicy(Instructor, policy => policy.RequireRole(nameof(Role.Instructor)));
}

/// <param name="Least">Of the class the visitor has open.</param>
/// <param name="Mentors">They too.</param>
internal sealed record RightRequirement(ClassRight Least, bool Mentors = false) : IAuthorizationRequirement;

/// <summary>A deputy's rights stand in the class, not in the sign-in: they count, and end, with the next request.</summary>
internal sealed class RightHandler(ClassAccess access, Visitor visitor) : AuthorizationHandler<RightRequirement>
{
    protected override Task HandleRequirementAsync(AuthorizationHandlerContext context, RightRequirement requirement)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(requirement);
        bool isMentor = requirement.Mentors && visitor.Person is { Role: Role.Mentor, RemovedAt: null };
        if (isMentor || access.Right >= requirement.Least) context.Succeed(requirement);
        return Task.CompletedTask;
    }
}
