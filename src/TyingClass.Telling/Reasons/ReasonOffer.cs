using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Reasons;

/// <summary>What is said around the second half of a prediction: the fly has been seen, the reason is asked for, and a fresh fly decides.</summary>
public static class ReasonOffer
{
    public const string WhereNext = "Look at the drawing and find out why it does that. Then say what a fresh fly will do: that one decides.";

    /// <summary>Where no fresh fly follows.</summary>
    public const string WhereNextAlone = "Look at the drawing and find out why it does that. The next problem asks for the same idea.";

    /// <summary>Under Why, before the reason has been chosen.</summary>
    public const string ReasonIsAsked = "Which reason holds is asked next.";

    public const string ChooseReason = "Choose the reason too: why did the first fly do that?";

    public const string ChooseFresh = "Say too what the fresh fly will do.";

    public const string AlreadyShown = "You have seen what this fly does. Say now what the fresh fly below will do.";

    public const string AnotherFresh = "Here is another fresh fly: the last one has been answered.";

    /// <summary>"It is the eye that makes it so."</summary>
    public static string Of(string thing) => $"The {thing} made the difference";

    /// <param name="fly">The fly that was shown first: "the Russet Loach"; two of them in a comparison.</param>
    public static string RightReason(string fly, string said) => $"You had the reason for {fly}: “{Grammar.WithoutStop(said)}”.";

    /// <summary>After a right first vote, where no reason was asked.</summary>
    public static string Holding(string reason) => $"The reason: “{Grammar.WithoutStop(reason)}”.";

    /// <summary>Which one it is instead is not told: it is asked again.</summary>
    /// <param name="freshWasRight">What the fresh fly does was said rightly.</param>
    public static string WrongReason(string fly, string said, bool freshWasRight) =>
        $"{(freshWasRight ? "You had the fresh fly right. But for" : "For")} {fly} the reason is another one than “{Grammar.WithoutStop(said)}”.";

    public const string LookForReason = "Look at the first fly’s drawing beside the reasons, and choose again. A fresh fly goes with it.";

    public static string ReasonAsked(string fly) => $"why, for {fly}";

    public static string ReasonSaid(string said, bool right) =>
        $"you said “{Grammar.WithoutStop(said)}”{(right ? ", and so it is" : "; that is not why")}";

    public static string OfFresh(string asked) => $"of the fresh fly: {asked}";

    /// <summary>"The Steel Smelt rides point up. Why?": names the fly that was shown, and what it did.</summary>
    public static string WhyRides(string fly, string way) => $"{Grammar.Capital(fly)} rides {way}. Why?";

    /// <summary>Where a hair's error decides.</summary>
    public static string WhyNoTelling(string fly) => $"Of {fly} there is no telling which way up it rides. Why?";

    public static string WhyNose(string fly, string nose) => $"{Grammar.Capital(fly)} is towed {nose}. Why?";

    /// <param name="does">"it gets larger", as the choice says it.</param>
    public static string WhyChange(string fly, string phrase, string does) => $"{Grammar.Capital(phrase)} of {fly}: {does}. Why?";

    /// <param name="does">"sinks faster".</param>
    public static string WhyMore(string fly, string does) => $"{fly} {does}. Why?";

    public static string WhySame(string flies, string phrase) => $"{flies} have much the same {phrase}. Why?";

    public static string WhyOwn(string fly, string choice) => $"{Grammar.Capital(fly)}: “{choice}”. Why?";

    /// <summary>The prompt of a fly that nobody wrote one for.</summary>
    /// <param name="number">Which cousin, from 1.</param>
    public static string Fresh(string name, int number, ImmutableArray<ReasonShare> changes, string question)
    {
        string change = changes.IsEmpty ? "" : $" Now you have it {Grammar.And(changes.Select(TurnedWords.Of))}{Figures(changes)}.";
        return $"{(number == 1 ? "A" : "Another")} cousin of the {name}, tied as below.{change} {question}";
    }

    /// <summary>Where the question is what a wet fly weighs in the air: all that it takes to work it out.</summary>
    /// <param name="dryKg">Kg.</param>
    /// <param name="drinks">How many times its own mass each part of the dressing takes up.</param>
    public static string FreshDressing(string name, int number, double dryKg, ImmutableArray<(string Part, double Times)> drinks)
    {
        string takes = drinks.IsEmpty ? "Its dressing takes up no water."
            : string.Join(" ", drinks.Select(d => $"Its {d.Part} takes up {Numbers.Write(d.Times, 1)} times its own mass in water."));
        string dry = Magnitudes.Mass.Say(dryKg, UnitSystem.Metric);
        return $"{(number == 1 ? "A" : "Another")} cousin of the {name}, tied as below. Dry, it has a mass of about {dry}. "
            + $"{takes} It has lain in the pond, and you pick it up. About what do you throw?";
    }

    /// <summary>"Cousin of the Russet Loach", "Cousin 2 of the Russet Loach": each fresh fly has a name of its own.</summary>
    public static string Cousin(string name, int number) => number == 1 ? $"Cousin of the {name}" : $"Cousin {number} of the {name}";

    // "(4 mm → 9 mm)", where one thing is changed and both are stated.
    private static string Figures(ImmutableArray<ReasonShare> changes) =>
        changes is [{ Turned: [{ Before: { } before, After: { } after, Key: not "side" }] }] ? $" ({before} → {after})" : "";

    public const string WhichWayUp = "Which way up does it ride?";

    public const string Nose = "Where does its nose point when it is towed?";

    public const string WhichIsTrue = "Which of these is true of it?";

    public static string WhatHappens(string phrase) => $"What happens to its {phrase}?";

    /// <param name="does">"sinks faster".</param>
    public static string WhichHasMore(string does) => $"Two flies of another make. Which of them {does}?";

    /// <inheritdoc cref="WhichHasMore"/>
    public static string WhichOfTwo(string does) => $"which of the two {does}";
}
