using System.Collections.Concurrent;
using TyingClass.Balance.Doubting;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Doubting;

/// <summary>
/// Values of the estimates, draw by draw. Half the draws of each lie on either side of the table's value, evenly spread from there to the end of its range, so
/// that the table's value is the middle one.
/// </summary>
internal sealed class Draws(DoubtOptions options)
{
    private static readonly ConcurrentDictionary<(string Name, int Draws), double[]> Places = new();

    private readonly Dictionary<string, double[]> _columns = [];

    /// <summary>Every estimate that was asked for.</summary>
    public IEnumerable<(string Name, double[] Values)> Columns => _columns.Select(c => (c.Key, c.Value));

    public Guesses At(int draw) => new(figure => Column(figure)[draw]);

    private double[] Column(Figure figure)
    {
        string name = figure.Name!;
        if (_columns.TryGetValue(name, out double[]? known)) return known;
        double width = options.Varies?.Invoke(figure) == false ? 0 : options.Width;
        double[] places = Places.GetOrAdd((name, options.Draws), key => Strata.Of(key.Name, key.Draws));
        return _columns[name] = [.. places.Select(place => figure.Value + width * Off(figure, place))];
    }

    private static double Off(Figure figure, double place) => place < 0.5
        ? (1 - 2 * place) * (figure.Low - figure.Value)
        : (2 * place - 1) * (figure.High - figure.Value);
}
