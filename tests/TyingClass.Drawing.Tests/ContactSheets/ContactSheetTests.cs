using TyingClass.Drawing.ContactSheets;
using TyingClass.Drawing.Tests.Flies;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using Xunit;

namespace TyingClass.Drawing.Tests.ContactSheets;

public sealed class ContactSheetTests
{
    [Fact]
    public void All_SheetFlies_UseEveryKindOfPartEyeBendAndKnot()
    {
        Assert.True(SheetFlies.All.Length >= 22);
        Assert.Equal(SheetFlies.All.Length, SheetFlies.All.Select(r => r.Name).Distinct().Count());
        PartKind[] complete = [.. KindsOfPart.All.Select(k => k.Kind).Intersect(PartArtTests.Drawn)];
        string[] unseen = [.. complete.Except(SheetFlies.All.SelectMany(r => r.Parts).Select(p => p.Kind)).Select(k => KindsOfPart.Of(k).Word)];
        Assert.True(unseen.Length == 0,
            $"No fly of the contact sheet has {string.Join(" or ", unseen)}: add one under src/TyingClass.Drawing/ContactSheets/Recipes.");
        Assert.Equal(Enum.GetValues<EyeKind>(), SheetFlies.All.Select(r => r.Hook.Eye).Distinct().Order());
        Assert.Equal(Enum.GetValues<BendKind>(), SheetFlies.All.Select(r => r.Hook.Bend).Distinct().Order());
        Assert.Equal(2, SheetFlies.All.Select(r => r.Fishing.Knot).OfType<Balance.Bodies.Knot>().Distinct().Count());
    }

    [Fact]
    public void Svg_SheetFlies_HoldsAPlateOfEach()
    {
        Picture sheet = new(ContactSheet.Svg(Samples.OfSheet));
        Assert.Equal(SheetFlies.All.Length, sheet.All("svg").Count());
        Assert.All(Samples.OfSheet, f => Assert.Contains(f.Recipe.Name, sheet.Description, StringComparison.Ordinal));
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
