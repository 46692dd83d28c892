namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>How many of a family obey.</summary>
internal readonly record struct Share(int Obey, int Count)
{
    public static Share Of<T>(IEnumerable<T> family, Func<T, bool> obeys)
    {
        T[] all = [.. family];
        return new Share(all.Count(obeys), all.Length);
    }

    public override string ToString() => $"{Obey} of {Count}";
}
