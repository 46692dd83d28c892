using CsCheck;

namespace TyingClass.Balance.Tests.Flies;

/// <summary>
/// Properties over cases drawn from a fixed seed: CsCheck's own sampling fixes only its first case, and a test must see the same flies every time.
/// </summary>
internal static class Seeded
{
    public static void Check<T>(Gen<T> gen, int cases, Action<T> property)
    {
        PCG random = new(1, 20_260_101);
        for (int i = 0; i < cases; i++)
        {
            T drawn = gen.Generate(random, null, out _);
            try
            {
                property(drawn);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Case {i}, {drawn}: {e.Message}", e);
            }
        }
    }
}
