using System.Collections.Immutable;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>What a predict exercise asks.</summary>
public abstract record Question;

/// <summary>"ask: which way up".</summary>
public sealed record WhichWayUp : Question
{
    public const string PointDown = "point down";
    public const string PointUp = "point up";
    public const string OnItsSide = "on its side or leaning";
    public const string Undecided = "no telling: a hair's error decides";

    public static ImmutableArray<string> Choices { get; } = [PointDown, PointUp, OnItsSide, Undecided];
}

/// <summary>"ask: nose": where the nose points when towed.</summary>
public sealed record WhereTheNosePoints : Question
{
    public const double LevelDeg = Telling.Sentences.FlyWords.LevelDeg;
    public const string Up = "nose up";
    public const string Level = "level, within 5°";
    public const string Down = "nose down";

    public static ImmutableArray<string> Choices { get; } = [Up, Level, Down];
}

/// <summary>"ask: which sinks faster", "ask: which has more QUANTITY": compares two flies.</summary>
public sealed record WhichHasMore(string FirstName, string SecondName, string SecondRecipeText) : Question
{
    public const string Same = "much the same";
}

/// <summary>"ask: change in QUANTITY": what the stated change does to the fly.</summary>
public sealed record ChangeIn(FlyChange Change) : Question
{
    public const string Rises = "it gets larger";
    public const string Stays = "it stays about the same";
    public const string Falls = "it gets smaller";

    public static ImmutableArray<string> Choices { get; } = [Rises, Stays, Falls];
}

/// <summary>The author's own choices, each true under a condition.</summary>
/// <param name="When">Conditions as written, one for each choice.</param>
public sealed record OwnChoices(ImmutableArray<string> When) : Question;
