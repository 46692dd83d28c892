using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Text;

/// <summary>The fishing group.</summary>
internal static class FishingReader
{
    public static readonly string[] Keys = ["leader", "knot", "water", "speed", .. RetrieveReader.Keys];

    public static FishingSpec Read(MapReader map)
    {
        map.CheckKeys(Keys, key => $"{WordList.Quote(key)} is not a key of the fishing.{Nearest.Hint(key, Keys)} It takes {WordList.And(Keys)}.");
        FishingSpec fishing = new()
        {
            Knot = map.Choice("knot", Words.Knots),
            SpeedMS = map.Quantity("speed", Limits.Speed),
            Retrieve = RetrieveReader.Read(map),
        };
        if (map.Text("leader", LeaderText.Forms) is { } leader)
        {
            if (LeaderText.TryRead(leader, ref fishing) is { } error) map.Complain("leader", error);
        }

        if (map.Text("water", WaterText.Forms) is { } water)
        {
            if (WaterText.TryRead(water, ref fishing) is { } error) map.Complain("water", error);
        }

        return fishing;
    }
}
