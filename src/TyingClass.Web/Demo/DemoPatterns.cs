using System.Collections.Immutable;
using TyingClass.Storage.Reviews;

namespace TyingClass.Web.Demo;

/// <summary>Something done to a pattern, so many days before the demo began.</summary>
internal abstract record DemoDeed(double DaysAgo);

/// <summary>Saves a revision: the one before with these changes.</summary>
internal sealed record Saves(double DaysAgo, string Note, params (string Old, string By)[] Changes) : DemoDeed(DaysAgo);

internal sealed record Asks(double DaysAgo, string Question) : DemoDeed(DaysAgo);

/// <summary>The mentor says something about a part, a finding or the whole.</summary>
internal sealed record Says(double DaysAgo, CommentSubject Subject, string About, string Text) : DemoDeed(DaysAgo);

internal sealed record Decides(double DaysAgo, bool SignsOff, string Words) : DemoDeed(DaysAgo);

/// <param name="Fly">As in <see cref="DemoFlies"/>.</param>
internal sealed record DemoPattern(string Owner, string Fly, params ImmutableArray<DemoDeed> Deeds);

/// <summary>What the invented students tied and what the mentor said of it; every figure is the engine's own.</summary>
internal static class DemoPatterns
{
    public static ImmutableArray<DemoPattern> All { get; } =
    [
        new("Wren", "duckweed-newt",
            new Saves(33, "First try, eyes where the book of my uncle has them."),
            new Asks(32, "It rode on its side in the tub twice out of five. Why?"),
            new Says(30, CommentSubject.Part, "dumbbell eyes",
                "Under the shank they pull the point down, and the strip under it pulls it up: they fight, and a hair decides. Lash them on the other side "
                    + "and both pull the same way."),
            new Says(30, CommentSubject.Finding, "undecided", "Read the share of a thousand tied: three in four lean. That is your two out of five."),
            new Decides(30, false,
                "A good fly with its weight on the wrong side. Move the eyes, change nothing else, and show me the two keel heights beside each other."),
            new Saves(27, "Eyes on top.", ("side: under", "side: top")),
            new Saves(20, "Heavier eyes, a little farther forward, for the weir pool.", ("size: 3.2 mm", "size: 4 mm"), ("at: 3 mm", "at: 2.5 mm")),
            new Asks(20, "It keels now and sinks faster. Is it too much weight for the leader?"),
            new Says(17.5, CommentSubject.Whole, "", "Cast it with the eyes in front of you and your glasses on: this one hits hard."),
            new Decides(17.5, true, "Keel height 1.5 mm and no lean in a thousand. It belongs in the book.")),
        new("Wren", "lantern-bleak",
            new Saves(12, "A light one for the shallows."),
            new Saves(9, "Tungsten in place of brass, same size.", ("material: brass", "material: tungsten")),
            new Asks(8.6, "I wanted more depth. It got it, but does it still ride as well?"),
            new Says(6, CommentSubject.Part, "bead",
                "A round bead on the line of the shank is no keel: it adds weight and no lever. See how the keel height fell while the sink rate rose."),
            new Decides(6, false, "It still rides, but with less to spare. Keep the brass bead, or give the metal a side: small eyes in place of the bead.")),
        new("Sedge", "mill-candle",
            new Saves(29, "Copper under the front half."),
            new Saves(24, "Wraps moved aft so that it falls level in the pause.", ("at: 8 mm", "at: 14 mm")),
            new Asks(24, "In the pause it now hangs level. Slower, though."),
            new Says(22, CommentSubject.Finding, "planes up", "You fish it slowly, so the lift is no trouble. At twice the speed it would climb."),
            new Decides(22, true, "Falls level, and keels at every speed you will pull it. Signed off.")),
        new("Hazel", "tallow-shrimp",
            new Saves(26, "On a straight-eyed hook."),
            new Asks(25.5, "Half of mine turn over."),
            new Says(23, CommentSubject.Finding, "bend outweighs bead",
                "The bead sits on the hinge line and cannot lift anything. On a jig hook the eye goes down instead, which is the same as moving the bead "
                    + "up."),
            new Decides(23, false, "Try the same dressing on a jig hook."),
            new Saves(21, "Jig hook.", ("eye: straight", "eye: jig 60°")),
            new Saves(15, "Tungsten for the deep run.", ("material: brass", "material: tungsten")),
            new Asks(14.8, "Both ride point up. I would keep the heavy one."),
            new Decides(13, true, "So would I.")),
        new("Larch", "quarry-gudgeon",
            new Saves(10, "Strip on top, as on my streamers."),
            new Asks(9.5, "The cone should turn it point up. It does not."),
            new Says(1.2, CommentSubject.Part, "cone",
                "It is centered on the shank: look at its row in the ledger. Only what stands off the hinge line can turn a fly."),
            new Says(1.2, CommentSubject.Part, "wing",
                "In the water the strip weighs little, for the water it holds weighs nothing there. But the water grips it. On which side would you like that "
                    + "grip?"),
            new Decides(1.1, false, "Tie the strip under the shank, so that it hangs over the point. Then ask again.")),
        new("Juniper", "bramble-smelt",
            new Saves(13, "Deer hair, because it was in the box."),
            new Saves(9.4, "Less hair, and bucktail.", ("material: deer hair", "material: bucktail"), ("mass: 0.14 g", "mass: 0.08 g")),
            new Asks(9.2, "It rides well for ten casts and then lies over. With the bucktail it lies over at once.")),
        new("Teasel", "cold-lamprey",
            new Saves(18, "For pike water."),
            new Asks(17, "Can this cast at all?"),
            new Says(15, CommentSubject.Finding, "only when soaked", "Squeeze it under water before the first cast, or the first ten pulls are wasted."),
            new Decides(15, false, "It can, with a stout rod and your hat on. But one in five would lean: heavier eyes."),
            new Saves(2.3, "Eyes one size up.", ("size: 4.8 mm", "size: 5.5 mm")),
            new Asks(2.2, "Now 99 of 100. My arm is the weak part.")),
        new("Rowan", "rush-frog",
            new Saves(1.5, "Floats like a cork."),
            new Saves(0.4, "Thinner foam, so that it goes under when pulled.", ("diameter: 7 mm", "diameter: 4 mm")),
            new Asks(0.25, "I wanted it to dive, and now it turns over. What keeps a frog upright?")),
        new("Bryony", "ferry-perchling",
            new Saves(16, "Resin head, small."),
            new Saves(7, "Bigger head.", ("diameter: 5 mm", "diameter: 7 mm"), ("mass: 0.12 g", "mass: 0.30 g")),
            new Saves(3, "Back to less, and the under wing shorter.", ("diameter: 7 mm", "diameter: 6 mm"), ("mass: 0.30 g", "mass: 0.20 g"),
                ("length: 40 mm", "length: 30 mm"))),
    ];
}
