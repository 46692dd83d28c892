using System.Reflection;
using Microsoft.AspNetCore.Mvc;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>What the program itself never uses is dead, or lives for its tests only: it goes, or it moves to them.</summary>
public sealed class UsedTests
{
    /// <summary>From before this test. None may be added.</summary>
    private static readonly HashSet<string> Known =
    [
        // Published formulas that the engine's own are tested against: they move to the tests.
        "TyingClass.Balance.Sinking.SlackLeader.ClampMoment",
        "TyingClass.Balance.Shapes.Arcs.SemicircularArcCentroidM",
        "TyingClass.Balance.Shapes.Arcs.SemicircleAreaCentroidM",
        "TyingClass.Balance.Shapes.Arcs.SectorAreaCentroidM",
        "TyingClass.Balance.Shapes.Spheres.HemisphereCentroidM",
        "TyingClass.Balance.Shapes.Spheres.CapVolumeM3",
        "TyingClass.Balance.Shapes.Torus.VolumeM3",
        "TyingClass.Balance.Fluid.SkinFriction.Blasius",
        "TyingClass.Balance.Fluid.SphereDrag.HaiderLevenspiel",
        "TyingClass.Balance.Fluid.SphereDrag.CliftGraceWeber",
        "TyingClass.Balance.Fluid.WaterProperties.DensityKellKgM3",
        "TyingClass.Balance.Fluid.WaterProperties.ViscosityIapwsPaS",
        "TyingClass.Balance.Casting.FlyLine.get_ToleranceGrains",
        "TyingClass.Balance.Bodies.Leader.get_DensityKgM3",
        // Told nowhere yet.
        "TyingClass.Recipes.Catalogue.Estimates.get_All",
        "TyingClass.Recipes.Catalogue.Figure.get_Low",
        "TyingClass.Recipes.Catalogue.Figure.get_High",
        "TyingClass.Recipes.Advice.Adjustable.get_ValueSi",
        "TyingClass.Recipes.Advice.Sensitivity.get_Path",
        "TyingClass.Recipes.Advice.Sensitivity.get_Kind",
        "TyingClass.Telling.Grammar.Or",
        "TyingClass.Telling.Grammar.Count",
        "TyingClass.Telling.Figures.Magnitude.get_Meaning",
        "TyingClass.Telling.Figures.Magnitude.get_Phrase",
        "TyingClass.Lessons.Exercises.Goal.get_Bound",
        "TyingClass.Lessons.Grading.GradeResult.get_ModelAnswer",
        "TyingClass.Storage.Practice.PracticeOutcome.get_MisreadConcept",
        "TyingClass.Web.Evenings.EveningFly.get_Tested",
        "TyingClass.Web.BenchLog.ClassLog.get_Looked",
        "TyingClass.Web.BenchLog.ClassLog.get_Agreed",
        "TyingClass.Web.Hosting.StartFlags.get_NoBrowser",
        // Read through the property's own list, or written to a file and read from a form by the property's name.
        "TyingClass.Recipes.Text.UnitGroup.get_Units",
        "TyingClass.Storage.Exchange.ClassExport.get_Standings",
        "TyingClass.Storage.Exchange.ExportedClass.get_Id",
        "TyingClass.Storage.Exchange.ExportedClass.get_CreatedAt",
        "TyingClass.Web.Evenings.PacketQuery.get_WireFt",
        "TyingClass.Web.Evenings.PacketQuery.get_DressingOz",
        // Asked by the tests that every kind has its file, color and margin.
        "TyingClass.Drawing.Flies.PartArt.get_Drawn",
        "TyingClass.Drawing.Flies.Tone.get_All",
        "TyingClass.Lessons.Checking.KeyClearance.Complaint",
        "TyingClass.Lessons.Courses.CourseFolder.get_Directory",
        // The soak curve: drawn, and on no page.
        "TyingClass.Drawing.Curves.AgainstSoak",
        // What tests ask of a store to see what a page did.
        "TyingClass.Storage.Attempts.AttemptStore.AddKept",
        "TyingClass.Storage.Attempts.AttemptStore.AllStandings",
        "TyingClass.Storage.Attempts.AttemptStore.StandingOf",
        "TyingClass.Storage.Classes.ClassRoomStore.FindByCode",
        "TyingClass.Storage.Evenings.EveningStore.Find",
    ];

    [Fact]
    public void Member_OfTheProgram_IsUsedByTheProgram()
    {
        string[] unused = [.. Assemblies.Types.Where(t => !t.IsInterface && !t.IsEnum).SelectMany(Members).Where(m => !Calls.Reach(m))
            .Select(m => $"{m.DeclaringType!.FullName}.{m.Name}").Distinct().Where(name => !Known.Contains(name))];
        Assert.True(unused.Length == 0, $"Used by no line of the program:\n{string.Join("\n", unused)}");
    }

    private static IEnumerable<MethodInfo> Members(Type type)
    {
        HashSet<MethodInfo> promised = [.. type.GetInterfaces().SelectMany(i => type.GetInterfaceMap(i).TargetMethods)];
        return type.GetMethods(Assemblies.Declared)
            .Where(m => !m.Name.Contains('<', StringComparison.Ordinal) && !m.IsPrivate && !IsSetter(m) && !promised.Contains(m) && !IsTakenApart(m))
            .Where(m => m.GetBaseDefinition() == m && !(Assemblies.IsRecord(type) && IsOfEveryRecord(m)) && !IsCalledByTheFramework(m));
    }

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
