using TyingClass.Drawing.ContactSheets;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Drawing.Tests.ContactSheets;

public sealed class ContactSheetTests
{
    [Fact]
    public void All_TwentyFlies_UseEveryKindOfPartEyeBendAndKnot()
    {
        Assert.Equal(20, TwentyFlies.All.Select(r => r.Name).Distinct().Count());
        Assert.Equal(Enum.GetValues<PartKind>(), TwentyFlies.All.SelectMany(r => r.Parts).Select(p => p.Kind).Distinct().Order());
        Assert.Equal(Enum.GetValues<EyeKind>(), TwentyFlies.All.Select(r => r.Hook.Eye).Distinct().Order());
        Assert.Equal(Enum.GetValues<BendKind>(), TwentyFlies.All.Select(r => r.Hook.Bend).Distinct().Order());
        Assert.Equal(2, TwentyFlies.All.Select(r => r.Fishing.Knot).OfType<Balance.Bodies.Knot>().Distinct().Count());
    }

    [Fact]
    public void Svg_TwentyFlies_HoldsAPlateOfEach()
    {
        Picture sheet = new(ContactSheet.Svg(Samples.Twenty));
        Assert.Equal(20, sheet.All("svg").Count());
        Assert.All(Samples.Twenty, f => Assert.Contains(f.Recipe.Name, sheet.Description, StringComparison.Ordinal));
    }

    [Fact]
    public void Write_NewFolder_WritesBothSheets()
    {
        string folder = Path.Combine(Path.GetTempPath(), "sheet-" + Guid.NewGuid().ToString("N"));
        try
        {
            IReadOnlyList<string> written = ContactSheet.Write(folder, html: true);
            Assert.Equal(["contact-sheet.svg", "contact-sheet.html"], written.Select(p => Path.GetFileName(p)));
            Assert.All(written, p => Assert.True(new FileInfo(p).Length > 100_000));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
