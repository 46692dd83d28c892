using TyingClass.Drawing;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Web.Tests.Pictures;

public sealed class FigureKindTests
{
    // Lessons may ask for what nothing draws, or never ask for what is drawn: a file is missing in Drawing/Figures, or a line in FigureKinds.
    [Fact]
    public void Kinds_ThatLessonsMayAskFor_AreThoseThatAreDrawn() =>
        Assert.Equal(TeachingFigures.Kinds, FigureKinds.All.Select(k => k.Word).Order(StringComparer.Ordinal));
}
