using Microsoft.Extensions.FileProviders;
using TyingClass.Web.Hosting;
using TyingClass.Web.Tests.Architecture;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

public sealed class LooksCheckTests
{
    [Fact]
    public void Complaint_NoFolder_SaysWhichIsMissingAndWhatToDo()
    {
        string? said = LooksCheck.Complaint(new NullFileProvider());

        Assert.Contains("wwwroot is missing", said, StringComparison.Ordinal);
        Assert.Contains("start it again", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Complaint_TheFolderOfTheProgram_IsNone()
    {
        using PhysicalFileProvider files = new(Path.Combine(ProjectFile.Root, "src", "TyingClass.Web", "wwwroot"));

        Assert.Null(LooksCheck.Complaint(files));
    }
}
