namespace TyingClass.Drawing.Svg;

/// <summary>
/// Repeatable chance for textures: the same text gives the same strands in every process and on every machine, which string.GetHashCode would not.
/// </summary>
internal sealed class Seeded
{
    private ulong _state;

    /// <param name="text">What the texture belongs to; hashed by FNV-1a, stepped by SplitMix64.</param>
    public Seeded(string text) => _state = Hash(text);

    public Seeded(ulong seed) => _state = seed;

    /// <summary>FNV-1a, 64 bits, over the text's UTF-16 units.</summary>
    public static ulong Hash(string text)
    {
        ulong hash = 14695981039346656037UL;
        foreach (char c in text)
            hash = unchecked((hash ^ c) * 1099511628211UL);
        return hash;
    }

    /// <summary>From 0 up to 1.</summary>
    public double Next() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    public ulong NextBits()
    {
        ulong z = unchecked(_state += 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return z ^ (z >> 31);
    }

    public double Between(double low, double high) => low + (high - low) * Next();

    /// <summary>About normal, mean 0, deviation 1, never beyond 3.</summary>
    public double Bell() => (Next() + Next() + Next() + Next() - 2) * 1.7320508;
}
