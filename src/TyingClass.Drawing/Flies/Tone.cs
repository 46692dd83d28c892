namespace TyingClass.Drawing.Flies;

/// <summary>
/// A wash. The color given is the one for light paper, used where no style sheet is at hand; drawing.css sets it by class for light, dark and print.
/// </summary>
internal sealed record Tone(string Name, string Color)
{
    public static readonly Tone Steel = new("steel", "#8b8f8e");
    public static readonly Tone Brass = new("brass", "#cfa94f");
    public static readonly Tone Copper = new("copper", "#c07a52");
    public static readonly Tone Tungsten = new("tungsten", "#7d8384");
    public static readonly Tone Lead = new("lead", "#9aa0a3");
    public static readonly Tone Bright = new("bright", "#c9cdcc");
    public static readonly Tone Glass = new("glass", "#a9cbc4");
    public static readonly Tone Black = new("black", "#4a4844");
    public static readonly Tone Thread = new("thread", "#6d4a38");
    public static readonly Tone Hide = new("hide", "#d9bd94");
    public static readonly Tone Foam = new("foam", "#e3cf9c");
    public static readonly Tone Cork = new("cork", "#c99f6c");
    public static readonly Tone Resin = new("resin", "#e6dcae");
    public static readonly Tone Iris = new("iris", "#e3b53c");
    public static readonly Tone Pupil = new("pupil", "#23211e");
    public static readonly Tone Gleam = new("gleam", "#fffdf4");
    public static readonly Tone Shade = new("shade", "#3a3128");
    public static readonly Tone Paper = new("paper", "#fbf7ec");
    public static readonly Tone Water = new("water", "#5b8aa0");

    private static readonly Tone[] Dyes =
    [
        new("olive", "#8d8a4e"), new("rust", "#b06a3c"), new("slate", "#78858e"), new("sand", "#bd9d6b"), new("umber", "#83674b"),
    ];

    public static Tone Dye(int number) => Dyes[(number % Dyes.Length + Dyes.Length) % Dyes.Length];

    /// <summary>The look of a hard material; the recipe text says nothing of color, so this is what the stuff looks like unpainted.</summary>
    public static Tone Of(string material) => material switch
    {
        "brass" => Brass,
        "copper" => Copper,
        "tungsten" => Tungsten,
        "lead" or "bismuth" => Lead,
        "tin" or "lead-free wire" or "aluminum" or "tinsel" or "flash" => Bright,
        "glass" or "nylon" or "fluorocarbon" => Glass,
        "plastic" or "nylon wire" => Black,
        "cork" or "balsa" => Cork,
        "closed-cell foam" => Foam,
        "uv resin" or "epoxy resin" or "head cement" => Resin,
        _ => Steel,
    };
}
