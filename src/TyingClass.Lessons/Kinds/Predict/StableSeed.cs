namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>A number that a text always gives, on every machine. Source: the FNV-1a hash of G. Fowler, L. C. Noll and K.-P. Vo, 32 bits.</summary>
internal static class StableSeed
{
    public static int Of(string text, int number)
    {
        uint hash = 2166136261;
        foreach (char c in text) hash = (hash ^ c) * 16777619;
        return (int)(((hash ^ (uint)number) * 16777619) & int.MaxValue);
    }
}
