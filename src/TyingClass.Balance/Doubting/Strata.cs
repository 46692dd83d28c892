using TyingClass.Balance.Tying;

namespace TyingClass.Balance.Doubting;

/// <summary>
/// Places of one quantity's draws, evenly spread from 0 to 1: a column of a Latin hypercube (McKay, Beckman and Conover, Technometrics 21 (1979) 239).
/// Each draw
/// stands in the middle of a stratum of its own; which one follows from the quantity's name, so that what else is drawn, and in what order, changes nothing.
/// </summary>
public static class Strata
{
    private const int Seed = 20260102;

    public static double[] Of(string name, int draws)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        double[] places = [.. Enumerable.Range(0, draws).Select(i => (i + 0.5) / draws)];
        new Random(DrawNames.Seed(name, Seed)).Shuffle(places);
        return places;
    }
}
