using System.Reflection;
using System.Text.RegularExpressions;
using TyingClass.Storage;
using Xunit;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>Habits of the house that the compiler does not keep: docs/architecture.md says why.</summary>
public sealed partial class HabitTests
{
    private const int MostParameters = 6;

    /// <summary>As .editorconfig says.</summary>
    private const int LongestLine = 160;

    // A record of data has as many as its data; whoever calls a method must keep its parameters apart.
    [Fact]
    public void Method_OfTheProgram_TakesAtMostSixParameters() =>
        Assert.Empty(Assemblies.Methods.Where(m => m.GetParameters().Length > MostParameters).Select(Name));

    // Page models are named by their pages, and a type inside another by both.
    [Fact]
    public void Name_OfAType_MeansOneThing() =>
        Assert.Empty(Assemblies.Types.Where(t => !t.IsNested && !Assemblies.IsPageModel(t)).GroupBy(t => t.Name).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void PageOrDesk_OfTheWeb_AsksForTheStoresItUses() =>
        Assert.Empty(Assemblies.Types
            .Where(t => t.Assembly.GetName().Name == "TyingClass.Web" && t.Namespace is not ("TyingClass.Web.Hosting" or "TyingClass.Web.Demo"))
            .Where(t => t.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType == typeof(ClassStore))))
            .Select(t => t.FullName!));

    [Fact]
    public void Line_OfCodeOrRazor_IsNoLongerThanEditorconfigSays()
    {
        Assert.Contains($"max_line_length = {LongestLine}\n", ProjectFile.ReadText(".editorconfig"), StringComparison.Ordinal);
        Assert.Empty(Sources.SelectMany(file => File.ReadLines(file)
            .Select((line, i) => (Text: line, Place: $"{Path.GetRelativePath(ProjectFile.Root, file)}:{i + 1}"))
            .Where(line => line.Text.Length > LongestLine && !Unbreakable().IsMatch(line.Text))
            .Select(line => line.Place)));
    }

    // A figure that a reader sees gets its digits in Telling, by its magnitude or by Numbers. What is read back, drawn or no figure of a fly is named here.
    [Fact]
    public void Number_ThatAReaderSees_GetsItsDigitsInTelling()
    {
        string[] elsewhere =
        [
            "TyingClass.Telling/Figures/Numbers.cs", "TyingClass.Telling/Figures/TypingHelp.cs",
            // Typed into a form or a lesson again.
            "TyingClass.Web/Bench/Slider.cs", "TyingClass.Lessons/Kinds/Measure/MeasureTask.cs",
            // Places of a drawing, widths of a bar.
            "TyingClass.Drawing/Svg/SvgCanvas.cs", "TyingClass.Web/Pages/Class/Student.cshtml", "TyingClass.Web/Pages/Shared/_Strength.cshtml",
            // The catalogue's own values as they are written there.
            "TyingClass.Web/Pages/Model/Index.cshtml.cs",
            // Seconds of a start, reading level of a lesson.
            "TyingClass.Web/Hosting/DemoStart.cs", "TyingClass.CommandLine/LessonTable.cs",
        ];
        string[] rooms = ["TyingClass.Telling/", "TyingClass.Drawing/", "TyingClass.Lessons/", "TyingClass.Web/", "TyingClass.CommandLine/"];
        string[] found = [.. Sources.Select(f => (File: f, Name: Path.GetRelativePath(Path.Combine(ProjectFile.Root, "src"), f).Replace('\\', '/')))
            .Where(f => rooms.Any(room => f.Name.StartsWith(room, StringComparison.Ordinal)) && Digits().IsMatch(File.ReadAllText(f.File)))
            .Select(f => f.Name)];
        Assert.Equal(elsewhere.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [GeneratedRegex("""ToString\("(?:[FGER][0-9]*|[0#]+(?:\.[0#]+)?)"|:(?:[FGE][0-9]+|[0#]+(?:\.[0#]+)?)\}""")]
    private static partial Regex Digits();

    // .editorconfig says the same, and the build holds it for tests too.
    [Fact]
    public void Field_PrivateToAnObject_BeginsWithAnUnderscore() =>
        Assert.Empty(Assemblies.Types
            .Where(t => t.Namespace?.StartsWith("TyingClass.", StringComparison.Ordinal) == true)
            .SelectMany(t => t.GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            // What holds an event's listeners bears the event's own name.
            .Where(f => f.IsPrivate && !f.Name.Contains('<', StringComparison.Ordinal) && !f.Name.StartsWith('_') && f.DeclaringType!.GetEvent(f.Name) is null)
            .Select(f => $"{f.DeclaringType!.FullName}.{f.Name}"));

    private static IEnumerable<string> Sources => new[] { "src", "tests" }
        .SelectMany(folder => new[] { "*.cs", "*.cshtml" }
            .SelectMany(kind => Directory.EnumerateFiles(Path.Combine(ProjectFile.Root, folder), kind, SearchOption.AllDirectories)))
        .Where(file => !Path.GetRelativePath(ProjectFile.Root, file).Split(Path.DirectorySeparatorChar).Any(folder => folder is "obj" or "bin"));

    /// <summary>A path of a drawing, a regular expression, bytes written as letters: what no line break may come into.</summary>
    [GeneratedRegex("""[^\s"<>]{120,}| d="[^"]{100,}|GeneratedRegex\(|<svg|<symbol""")]
    private static partial Regex Unbreakable();

    private static string Name(MethodBase method) => $"{method.DeclaringType!.FullName}.{(method.IsConstructor ? "new" : method.Name)}";
}
