using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>How to say at the counter what a materials list names. Common practice, no source: shops and makers differ.</summary>
public static class ShopWords
{
    private const string TryOne = "Try one: it must pass the bend of the hook with the barb pressed flat. For a jig hook ask for slotted.";

    /// <summary>Short sentences; empty where the list's own words are the shop's.</summary>
    public static string Of(Supply supply, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(supply);
        SupplyItem item = supply.Item;
        return supply.Kind switch
        {
            SupplyKind.Hook => item.Hook is { } hook ? Hook(hook) : "",
            SupplyKind.Bead => $"{OtherSize(item, units)} {TryOne}".Trim(),
            SupplyKind.Eyes => $"{OtherSize(item, units)} Where a packet goes by the ounce, weigh one pair: 1/100 oz is 0.28 g, 1/50 oz is 0.57 g.".Trim(),
            SupplyKind.Wire => Wire(item),
            _ => Dressing(item.What),
        };
    }

    private static string Hook(HookSpec hook)
    {
        string length = hook.ShankSteps switch
        {
            >= 3 => "A streamer hook, long in the shank",
            > 0 => "A nymph or streamer hook, somewhat long in the shank",
            < 0 => "A short-shanked hook",
            _ => "A hook of standard length",
        };
        string eye = hook.Eye switch
        {
            EyeKind.Jig => "A jig hook",
            EyeKind.Down => $"{length}, with a turned-down eye",
            EyeKind.Up => $"{length}, with a turned-up eye",
            _ => $"{length}, with a straight (ringed) eye",
        };
        string[] untold = [.. new[]
        {
            hook.GapeM is null ? null : "gape",
            hook.ShankM is null ? null : "length",
            hook.WireM is null ? null : "wire",
            hook.Eye is EyeKind.Up or EyeKind.Down && hook.EyeAngleRad is not null ? "angle of the eye" : null,
        }.OfType<string>()];
        return untold.Length == 0 ? $"{eye}." : $"{eye}. No packet tells the {string.Join(" or the ", untold)}: take the nearest, measure it, and type it in.";
    }

    // The same size in the other system, where a packet would say it: 3.2 mm and 1/8 in.
    private static string OtherSize(SupplyItem item, UnitSystem units)
    {
        if (item.SizeM is not { } sizeM) return "";
        string inches = Stated.SaySizeToBuy(sizeM, UnitSystem.Imperial);
        if (!inches.Contains('/', StringComparison.Ordinal)) return "";
        return units == UnitSystem.Metric ? $"Also sold as {inches}." : $"Also sold as {Stated.SaySizeToBuy(sizeM, UnitSystem.Metric)}.";
    }

    private static string Wire(SupplyItem item) => item.Substance switch
    {
        "lead-free wire" => "Round lead-free wire. The spool says “lead-free” or “non-toxic”.",
        "lead" => "Ask first whether your waters allow lead. If not, take lead-free wire one size up.",
        _ => "Round wire, by the spool.",
    };

    private static string Dressing(string name) => name switch
    {
        "bucktail" => "A deer’s tail, whole or a piece.",
        "deer hair" => "A patch of deer body hair. It is hollow: pinch it, and it dents.",
        "goat hair" => "A patch of goat hide, hair 4 cm (1.6 in) long or more.",
        "synthetic hair" => "A hank of crinkled streamer hair.",
        "chenille" => "A card of chenille, medium.",
        "floss" => "A spool of flat floss.",
        "tinsel" => "A spool of flat tinsel.",
        "wool" => "Wool yarn. A knitting shop has it too.",
        "fur dubbing" => "A packet of natural dubbing, such as rabbit or hare.",
        "synthetic dubbing" => "A packet of synthetic dubbing.",
        "fur strip" => "Rabbit strips, cut along the hide, about 3 mm (1/8 in) wide.",
        "marabou" => "A bag of marabou plumes.",
        _ => "",
    };
}
