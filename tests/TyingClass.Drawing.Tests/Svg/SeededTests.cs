using TyingClass.Drawing.Svg;
using Xunit;

namespace TyingClass.Drawing.Tests.Svg;

public sealed class SeededTests
{
    // FNV-1a 64-bit test values of Fowler, Noll and Vo, from memory.
    [Theory, InlineData("", 0xcbf29ce484222325UL), InlineData("a", 0xaf63dc4c8601ec8cUL), InlineData("foobar", 0x85944171f73967e8UL)]
    public void Hash_PublishedText_GivesThePublishedValue(string text, ulong hash) => Assert.Equal(hash, Seeded.Hash(text));

    // SplitMix64 started at 1234567 (Steele, Lea and Flood 2014; the values commonly listed for it, from memory).
    [Fact]
    public void NextBits_PublishedSeed_GivesThePublishedRun()
    {
        Seeded seeded = new(1234567UL);
        Assert.Equal([6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL], [seeded.NextBits(), seeded.NextBits(), seeded.NextBits()]);
    }

    [Fact]
    public void Bell_ManyDraws_HasMeanNoughtAndDeviationOne()
    {
        Seeded seeded = new("bell");
        double[] draws = [.. Enumerable.Range(0, 20000).Select(_ => seeded.Bell())];
        Assert.Equal(0, draws.Average(), 0.03);
        Assert.Equal(1, Math.Sqrt(draws.Average(d => d * d)), 0.03);
    }
}
