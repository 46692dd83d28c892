using System.Reflection;
using Microsoft.AspNetCore.Mvc;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>What the program itself never uses is dead, or lives for its tests only: it goes, or it moves to them.</summary>
public sealed class UsedTests
{
    [Fact]
    public void Member_OfTheProgram_IsUsedByTheProgram()
    {
        string[] unused = [.. Assemblies.Types.Where(t => !t.IsInterface && !t.IsEnum).SelectMany(Members).Where(m => !Calls.Reach(m))
            .Select(m => $"{m.DeclaringType!.FullName}.{m.Name}").Distinct()];
        Assert.True(unused.Length == 0, $"Used by no line of the program:\n{string.Join("\n", unused)}");
    }

    private static IEnumerable<MethodInfo> Members(Type type)
    {
        HashSet<MethodInfo> promised = [.. type.GetInterfaces().SelectMany(i => type.GetInterfaceMap(i).TargetMethods)];
        return type.GetMethods(Assemblies.Declared)
            .Where(m => !m.Name.Contains('<', StringComparison.Ordinal) && !m.IsPrivate && !IsSetter(m) && !promised.Contains(m))
            .Where(m => m.GetBaseDefinition() == m && !(Assemblies.IsRecord(type) && IsOfEveryRecord(m)) && !IsCalledByTheFramework(m));
    }

    private static bool IsSetter(MethodInfo method) => method.IsSpecialName && method.Name.StartsWith("set_", StringComparison.Ordinal);

    private static bool IsOfEveryRecord(MethodInfo method) =>
        method.Name is "Deconstruct" or "Equals" or "PrintMembers" or "get_EqualityContract" or "op_Equality" or "op_Inequality";

    private static bool IsCalledByTheFramework(MethodInfo method) =>
        Assemblies.IsPageModel(method.DeclaringType!) && (method.Name.StartsWith("On", StringComparison.Ordinal) || IsBound(method))
        || method.Name is "Main" or "InvokeAsync";

    private static bool IsBound(MethodInfo getter) =>
        getter.DeclaringType!.GetProperties().FirstOrDefault(p => p.GetMethod == getter) is { } property
        && (property.GetCustomAttribute<BindPropertyAttribute>() is not null || property.GetCustomAttribute<TempDataAttribute>() is not null);
}
