using System.Collections.Immutable;

namespace TyingClass.Telling.Reasons;

/// <summary>What is said around the second half of a prediction: the fly has been seen, the reason is asked for, and a fresh fly decides.</summary>
public static class ReasonOffer
{
    public const string WhereNext = "Look at the drawing and find out why it does that. Then say what a fresh fly will do: that one decides.";

    public const string ChooseReason = "Choose the reason first: why did the fly you were shown do that?";

    public const string ChooseFresh = "Say too what the fresh fly will do.";

    public const string AlreadyShown = "You have seen what this fly does. Say now what the fresh fly below will do.";

    public const string AnotherFresh = "Here is another fresh fly: the last one has been answered.";

    /// <summary>"It is the eye that makes it so."</summary>
    public static string Of(string thing) => $"The {thing} made the difference";

    public static string RightReason(string said) => $"You had the reason of the first fly: “{said}”.";

    public static string WrongReason(string said, string right) => $"Of the first fly you said “{said}”; it is “{right}”.";

    /// <summary>The prompt of a fly that nobody wrote one for.</summary>
    public static string Fresh(string name, ImmutableArray<ReasonShare> changes, string question)
    {
        string change = changes.IsEmpty ? "" : $" Now you have it {Grammar.And(changes.Select(TurnedWords.Of))}.";
        return $"A cousin of the {name}, tied as below.{change} {question}";
    }

    public const string WhichWayUp = "Which way up does it ride?";

    public const string Nose = "Where does its nose point when it is towed?";

    public const string WhichIsTrue = "Which of these is true of it?";

    public static string WhatHappens(string phrase) => $"What happens to its {phrase}?";

    public static string WhichHasMore(string phrase) => $"Two flies of another make. Which of them has the larger {phrase}?";
}
