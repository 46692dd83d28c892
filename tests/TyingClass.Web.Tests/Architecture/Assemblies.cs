using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Mvc.Razor;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>What the projects of the program were built into, without what the compiler wrote by itself.</summary>
internal static class Assemblies
{
    public const BindingFlags Declared =
        BindingFlags.DeclaredOnly | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static;

    public static Type[] Types { get; } =
    [
        .. Rooms.All.Where(r => r.IsProgram).SelectMany(r => Assembly.Load(r.Name).GetTypes())
            .Where(t => t.Namespace?.StartsWith("TyingClass.", StringComparison.Ordinal) == true && !IsWritten(t)),
    ];

    /// <summary>Methods and constructors; what makes a record of data is left out.</summary>
    public static IEnumerable<MethodBase> Methods => Types.SelectMany(t => t.GetMethods(Declared).Cast<MethodBase>()
        .Concat(t.GetConstructors(Declared).Where(_ => !IsRecord(t)))
        .Where(m => !m.Name.Contains('<') && !(IsRecord(t) && m.Name == "Deconstruct") && m.GetCustomAttribute<CompilerGeneratedAttribute>() is null));

    public static bool IsPageModel(Type type) => type.IsAssignableTo(typeof(PageModel));

    public static bool IsRecord(Type type) => type.GetMethod("PrintMembers", Declared) is not null;

    // Closures, pages made of .cshtml, regular expressions and the like.
    private static bool IsWritten(Type type) =>
        type.FullName!.Contains('<') || type.IsAssignableTo(typeof(Delegate)) || type.IsAssignableTo(typeof(RazorPageBase))
        || type.Namespace!.Contains(".Generated", StringComparison.Ordinal) || type.GetCustomAttribute<CompilerGeneratedAttribute>() is not null;
}
