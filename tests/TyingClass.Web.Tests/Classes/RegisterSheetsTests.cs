using TyingClass.Lessons.Courses;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Progress;
using Xunit;

namespace TyingClass.Web.Tests.Classes;

public sealed class RegisterSheetsTests
{
    [Theory]
    [InlineData(new[] { 10, 10, 10, 30, 3 }, new[] { 20, 10, 30, 3 })]
    [InlineData(new[] { 26 }, new[] { 26 })]
    [InlineData(new[] { 13, 13, 1 }, new[] { 26, 1 })]
    public void Sheets_ManyLessons_KeepEachWholeAndEveryMarkInItsPlace(int[] lessons, int[] sheets)
    {
        RegisterView all = Register(lessons);

        RegisterView[] made = [.. all.Sheets()];

        Assert.Equal(sheets, made.Select(s => s.Columns.Length));
        Assert.Equal(all.Columns, made.SelectMany(s => s.Columns));
        Assert.Equal(all.Rows[0].Cells, made.SelectMany(s => s.Rows[0].Cells));
    }

    private static RegisterView Register(int[] lessons)
    {
        using CourseFolder course = new(Path.Combine(AppContext.BaseDirectory, "Course"));
        Lesson some = course.Current.Lessons[0];
        RegisterColumn[] columns = [
            .. lessons.SelectMany(
                (count, n) => Enumerable.Range(1, count).Select(i => new RegisterColumn(some with { Number = n }, some.Exercises.First(), i)))];
        Person person = new("p", Role.Student, "Wren", null, "", default, default);
        RegisterRow row = new(person, [.. columns.Select((_, i) => new RegisterCell(StandingKind.Trying, i, false))]);
        return new RegisterView(null!, new RegisterFilter(), [.. columns], [row], 1, [], []);
    }
}
