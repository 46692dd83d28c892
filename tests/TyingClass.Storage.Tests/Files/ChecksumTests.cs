using LiteDB;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Files;

public sealed class ChecksumTests
{
    [Fact]
    public void TakeOff_AsPut_IsTrueAndLeavesTheRecordAsItWas()
    {
        BsonDocument record = Record();
        Checksum.Put("attempts", record);
        Assert.True(record.ContainsKey(Checksum.Field));
        Assert.True(Checksum.TakeOff("attempts", record));
        Assert.Equal(Record().ToString(), record.ToString());
    }

    [Fact]
    public void Put_Again_IsTheSameAndStillAgrees()
    {
        BsonDocument record = Checksum.Put("attempts", Record());
        long first = record[Checksum.Field].AsInt64;
        Checksum.Put("attempts", record);
        Assert.Equal(first, record[Checksum.Field].AsInt64);
        Assert.True(Checksum.TakeOff("attempts", record));
    }

    [Theory]
    [InlineData("answer"), InlineData("number"), InlineData("_id"), InlineData("passed")]
    public void TakeOff_OneFieldChanged_IsFalse(string field)
    {
        BsonDocument record = Checksum.Put("attempts", Record());
        record[field] = record[field].IsString ? record[field].AsString + " " : record[field].IsBoolean ? !record[field].AsBoolean : record[field].AsInt32 + 1;
        Assert.False(Checksum.TakeOff("attempts", record));
    }

    [Fact]
    public void TakeOff_FieldGoneOrAdded_IsFalse()
    {
        BsonDocument shorter = Checksum.Put("attempts", Record());
        shorter.Remove("answer");
        Assert.False(Checksum.TakeOff("attempts", shorter));
        BsonDocument longer = Checksum.Put("attempts", Record());
        longer["more"] = 1;
        Assert.False(Checksum.TakeOff("attempts", longer));
    }

    [Fact]
    public void TakeOff_RecordOfAnotherCollection_IsFalse() => Assert.False(Checksum.TakeOff("people", Checksum.Put("attempts", Record())));

    [Fact]
    public void TakeOff_WithoutOne_IsFalse()
    {
        Assert.False(Checksum.TakeOff("attempts", Record()));
        BsonDocument text = Record();
        text[Checksum.Field] = "12";
        Assert.False(Checksum.TakeOff("attempts", text));
    }

    [Fact]
    public void Put_WithoutAnId_GivesItOneThatCounts()
    {
        BsonDocument record = Checksum.Put("attempts", new BsonDocument { ["answer"] = "a" });
        Assert.True(record["_id"].IsObjectId);
        record["_id"] = ObjectId.NewObjectId();
        Assert.False(Checksum.TakeOff("attempts", record));
    }

    private static BsonDocument Record() => new() { ["_id"] = "p1/keel-03/1", ["number"] = 1, ["answer"] = "point down", ["passed"] = true };
}
