using System.Collections.Immutable;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Web.Evenings;

namespace TyingClass.Web.Briefs;

/// <param name="Evening">The one to prepare.</param>
/// <param name="Buy">For it alone.</param>
/// <param name="BuyForAll">For it and all that come after it.</param>
/// <param name="Left">How many those are, it counted.</param>
public sealed record NextEvening(EveningView Evening, ImmutableArray<MaterialLine> Buy, ImmutableArray<MaterialLine> BuyForAll, int Left)
{
    /// <param name="number">Of the evening to prepare.</param>
    public static NextEvening? Of(EveningBook book, int number, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Open(number) is not { } evening) return null;
        Packets packets = evening.Room.Packets ?? Packets.Usual;
        ImmutableArray<EveningView> left = [evening, .. book.All().Where(e => e.Number > number).Select(e => book.View(evening.Room, e.Plan))];
        ImmutableArray<Supply> all = SupplyList.For(left.SelectMany(e => e.Needs), left.SelectMany(e => e.SpareNeeds));
        return new NextEvening(evening, MaterialsView.Of(evening.Supplies, packets, units), MaterialsView.Of(all, packets, units), left.Length);
    }
}
