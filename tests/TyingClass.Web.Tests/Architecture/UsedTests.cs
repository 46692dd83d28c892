using System.Reflection;
using Microsoft.AspNetCore.Mvc;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>
/// What the program itself never uses is dead, or lives for its tests only: it goes, or it moves to them. Asked of everything but
/// what is private, which the compiler asks.
/// </summary>
public sealed class UsedTests
{
    // Internal, and what cannot be had otherwise: the benchmarks fill a class with two hundred thousand attempts; that still water gives a fly no energy is
    // asked of the fly itself; that each change the last hint could tell passes is asked of all of them, and a reader is told the first.
    private static readonly string[] AskedFromOutside =
    [
        "TyingClass.Storage.Attempts.AttemptStore.AddKept", "TyingClass.Balance.Retrieving.RigidFly.EnergyJ", "TyingClass.Lessons.Grading.LastHint.Proposals",
    ];

    [Fact]
    public void Member_OfTheProgram_IsUsedByTheProgram()
    {
        string[] unused = [.. Assemblies.Types.Where(t => !t.IsInterface && !t.IsEnum && !IsTakenByName(t)).SelectMany(Members)
            .Where(m => !Calls.Reach(m)).Select(m => $"{m.DeclaringType!.FullName}.{m.Name}").Except(AskedFromOutside).Distinct()];
        Assert.True(unused.Length == 0, $"Used by no line of the program:\n{string.Join("\n", unused)}");
    }

    private static IEnumerable<MethodInfo> Members(Type type)
    {
        HashSet<MethodInfo> promised = [.. type.GetInterfaces().SelectMany(i => type.GetInterfaceMap(i).TargetMethods)];
        return type.GetMethods(Assemblies.Declared)
            .Where(m => !m.Name.Contains('<', StringComparison.Ordinal) && !m.IsPrivate && !IsSetter(m) && !promised.Contains(m))
            .Where(m => !IsTakenApart(m))
            .Where(m => m.GetBaseDefinition() == m && !(Assemblies.IsRecord(type) && IsOfEveryRecord(m)) && !IsCalledByTheFramework(m));
    }

    // An export's file is written property by property, and a page's form or address is read so: nobody calls them by name.
    private static bool IsTakenByName(Type type) =>
        type.Namespace == "TyingClass.Storage.Exchange" && Assemblies.IsRecord(type) || FromForms.Value.Contains(type);

    private static readonly Lazy<HashSet<Type>> FromForms = new(() =>
    [
        .. Assemblies.Types.Where(Assemblies.IsPageModel).SelectMany(t => t.GetProperties())
            .Where(p => p.GetCustomAttribute<BindPropertyAttribute>() is not null).Select(p => p.PropertyType),
    ]);

    private static bool IsSetter(MethodInfo method) =>
        method.IsSpecialName && (method.Name.StartsWith("set_", StringComparison.Ordinal) || method.Name.StartsWith("remove_", StringComparison.Ordinal));

    // (a, b) = record reads the data without naming it.
    private static bool IsTakenApart(MethodInfo getter) =>
        getter.IsSpecialName && getter.DeclaringType!.GetMethods(Assemblies.Declared)
            .Any(m => m.Name == "Deconstruct" && Calls.Reach(m) && m.GetParameters().Any(p => getter.Name == "get_" + p.Name));

    private static bool IsOfEveryRecord(MethodInfo method) =>
        method.Name is "Deconstruct" or "Equals" or "PrintMembers" or "get_EqualityContract" or "op_Equality" or "op_Inequality";

    private static bool IsCalledByTheFramework(MethodInfo method) =>
        Assemblies.IsPageModel(method.DeclaringType!) && (method.Name.StartsWith("On", StringComparison.Ordinal) || IsBound(method))
        || method.Name is "Main" or "InvokeAsync";

    private static bool IsBound(MethodInfo getter) =>
        getter.DeclaringType!.GetProperties().FirstOrDefault(p => p.GetMethod == getter) is { } property
        && (property.GetCustomAttribute<BindPropertyAttribute>() is not null || property.GetCustomAttribute<TempDataAttribute>() is not null);
}
