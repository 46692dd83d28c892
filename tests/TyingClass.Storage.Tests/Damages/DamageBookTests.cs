using TyingClass.Storage.Damages;
using Xunit;

namespace TyingClass.Storage.Tests.Damages;

/// <summary>What is said of damage, and that it is said once to whoever listens and to whoever reads the file beside the data.</summary>
public sealed class DamageBookTests : IDisposable
{
    private static readonly Damage One = new("attempts", "a1", DamageKind.ChecksumDisagrees);

    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    /// <summary>What happens to each, by docs/decisions/0037.</summary>
    [Theory]
    [InlineData("attempts", DamageKind.ChecksumDisagrees, "A record of attempts (x) is not what was written. It is left out everywhere.")]
    [InlineData("attempts", DamageKind.Unreadable, "A record of attempts (x) could not be read and was left behind when the file was mended.")]
    [InlineData("standings", DamageKind.ChecksumDisagrees, "A sum of attempts (x) was not what was written. It is worked out anew from the attempts.")]
    [InlineData("standings", DamageKind.Unreadable, "A sum of attempts (x) could not be read. It is worked out anew from the attempts.")]
    [InlineData("photos", DamageKind.ChecksumDisagrees,
        "A photo of the bench log (x.jpg) is not what was written. It is no longer shown; the entry it belongs to stays.")]
    [InlineData("photos", DamageKind.Unreadable, "A photo of the bench log (x.jpg) is missing or cannot be read. The entry it belongs to stays.")]
    public void Said_OfEachKind_NamesItAndSaysWhatBecomesOfIt(string collection, DamageKind kind, string said) =>
        Assert.Equal(said, new Damage(collection, "x", kind).Said);

    [Fact]
    public void Note_NewAndKnown_IsToldOnce()
    {
        List<string> told = [];
        DamageBook book = new(_temp.Folder, _temp.Clock);
        book.Found += told.Add;
        book.Note(One);
        book.Note(One);
        book.Note("The data file was mended.");
        Assert.Equal([$"2026-01-14 19:30 UTC: {One.Said}", "2026-01-14 19:30 UTC: The data file was mended."], told);
        Assert.Equal(told, book.Lines);
        Assert.Equal(told, File.ReadAllLines(_temp.Folder.DamagePath));
    }

    /// <summary>A disk of which everything is broken must not fill the page and the file without end. A thousand: common practice, no source.</summary>
    [Fact]
    public void Note_MoreThanAThousandRecords_StopsAtAThousand()
    {
        DamageBook book = new(_temp.Folder, _temp.Clock);
        for (int i = 0; i < 1001; i++) book.Note(One with { Id = $"a{i:0000}" });
        Assert.Equal(1000, book.Lines.Count);
        Assert.Contains("(a0999)", book.Lines[^1], StringComparison.Ordinal);
    }

    /// <summary>The file beside may stand on a disk that is gone (a link that leads nowhere), or something else has its name.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Note_FileBesideCannotBeWritten_IsToldAllTheSame(bool link)
    {
        if (link) File.CreateSymbolicLink(_temp.Folder.DamagePath, _temp.PathBeside("gone/damage.txt"));
        else Directory.CreateDirectory(_temp.Folder.DamagePath);
        List<string> told = [];
        DamageBook book = new(_temp.Folder, _temp.Clock);
        Assert.Empty(book.Lines);
        book.Found += told.Add;
        book.Note(One);
        Assert.Equal([$"2026-01-14 19:30 UTC: {One.Said}"], told);
        Assert.Equal(told, book.Lines);
    }
}
