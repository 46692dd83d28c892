using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Bench;

/// <summary>Everything on the bench.</summary>
public sealed record BenchView
{
    public const string FormId = "bench-form";

    /// <summary>An address longer than this is cut by some mail programs and chat windows.</summary>
    public const int LongestAddress = 4000;

    public required Versions Versions { get; init; }

    public string Text => Versions.Current;

    /// <summary>Null while the layout of the text is broken.</summary>
    public RecipeFormView? Form { get; init; }

    public ImmutableArray<AnswerProblem> Problems { get; init; } = [];

    public string? Notice { get; init; }

    /// <summary>Whose fly it was; null for one that is nobody's, and while a script redraws what hangs on the recipe.</summary>
    public BenchOrigin? Origin { get; init; }

    public ImmutableArray<Slider> Sliders { get; init; } = [];

    /// <summary>Null while there is something to mend.</summary>
    public BenchResult? Result { get; init; }

    /// <summary>The version kept to compare with.</summary>
    public string? Beside { get; init; }

    public Comparison? Comparison { get; init; }

    public BenchAdvice? Advice { get; init; }

    public double TipDeg { get; init; } = Tipping.UsualDeg;

    /// <summary>Null when soaked through.</summary>
    public double? SoakS { get; init; }

    /// <summary>The whole address of this fly, for sending to someone.</summary>
    public string Address { get; init; } = "";

    public bool AddressIsTooLong => Address.Length > LongestAddress;

    /// <summary>Where the text may be saved as a pattern; null where it may not.</summary>
    public string? SaveAt { get; init; }

    public int Rows => Math.Clamp(Text.Count(c => c == '\n') + 2, 12, 40);

    /// <summary>Where this fly prints as a card.</summary>
    public string CardAddress => "/bench/card?r=" + Packed.Pack(Text);

    public string BesidePacked => Beside is null ? "" : Packed.Pack(Beside);
}
