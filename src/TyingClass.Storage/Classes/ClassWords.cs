using System.Collections.Immutable;

namespace TyingClass.Storage.Classes;

/// <summary>Plain nouns that are hard to mishear: none is the start of another, so that words run together are still one code.</summary>
internal static class ClassWords
{
    public static ImmutableArray<string> All { get; } =
    [
        .. """
        acorn almond amber anchor apple apron arrow autumn bacon badge bagel balcony bamboo banjo barley basket
        beaver bellows banner birch bishop blanket blossom bonnet border bottle boulder bramble bridge bronze bucket buckle
        bugle bundle bushel butter cabin cactus camel canary candle canoe canvas canyon caramel carpet carrot castle
        cedar cellar cement chapel chalk cherry chess chimney chorus cinder circus clarinet clover cobalt cobble coconut
        comet compass copper coral cork cotton cradle crayon cricket crystal curtain cushion cottage daisy dancer desert
        diamond dolphin donkey dragon drummer dune eagle ebony elbow ferry emerald engine falcon farmer feather fender
        fiddle finger flannel flint flute forest fossil fountain foxglove freckle garden garlic gazelle gondola ginger glacier
        glove goblet granite gravel guitar hammer harbor hazel heron hickory hollow honey horizon hunter iceberg indigo
        island ivory jacket jasmine jelly jigsaw jungle juniper kettle kitchen ladder lagoon lantern lemon lentil lily
        linen lizard lobster locket magnet mango maple marble market marsh meadow melon mirror mitten monsoon mosaic
        mountain muffin mustard napkin nectar needle nickel nutmeg oatmeal ocean olive onion orange orchard otter oyster
        paddle palace panda paper parcel parsley pasture peach pebble pelican pepper piano pickle pigeon pillow pilot
        planet plaza pocket pony poplar poppy prairie pretzel prism puffin pumpkin puzzle quartz quilt rabbit radish
        raisin ranger raven reed ribbon river robin rocket rudder saddle saffron salmon sandal satchel scarf shadow
        shovel silver sparrow spindle spruce stable sugar summit sunset table tailor teapot temple thicket thimble thistle
        ticket timber tomato trumpet tulip tunnel turnip turtle unicorn valley vanilla velvet violin wagon walnut willow
        """.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries),
    ];
}
