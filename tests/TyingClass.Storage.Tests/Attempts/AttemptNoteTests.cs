using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Attempts;

/// <summary>A note is read without the rest of its record, so its checksum is over itself and all that is read beside it (docs/decisions/0037).</summary>
public sealed class AttemptNoteTests
{
    [Fact]
    public void Agrees_AsKept_IsTrue() => Assert.True(AttemptNote.Agrees(Kept()));

    [Theory]
    [InlineData("_id")]
    [InlineData("personId")]
    [InlineData("exerciseId")]
    [InlineData("number")]
    [InlineData("atTicks")]
    public void Agrees_FieldBesideItOfAnother_IsFalse(string field)
    {
        BsonDocument changed = Kept();
        BsonValue kept = changed[field];
        changed[field] = kept.IsString ? kept.AsString + "x" : kept.IsInt32 ? kept.AsInt32 + 1 : kept.AsInt64 + 1;
        Assert.False(AttemptNote.Agrees(changed));
    }

    [Theory]
    [InlineData("counts")]
    [InlineData("waits")]
    public void Agrees_NoteItselfChanged_IsFalse(string field)
    {
        BsonDocument changed = Kept();
        changed["note"][field] = !changed["note"][field].AsBoolean;
        Assert.False(AttemptNote.Agrees(changed));
    }

    [Fact]
    public void Agrees_NoteOrItsChecksumMissing_IsFalse()
    {
        BsonDocument bare = Kept(), without = Kept();
        bare["note"].AsDocument.Remove(Checksum.Field);
        without.Remove("note");
        Assert.False(AttemptNote.Agrees(bare));
        Assert.False(AttemptNote.Agrees(without));
    }

    private static BsonDocument Kept() => AttemptDocument.From(
        Attempt.Of("p1", "keel-03", 2, new DateTimeOffset(2026, 1, 14, 19, 30, 0, TimeSpan.Zero), "point down", Grades.Failed));
}
